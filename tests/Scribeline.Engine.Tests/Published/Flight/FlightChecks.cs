using System.Globalization;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>Check values by row name.</summary>
internal static class FlightChecks
{
    private static readonly Dictionary<string, double> Motion = Read("flight-motion.csv", 3);
    private static readonly Dictionary<string, double> Descent = Read("flight-descent.csv", 2);

    /// <summary>Value of a row of flight mechanics.</summary>
    public static double Value(string id) => Motion[id];

    /// <summary>Value of a row of descent and inflation.</summary>
    public static double DescentValue(string id) => Descent[id];

    /// <summary>Holds a value to a row, relative to the row's value.</summary>
    public static void Holds(string id, double actual, double relative = 1e-6) =>
        Assert.True(
            Math.Abs(actual - Value(id)) <= relative * Math.Abs(Value(id)),
            $"{id}: expected {Value(id):R}, got {actual:R}, {(actual / Value(id)) - 1:E2} off");

    /// <summary>Holds a value to a row, in the row's unit.</summary>
    public static void HoldsWithin(string id, double actual, double absolute) =>
        Assert.True(Math.Abs(actual - Value(id)) <= absolute, $"{id}: expected {Value(id):R}, got {actual:R}, {actual - Value(id):E2} off");

    /// <summary>Fields of the data lines of a file, comments and header left out.</summary>
    public static IEnumerable<string[]> Lines(string file) =>
        System.IO.File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "Data", file))
            .Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(Fields);

    private static Dictionary<string, double> Read(string file, int column) =>
        Lines(file).ToDictionary(f => f[0], f => double.Parse(f[column], CultureInfo.InvariantCulture));

    private static string[] Fields(string line)
    {
        List<string> fields = [""];
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) fields.Add("");
            else fields[^1] += c;
        }

        return [.. fields];
    }
}
