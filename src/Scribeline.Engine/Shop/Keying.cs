using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// Whether a pattern of holes round a joint closes one way only. Holes are points (θ, z) on the tube; the joint can be made one way only
/// if no turn but none carries the pattern onto itself. For each cyclic assignment of the holes the greatest mismatch is made as small as a
/// turn can make it; the least of these is the best wrong fit.
/// </summary>
public static class Keying
{
    /// <summary>Standard uncertainty of a hole marked by a wrap template, m: root sum of squares of <see cref="Budget"/>.</summary>
    public static double Placing { get; } = Math.Sqrt(Budget.Sum(u => u * u));

    /// <summary>Scale, pencil, seam, tile join, punch and drill wander, m: common practice.</summary>
    public static ValueList<double> Budget => [0.16e-3, 0.30e-3, 0.30e-3, 0.25e-3, 0.30e-3, 0.40e-3];

    /// <summary>Mismatch of the best wrong way to close, m; infinite for one hole, 0 where the joint closes several ways.</summary>
    /// <param name="holes">Clock angle, rad, and distance along the tube, m.</param>
    /// <param name="radius">Of the surface where they meet, m.</param>
    public static double BestWrongFit(IReadOnlyList<(double Clock, double Along)> holes, double radius) => Best(holes, holes, radius, 1);

    /// <summary>Mismatch of the best way to put one end of a coupler where the other belongs, m; infinite where the patterns differ in number.</summary>
    /// <param name="ahead">Holes of the forward end: clock angle, and distance from the end's own edge.</param>
    /// <param name="behind">Holes of the aft end, likewise.</param>
    /// <param name="radius">m.</param>
    public static double BestReversedFit(IReadOnlyList<(double Clock, double Along)> ahead, IReadOnlyList<(double Clock, double Along)> behind, double radius) =>
        ahead.Count != behind.Count || ahead.Count == 0 ? double.PositiveInfinity : Best([.. ahead.Select(h => (-h.Clock, h.Along))], behind, radius, 0);

    /// <summary>What a screw may be pushed aside, m: two clearance holes (H₁ + H₂)/2 - F; one of them tapped (H₁ - F)/2.</summary>
    /// <param name="outer">H₁, m.</param>
    /// <param name="inner">H₂, m; null where it is tapped or holds a captive nut.</param>
    /// <param name="fastener">F, m.</param>
    public static double Slack(double outer, double? inner, double fastener) =>
        Math.Max(inner is { } second ? ((outer + second) / 2) - fastener : (outer - fastener) / 2, 0);

    /// <summary>Offset of one hole that surely blocks a wrong fit, m: slack + 3 √2 u.</summary>
    /// <param name="slack">m.</param>
    /// <param name="placing">u, of each pattern, m.</param>
    public static double Least(double slack, double placing) => slack + (3 * Math.Sqrt(2) * placing);

    /// <summary>Greatest least angle between n even fasteners and m even lines, rad: half the period at which their pattern repeats, π/lcm(n, m).</summary>
    /// <param name="fasteners">n.</param>
    /// <param name="lines">m.</param>
    public static double BestSeparation(int fasteners, int lines) => Math.PI / (fasteners / Divisor(fasteners, lines) * (double)lines);

    private static int Divisor(int a, int b) => b == 0 ? a : Divisor(b, a % b);

    private static double Best(IReadOnlyList<(double Clock, double Along)> from, IReadOnlyList<(double Clock, double Along)> onto, double radius, int first)
    {
        var (a, b) = (Sorted(from), Sorted(onto));
        var best = double.PositiveInfinity;
        for (var k = first; k < a.Length; k++)
        {
            var turns = new double[a.Length];
            var along = new double[a.Length];
            for (var i = 0; i < a.Length; i++)
            {
                var j = (i + k) % a.Length;
                turns[i] = b[j].Clock - a[i].Clock + (i + k >= a.Length ? 2 * Math.PI : 0);
                along[i] = b[j].Along - a[i].Along;
            }

            best = Math.Min(best, LeastGreatest(turns, along, radius));
        }

        return best;
    }

    // Holes in one line along the tube keep the order they have there.
    private static (double Clock, double Along)[] Sorted(IReadOnlyList<(double Clock, double Along)> holes) =>
        [.. holes.Select(h => (Clock: WrapTemplate.Turn(h.Clock), h.Along)).OrderBy(h => Math.Round(h.Clock, 6)).ThenBy(h => h.Along)];

    // The greatest of convex functions of the turn is convex: golden section search, Kiefer, Proc. Amer. Math. Soc. 4 (1953).
    private static double LeastGreatest(double[] turns, double[] along, double radius)
    {
        double Greatest(double turn) => turns.Zip(along, (t, z) => Math.Sqrt((radius * (turn - t) * radius * (turn - t)) + (z * z))).Max();
        double low = turns.Min(), high = turns.Max(), share = (Math.Sqrt(5) - 1) / 2;
        while (high - low > 1e-9)
        {
            double left = high - (share * (high - low)), right = low + (share * (high - low));
            if (Greatest(left) < Greatest(right)) high = right;
            else low = left;
        }

        return Greatest((low + high) / 2);
    }
}
