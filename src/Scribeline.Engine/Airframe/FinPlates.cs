using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// Fins with their tabs, as flat plates of the root's thickness; what edge rounding or bevels take off is neglected, and so is cant.
/// </summary>
/// <param name="Name">As typed.</param>
/// <param name="Material">What they are made of.</param>
/// <param name="Fins">What the air sees; its root leading edge is counted from the front of the part.</param>
/// <param name="TabFront">Front of the tab, m aft of the root leading edge.</param>
/// <param name="TabLength">Along the root, m; 0 for fins without tabs.</param>
/// <param name="TabDepth">From the body's outer surface inwards, m.</param>
public sealed record FinPlates(string Name, Material Material, FinSet Fins, double TabFront = 0, double TabLength = 0, double TabDepth = 0)
    : Fitting(Name, Fins.RootLeadingEdge)
{
    /// <inheritdoc/>
    public override double Length => Fins.Outline.RootChord();

    /// <summary>The fins at their true station.</summary>
    /// <param name="partFront">Station of the front of the part, m.</param>
    public FinSet Placed(double partFront) => Fins with { RootLeadingEdge = partFront + Fins.RootLeadingEdge };

    /// <inheritdoc/>
    public override MassProperties At(double partFront)
    {
        PlaneMoments plane = Fins.Outline.Moments();
        if (TabLength > 0 && TabDepth > 0) plane += PlaneMoments.Rectangle(TabFront, -TabDepth, TabLength, TabDepth);
        double areal = Material.Density * Fins.Thickness, mass = areal * plane.Area;
        if (mass == 0) return MassProperties.None(partFront + Offset);

        // About the centroid of one fin; x forward while the plane's x runs aft, hence the sign of the product.
        double xx = areal * plane.CentralXx, rr = areal * plane.CentralYy, xr = -areal * plane.CentralXy, tt = mass * Fins.Thickness * Fins.Thickness / 12;
        double radius = Fins.BodyRadius + plane.CentroidY, station = partFront + Offset + plane.CentroidX;
        return MassProperties.Sum(Enumerable.Range(0, Fins.Count).Select(i =>
        {
            double clock = Fins.FirstClock + 2 * Math.PI * i / Fins.Count;
            return new MassProperties(
                mass, station, radius * Math.Sin(clock), -radius * Math.Cos(clock), InertiaTensor.AtClock(clock, xx, rr, tt, xr), Basis.Estimated);
        }));
    }
}
