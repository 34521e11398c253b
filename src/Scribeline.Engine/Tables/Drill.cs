namespace Scribeline.Engine.Tables;

/// <summary>A twist drill.</summary>
/// <param name="Name">As it is called: "#29", "B", "5/32", "3.2 mm".</param>
/// <param name="Family">number, letter, fraction or metric.</param>
/// <param name="Diameter">m.</param>
/// <param name="Source">Where the diameter comes from.</param>
public sealed record Drill(string Name, string Family, double Diameter, string Source)
{
    /// <summary>Every drill up to an inch, thinnest first.</summary>
    public static IReadOnlyList<Drill> All { get; } = Read();

    /// <summary>The thinnest drill not below a diameter; null where it is beyond an inch.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="inch">From the fractions, numbers and letters of inch sets, or the metric ones.</param>
    public static Drill? NotBelow(double diameter, bool inch) =>
        All.FirstOrDefault(d => d.Family == "metric" != inch && d.Diameter >= diameter);

    /// <summary>The drill of a name; null if there is none.</summary>
    /// <param name="name">As it is called.</param>
    public static Drill? Named(string name) => All.FirstOrDefault(d => d.Name == name);

    /// <summary>The drill nearest to a diameter.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="inch">From the fractions, numbers and letters of inch sets, or the metric ones; null for any.</param>
    public static Drill Nearest(double diameter, bool? inch = null) =>
        All.Where(d => inch is null || d.Family == "metric" != inch).MinBy(d => Math.Abs(d.Diameter - diameter))!;

    private static Drill[] Read() =>
        [.. EmbeddedTable.Rows("drills", 4).Select(cells => new Drill(cells[0], cells[1], 1e-3 * EmbeddedTable.Number(cells[2]), cells[3])).OrderBy(d => d.Diameter)];
}
