namespace Scribeline.Engine.Quantities;

/// <summary>Finds what was meant by a mistyped word.</summary>
public static class Spelling
{
    /// <summary>Letters to insert, drop, change or swap with a neighbour to turn one word into the other (optimal string alignment).</summary>
    public static int Distance(string one, string other)
    {
        var (before, last, here) = (new int[other.Length + 1], new int[other.Length + 1], new int[other.Length + 1]);
        for (var j = 0; j <= other.Length; j++) last[j] = j;
        for (var i = 1; i <= one.Length; i++)
        {
            here[0] = i;
            for (var j = 1; j <= other.Length; j++)
            {
                var change = one[i - 1] == other[j - 1] ? 0 : 1;
                here[j] = Math.Min(Math.Min(last[j] + 1, here[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1]) here[j] = Math.Min(here[j], before[j - 2] + 1);
            }

            (before, last, here) = (last, here, before);
        }

        return last[other.Length];
    }

    /// <summary>The nearest of some words, if near enough to be meant: up to a third of its letters away, capitals aside. Null otherwise.</summary>
    /// <param name="typed">At most 60 letters are looked at.</param>
    /// <param name="words">What might be meant.</param>
    public static string? Nearest(string typed, IEnumerable<string> words)
    {
        if (typed.Length is 0 or > 60) return null;
        var small = typed.Trim().ToUpperInvariant();
        var near = words.Select(w => (Word: w, Away: Distance(w.ToUpperInvariant(), small))).OrderBy(w => w.Away).FirstOrDefault();
        return near.Word is not null && near.Away <= Allowed(Math.Min(small.Length, near.Word.Length)) ? near.Word : null;
    }

    // Short words differ by one letter without being alike.
    private static int Allowed(int letters) => letters < 3 ? 0 : Math.Max(1, letters / 3);

    /// <summary>"Did you mean …?" for the nearest word, or the list of words.</summary>
    public static string Suggest(string typed, IReadOnlyCollection<string> words) => Nearest(typed, words) is { } near
        ? $"Did you mean '{near}'?"
        : words.Count == 0 ? "" : words.Count == 1 ? $"It can be {words.First()}." : $"It can be {string.Join(", ", words.SkipLast(1))} or {words.Last()}.";
}
