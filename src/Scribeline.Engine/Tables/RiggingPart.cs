using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tables;

/// <summary>A link, eye or U-bolt that a cord ties to, by its size.</summary>
/// <param name="Name">As typed in a design, with its size.</param>
/// <param name="WorkingLoad">In line, N; null where it follows from the thread.</param>
/// <param name="Thread">Of its legs or shank; null where it has none that is known.</param>
/// <param name="Legs">Legs that share the load; 0 for a link.</param>
/// <param name="Spread">Centre to centre of the legs, m; 0 for one.</param>
/// <param name="Washer">Outside diameter of what bears on the plate, m; null where unknown.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record RiggingPart(string Name, double? WorkingLoad, ThreadName? Thread, int Legs, double Spread, double? Washer, string Source)
{
    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<RiggingPart> All { get; } = [.. Read().Select(r => r.Part)];

    /// <summary>The part of a name, whatever the case; null if unknown: a bent-wire eye has no rating.</summary>
    /// <param name="name">As typed.</param>
    public static RiggingPart? Find(string name)
    {
        var plain = Plain(name);
        return Read().FirstOrDefault(r => r.Names.Contains(plain)).Part;
    }

    private static string Plain(string name)
    {
        var words = name.Replace("\"", " in", StringComparison.Ordinal).ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return string.Join(' ', words[^1] == "in" ? words[..^1] : words);
    }

    private static IEnumerable<(RiggingPart Part, string[] Names)> Read() => EmbeddedTable.Rows("rigging", 8).Select(cells =>
    {
        double? Number(int i) => EmbeddedTable.NumberOrNull(cells[i]);
        var thread = cells[3].Length == 0 ? null : ThreadName.Read(cells[3]).Value;
        return (
            new RiggingPart(cells[0], Number(2), thread, (int)EmbeddedTable.Number(cells[4]), EmbeddedTable.Number(cells[5]) / 1000, Number(6) / 1000, cells[7]),
            (string[])[Plain(cells[0]), .. cells[1].Split(';').Select(Plain)]);
    });
}
