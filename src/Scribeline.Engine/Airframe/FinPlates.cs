using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// Fins with their tabs, as flat plates of the root's thickness; what edge rounding or bevels take off is neglected, and so is cant.
/// Fillets run the length of the root, one on each side, as if the body were flat under them.
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
    /// <summary>Share of a fillet's radius from either wall to its centroid: (10 - 3π)/(12 - 3π), square less quarter circle.</summary>
    private const double FilletCentroid = (10 - 3 * Math.PI) / (12 - 3 * Math.PI);

    /// <summary>Radius of the fillets at the root, m; 0 for none.</summary>
    public double Fillet { get; init; }

    /// <summary>What the fillets are made of.</summary>
    public Material? FilletMaterial { get; init; }

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
        return MassProperties.Sum(Enumerable.Range(0, Fins.Count).SelectMany(i =>
        {
            double clock = Fins.FirstClock + 2 * Math.PI * i / Fins.Count;
            MassProperties plate = new(
                mass, station, radius * Math.Sin(clock), -radius * Math.Cos(clock), InertiaTensor.AtClock(clock, xx, rr, tt, xr), Basis.Estimated);
            return new[] { plate, Fillets(partFront, clock) };
        }));
    }

    /// <summary>The two fillets of one fin.</summary>
    private MassProperties Fillets(double partFront, double clock)
    {
        double root = Fins.Outline.RootChord(), mass = (FilletMaterial?.Density ?? 0) * 2 * (1 - Math.PI / 4) * Fillet * Fillet * root;
        double radius = Fins.BodyRadius + FilletCentroid * Fillet, aside = Fins.Thickness / 2 + FilletCentroid * Fillet;
        return new(
            mass, partFront + Offset + root / 2, radius * Math.Sin(clock), -radius * Math.Cos(clock),
            InertiaTensor.AtClock(clock, mass * root * root / 12, 0, mass * aside * aside, 0), Basis.Estimated);
    }
}
