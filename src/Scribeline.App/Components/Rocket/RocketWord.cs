namespace Scribeline.App.Components.Rocket;

/// <summary>Words beside the drawing, with a thin line to what they name.</summary>
/// <param name="Words">First line.</param>
/// <param name="More">Second line; empty for none.</param>
/// <param name="At">Where what they name is, down the drawing.</param>
/// <param name="From">Where it is across.</param>
/// <param name="Path">What is picked with them; null for nothing.</param>
/// <param name="Kind">How they are set.</param>
public sealed record RocketWord(string Words, string More, double At, double From, string? Path, string Kind)
{
    /// <summary>Where they stand, down the drawing.</summary>
    public double Y { get; init; } = At;

    /// <summary>The first line as it stands beside the drawing: broken in two where it is long, and cut where it is longer still.</summary>
    public IReadOnlyList<string> Lines { get; } = Broken(Words, Kind == "charge" ? 18 : 16);

    private double Height => (Lines.Count * 19) + (More.Length > 0 ? 17 : 0) + 3;

    /// <summary>The words moved apart so that none covers another, each as near to what it names as can be.</summary>
    /// <param name="words">What is to be said.</param>
    /// <param name="bottom">Where the drawing ends.</param>
    /// <param name="size">Size of the words, of that with the rocket seen whole.</param>
    public static IReadOnlyList<RocketWord> Spread(IEnumerable<RocketWord> words, double bottom, double size)
    {
        RocketWord[] placed = [.. words.OrderBy(w => w.At)];
        for (var i = 0; i < placed.Length; i++)
        {
            var least = i == 0 ? 16 * size : placed[i - 1].Y + (placed[i - 1].Height * size);
            placed[i] = placed[i] with { Y = Math.Max(placed[i].At, least) };
        }

        // Pushed out at the bottom: back up.
        for (var i = placed.Length - 1; i >= 0; i--)
        {
            var most = (i == placed.Length - 1 ? bottom : placed[i + 1].Y) - (placed[i].Height * size);
            if (placed[i].Y <= most) break;
            placed[i] = placed[i] with { Y = most };
        }

        return placed;
    }

    private static IReadOnlyList<string> Broken(string words, int widest)
    {
        if (words.Length <= widest) return [words];
        var at = words.LastIndexOf(' ', widest);
        var (first, rest) = at > 0 ? (words[..at], words[(at + 1)..]) : (words[..widest], words[widest..]);
        return [first, rest.Length <= widest ? rest : $"{rest[..(widest - 1)].TrimEnd()}…"];
    }
}
