namespace Scribeline.Engine.Shop;

/// <summary>Outlines drawn tight round points.</summary>
internal static class OutlineHull
{
    /// <summary>Convex hull, in order round: Andrew, Information Processing Letters 9 (1979).</summary>
    public static IEnumerable<SidePoint> Of(IEnumerable<SidePoint> points)
    {
        SidePoint[] sorted = [.. points.Distinct().OrderBy(p => p.Station).ThenBy(p => p.Across)];
        return sorted.Length < 3 ? sorted : [.. Half(sorted), .. Half(sorted.AsEnumerable().Reverse())];
    }

    /// <summary>Whether an outline turns one way only.</summary>
    public static bool IsConvex(IReadOnlyList<SidePoint> outline)
    {
        var turns = Enumerable.Range(0, outline.Count).Select(i => Turn(outline[i], outline[(i + 1) % outline.Count], outline[(i + 2) % outline.Count])).ToList();
        return turns.TrueForAll(t => t >= -1e-15) || turns.TrueForAll(t => t <= 1e-15);
    }

    /// <summary>
    /// A fin's outline, root leading edge first and root trailing edge last, grown across: its root moves inwards, the rest outwards. Off the
    /// root an overhanging edge stays where it is, which is within half the fin's thickness.
    /// </summary>
    public static IEnumerable<SidePoint> Thickened(IReadOnlyList<SidePoint> outline, double half)
    {
        var outward = Math.Sign(outline.Sum(p => p.Across)) * half;
        return
        [
            outline[0] with { Across = outline[0].Across - outward },
            .. outline.Select(p => p with { Across = p.Across + outward }),
            outline[^1] with { Across = outline[^1].Across - outward },
        ];
    }

    private static List<SidePoint> Half(IEnumerable<SidePoint> points)
    {
        List<SidePoint> chain = [];
        foreach (var point in points)
        {
            while (chain.Count > 1 && Turn(chain[^2], chain[^1], point) <= 0) chain.RemoveAt(chain.Count - 1);
            chain.Add(point);
        }

        chain.RemoveAt(chain.Count - 1);
        return chain;
    }

    private static double Turn(SidePoint a, SidePoint b, SidePoint c) =>
        ((b.Station - a.Station) * (c.Across - a.Across)) - ((b.Across - a.Across) * (c.Station - a.Station));
}
