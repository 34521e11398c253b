using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Recovery;

/// <summary>
/// Drag area of a piece that hangs or tumbles: η C_n d L for its body, 1.1 for the sides of its fins. C_n 1.1 for a cylinder broadside
/// below its drag crisis is Hoerner, Fluid-Dynamic Drag, 1965 (from memory); η 0.6 for attitude is common practice. Above Re ≈ 2·10⁵ the
/// true value may be half of it, so a descent without canopy is an estimate.
/// </summary>
public static class PieceDrag
{
    private const double Attitude = 0.6;
    private const double Broadside = 1.1;

    /// <summary>Least drag area of a hanging body over the one taken: η C_n 0.3 beyond the drag crisis of its cylinder (common practice).</summary>
    public const double LeastShare = 0.3 / (Attitude * Broadside);

    /// <summary>Greatest drag area of a hanging body over the one taken: η C_n 0.7 (common practice).</summary>
    public const double GreatestShare = 0.7 / (Attitude * Broadside);

    /// <summary>Projected area of a convex body that tumbles at random, m²: a quarter of its surface (Cauchy).</summary>
    /// <param name="surface">All of it, m².</param>
    public static double Tumbling(double surface) => surface / 4;

    /// <summary>Drag area, m².</summary>
    /// <param name="shape">The whole rocket's outside.</param>
    /// <param name="front">Station where the piece begins, m.</param>
    /// <param name="rear">Station where it ends, m.</param>
    public static double Area(OuterShape shape, double front, double rear)
    {
        double area = 0;
        foreach (var section in shape.Body)
        {
            var length = Math.Min(section.Front + section.Length, rear) - Math.Max(section.Front, front);
            if (length > 0) area += Attitude * Broadside * (section.FrontDiameter + section.RearDiameter) / 2 * length;
        }

        foreach (var fins in shape.Fins.Where(f => f.RootLeadingEdge >= front && f.RootLeadingEdge < rear))
        {
            // Half of the fins' area faces the air, whatever the turn of the piece: the mean of |sin| is 2/π of each.
            area += Broadside * fins.Count * FinPlanform.Of(fins.Outline).Area * 2 / Math.PI / 2;
        }

        return area;
    }
}
