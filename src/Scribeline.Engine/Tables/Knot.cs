namespace Scribeline.Engine.Tables;

/// <summary>How an end of a cord is made, and what that leaves of its strength.</summary>
/// <param name="Name">As typed in a design.</param>
/// <param name="Low">Least share of the strength it leaves.</param>
/// <param name="High">Greatest share.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record Knot(string Name, double Low, double High, string Source)
{
    /// <summary>Share that any knot leaves of a para-aramid cord: common practice.</summary>
    public const double InAramid = 0.5;

    /// <summary>Least of all: an end of no known kind.</summary>
    public static double Unknown => InAramid;

    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<Knot> All { get; } = [.. Read().Select(r => r.Knot)];

    /// <summary>Whether it is a knot rather than sewing or a splice.</summary>
    public bool Tied => Name is not ("sewn" or "splice");

    /// <summary>The knot of a name, whatever the case; null if unknown.</summary>
    /// <param name="name">As typed.</param>
    public static Knot? Find(string name) => Read().FirstOrDefault(r => r.Names.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase)).Knot;

    /// <summary>Share of the strength it leaves at least.</summary>
    /// <param name="aramid">Whether the cord is para-aramid.</param>
    public double Leaves(bool aramid) => aramid && Tied ? InAramid : Low;

    private static IEnumerable<(Knot Knot, string[] Names)> Read() => EmbeddedTable.Rows("knots", 5).Select(cells => (
        new Knot(cells[0], EmbeddedTable.Number(cells[2]), EmbeddedTable.Number(cells[3]), cells[4]),
        (string[])[cells[0], .. cells[1].Split(';', StringSplitOptions.RemoveEmptyEntries)]));
}
