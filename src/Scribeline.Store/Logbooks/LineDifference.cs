using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>
/// What changed between two texts, line by line: the fewest lines taken out and added (Myers, An O(ND) difference algorithm and its
/// variations, Algorithmica 1 (1986) 251). Ends of lines do not count.
/// </summary>
public static class LineDifference
{
    // Beyond this many changed lines the memory of the search is not worth its exactness: everything between is shown as replaced.
    private const int MostChanges = 2000;

    /// <summary>All lines of both texts in order: those taken out before those added in their place.</summary>
    public static ValueList<DifferentLine> Between(string before, string after)
    {
        var (old, now) = (Lines(before), Lines(after));
        var head = 0;
        while (head < old.Length && head < now.Length && old[head] == now[head]) head++;
        var tail = 0;
        while (tail < old.Length - head && tail < now.Length - head && old[^(tail + 1)] == now[^(tail + 1)]) tail++;

        List<DifferentLine> lines = [];
        for (var i = 0; i < head; i++) lines.Add(new(old[i], i + 1, i + 1));
        var kept = Kept(old.AsSpan(head, old.Length - head - tail), now.AsSpan(head, now.Length - head - tail));
        var (x, y) = (head, head);
        foreach (var (inOld, inNew) in kept.Select(k => (k.Old + head, k.New + head)).Append((old.Length - tail, now.Length - tail)))
        {
            for (; x < inOld; x++) lines.Add(new(old[x], x + 1, null));
            for (; y < inNew; y++) lines.Add(new(now[y], null, y + 1));
            if (x < old.Length - tail && y < now.Length - tail) lines.Add(new(old[x], ++x, ++y));
        }

        for (; x < old.Length; x++, y++) lines.Add(new(old[x], x + 1, y + 1));
        return lines.ToValueList();
    }

    private static string[] Lines(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        return lines[^1].Length == 0 ? lines[..^1] : lines;
    }

    /// <summary>Pairs of equal lines that stay, in order: the furthest reaching paths of Myers, walked back from the end.</summary>
    private static List<(int Old, int New)> Kept(ReadOnlySpan<string> old, ReadOnlySpan<string> now)
    {
        var most = Math.Min(old.Length + now.Length, MostChanges);
        List<int[]> paths = [];
        var furthest = new int[(2 * most) + 3];
        for (var changes = 0; changes <= most; changes++)
        {
            paths.Add((int[])furthest.Clone());
            for (var diagonal = -changes; diagonal <= changes; diagonal += 2)
            {
                var x = Start(furthest, most, diagonal, changes);
                while (x < old.Length && x - diagonal < now.Length && old[x] == now[x - diagonal]) x++;
                furthest[diagonal + most + 1] = x;
                if (x >= old.Length && x - diagonal >= now.Length) return WalkBack(paths, most, old.Length, now.Length);
            }
        }

        return [];
    }

    private static int Start(int[] furthest, int most, int diagonal, int changes) =>
        Added(furthest, most, diagonal, changes) ? furthest[diagonal + most + 2] : furthest[diagonal + most] + 1;

    // A line added comes from the diagonal above, a line taken out from the one below: whichever has come further.
    private static bool Added(int[] furthest, int most, int diagonal, int changes) =>
        diagonal == -changes || (diagonal != changes && furthest[diagonal + most] < furthest[diagonal + most + 2]);

    private static List<(int Old, int New)> WalkBack(List<int[]> paths, int most, int x, int y)
    {
        List<(int Old, int New)> kept = [];
        for (var changes = paths.Count - 1; changes >= 0; changes--)
        {
            var start = Start(paths[changes], most, x - y, changes);
            while (x > start) kept.Add((--x, --y));
            if (changes > 0 && Added(paths[changes], most, x - y, changes)) y--;
            else x--;
        }

        kept.Reverse();
        return kept;
    }
}
