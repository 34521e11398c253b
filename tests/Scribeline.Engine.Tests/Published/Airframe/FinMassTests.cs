using Scribeline.Engine.Airframe;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Tests.Published.Airframe;

/// <summary>Plane figures and fins. Sources beside the checks.</summary>
public class FinMassTests
{
    private static readonly Material Laminate = MaterialTable.Find("G10")!;

    // Strip integrals of a trapezoid 0.25 / 0.10 / 0.12 swept 0.13 m, computed independently: area, and the height of its centroid.
    [Fact]
    public void Trapezoid()
    {
        PlaneMoments fin = new TrapezoidFin(0.25, 0.10, 0.12, 0.13).Moments();
        Assert.Equal(0.0210000, fin.Area, 5e-8);
        Assert.Equal(0.0514286, fin.CentroidY, 5e-8);
    }

    // Half ellipse: area πcs/4, centroid 4s/3π, second moments π a³b/8 and π a b³/8 about its own straight side and axis (Marks, from memory).
    [Fact]
    public void Half_ellipse()
    {
        const double c = 0.2, s = 0.12;
        PlaneMoments fin = new EllipticalFin(c, s).Moments();
        Assert.Equal(Math.PI * c * s / 4, fin.Area, 1e-15);
        Assert.Equal(4 * s / (3 * Math.PI), fin.CentroidY, 1e-15);
        Assert.Equal(Math.PI * (c / 2) * s * s * s / 8, fin.Yy, 1e-15);
        Assert.Equal(Math.PI * s * Math.Pow(c / 2, 3) / 8, fin.CentralXx, 1e-15);
        Assert.Equal(0, fin.CentralXy, 1e-15);
    }

    // Triangle of base b, height h: b h³/36 about its centroid; right triangle product of inertia -b²h²/72 (Beer and Johnston, from memory).
    [Fact]
    public void Right_triangle()
    {
        const double b = 0.3, h = 0.2;
        PlaneMoments triangle = PlaneMoments.Polygon(new(0, 0), new(b, 0), new(0, h));
        Assert.Equal(b * h / 2, triangle.Area, 1e-15);
        Assert.Equal(b * h * h * h / 36, triangle.CentralYy, 1e-15);
        Assert.Equal(h * b * b * b / 36, triangle.CentralXx, 1e-15);
        Assert.Equal(-b * b * h * h / 72, triangle.CentralXy, 1e-15);
    }

    [Fact]
    public void A_polygon_is_the_same_either_way_round()
    {
        FinCorner[] corners = [new(0, 0), new(0.1, 0.12), new(0.2, 0.11), new(0.25, 0)];
        PlaneMoments there = PlaneMoments.Polygon(corners);
        Array.Reverse(corners);
        PlaneMoments back = PlaneMoments.Polygon(corners);
        Assert.Equal(there.Area, back.Area, 1e-15);
        Assert.Equal(there.CentralXy, back.CentralXy, 1e-15);
    }

    // Rectangular plates by the parallel axes of a box: m(b² + t²)/12 + m d² each.
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    public void Rectangular_fins(int count)
    {
        const double chord = 0.2, span = 0.1, thickness = 0.003, radius = 0.05;
        MassProperties fins = Fins(new TrapezoidFin(chord, chord, span, 0), count, radius, thickness).At(1);
        double one = Laminate.Density * chord * span * thickness, d = radius + span / 2;
        Assert.Equal(count * one, fins.Mass, 1e-12);
        Assert.Equal(1 + 0.5 + chord / 2, fins.Station, 1e-12);
        Assert.Equal(0, fins.OffsetY, 1e-15);
        Assert.Equal(count * (one * (span * span + thickness * thickness) / 12 + one * d * d), fins.Inertia.Xx, 1e-12);

        // Half of the radial second moment lies along y for three or more evenly spaced fins.
        double radial = one * (span * span / 12 + d * d), tangential = one * thickness * thickness / 12;
        double lateral = count * (one * chord * chord / 12 + (radial + tangential) / 2);
        Assert.Equal(lateral, fins.Inertia.Yy, 1e-12);
        Assert.Equal(lateral, fins.Inertia.Zz, 1e-12);
    }

    // Square less quarter circle: area r²(1 - π/4), centroid 0.2234 r from either wall (Marks, from memory).
    [Fact]
    public void Fillets()
    {
        const double root = 0.2, fillet = 0.01, radius = 0.05;
        FinPlates bare = Fins(new TrapezoidFin(root, 0.1, 0.1, 0.05), 4, radius, 0.003);
        MassProperties without = bare.At(0), with = (bare with { Fillet = fillet, FilletMaterial = MaterialTable.Find("epoxy") }).At(0);
        double mass = 4 * 2 * (1 - Math.PI / 4) * fillet * fillet * root * 1160, out2 = Math.Pow(radius + 0.2234 * fillet, 2), side2 = Math.Pow(0.0015 + 0.2234 * fillet, 2);
        Assert.Equal(mass, with.Mass - without.Mass, 1e-9);
        Assert.Equal(mass * (out2 + side2), with.Inertia.Xx - without.Inertia.Xx, 1e-4 * mass * out2);
    }

    internal static FinPlates Fins(FinOutline outline, int count, double radius, double thickness, double clock = 0) => new(
        "fins", Laminate, new("fins", count, outline, 0.5, radius, thickness, FinEdge.Square, FinEdge.Square, 0, 0, clock, double.NaN));
}
