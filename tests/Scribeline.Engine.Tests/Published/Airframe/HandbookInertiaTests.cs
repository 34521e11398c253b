using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Tests.Published.Airframe;

/// <summary>
/// Centroids and inertias of homogeneous solids and thin shells: Beer and Johnston, Vector Mechanics for Engineers, inside cover, and
/// Marks' Standard Handbook for Mechanical Engineers, section 3.2; both from memory.
/// </summary>
public class HandbookInertiaTests
{
    private const double Density = 1825, R = 0.05, L = 0.3;

    private static BodySection Nose(BodyShape shape, double length, double parameter = 0) => new("nose", new(shape, parameter), 0, length, 0, 2 * R);

    private static void Near(MassProperties body, double mass, double station, double axialPerMass, double lateralPerMass, double tolerance = 1e-12)
    {
        Assert.Equal(1, body.Mass / mass, tolerance);
        Assert.Equal(1, body.Station / station, tolerance);
        Assert.Equal(1, body.Inertia.Xx / (mass * axialPerMass), tolerance);
        Assert.Equal(1, body.Inertia.Yy / (mass * lateralPerMass), tolerance);
        Assert.Equal(body.Inertia.Yy, body.Inertia.Zz);
    }

    [Fact]
    public void Cylinder() => Near(
        RevolutionMoments.Ring(0, L, 2 * R, 0).Filled(Density), Density * Math.PI * R * R * L, L / 2, R * R / 2, (3 * R * R + L * L) / 12);

    [Fact]
    public void Hollow_cylinder_far_from_the_tip()
    {
        double r = 0.048, mass = Density * Math.PI * (R * R - r * r) * L;
        Near(RevolutionMoments.Ring(2, L, 2 * R, 2 * r).Filled(Density), mass, 2 + L / 2, (R * R + r * r) / 2, (3 * (R * R + r * r) + L * L) / 12);
    }

    [Fact]
    public void Thin_disc() => Near(
        RevolutionMoments.Ring(2, 1e-6, 2 * R, 0).Filled(Density), Density * Math.PI * R * R * 1e-6, 2 + 5e-7, R * R / 2, R * R / 4, 1e-9);

    [Fact]
    public void Cone() => Near(
        Nose(BodyShape.Conical, L).Moments().Filled(Density), Density * Math.PI * R * R * L / 3, 0.75 * L, 0.3 * R * R, 3.0 / 80 * (4 * R * R + L * L));

    [Fact]
    public void Hemisphere() => Near(
        Nose(BodyShape.Ellipsoid, R).Moments().Filled(Density), Density * 2 * Math.PI / 3 * R * R * R, R - 3.0 / 8 * R, 0.4 * R * R, 83.0 / 320 * R * R);

    [Fact]
    public void Hemisphere_as_an_ogive() => Near(
        Nose(BodyShape.TangentOgive, R).Moments().Filled(Density),
        Density * 2 * Math.PI / 3 * R * R * R, R - 3.0 / 8 * R, 0.4 * R * R, 83.0 / 320 * R * R, 1e-10);

    [Fact]
    public void Half_ellipsoid() => Near(
        Nose(BodyShape.Ellipsoid, L).Moments().Filled(Density),
        Density * 2 * Math.PI / 3 * R * R * L, L - 3.0 / 8 * L, 0.4 * R * R, R * R / 5 + L * L / 5 - 9.0 / 64 * L * L);

    [Fact]
    public void Paraboloid() => Near(
        Nose(BodyShape.Power, L, 0.5).Moments().Filled(Density), Density * Math.PI / 2 * R * R * L, 2 * L / 3, R * R / 3, R * R / 6 + L * L / 18);

    // Frustum: volume πh(R² + Rr + r²)/3, centroid from the large base h(R² + 2Rr + 3r²)/(4(R² + Rr + r²)), axial 3m(R⁵ - r⁵)/(10(R³ - r³)).
    [Fact]
    public void Frustum()
    {
        double r = 0.03, sum = R * R + R * r + r * r;
        MassProperties body = RevolutionMoments.Frustum(1, L, R, r).Filled(Density);
        Assert.Equal(Density * Math.PI * L * sum / 3, body.Mass, 1e-12);
        Assert.Equal(1 + L * (R * R + 2 * R * r + 3 * r * r) / (4 * sum), body.Station, 1e-12);
        Assert.Equal(body.Mass * 0.3 * (Math.Pow(R, 5) - Math.Pow(r, 5)) / (Math.Pow(R, 3) - Math.Pow(r, 3)), body.Inertia.Xx, 1e-12);
    }

    // Thin shells; the wall is thin enough that its own thickness enters at the order of the tolerance.
    [Fact]
    public void Thin_conical_shell()
    {
        const double wall = 1e-7;
        BodySection cone = Nose(BodyShape.Conical, L);
        MassProperties shell = (cone.Moments() - cone.Cavity(wall)).Filled(Density);
        Near(shell, Density * Math.PI * R * Math.Sqrt(R * R + L * L) * wall, 2 * L / 3, R * R / 2, R * R / 4 + L * L / 18, 1e-5);
    }

    [Fact]
    public void Thin_hemispherical_shell()
    {
        const double wall = 1e-7;
        BodySection dome = Nose(BodyShape.Ellipsoid, R);
        MassProperties shell = (dome.Moments() - dome.Cavity(wall)).Filled(Density);
        Near(shell, Density * 2 * Math.PI * R * R * wall, R / 2, 2.0 / 3 * R * R, 5.0 / 12 * R * R, 1e-5);
    }

    /// <summary>A dome of even wall is one hemisphere less a smaller one with the same centre, exactly.</summary>
    [Fact]
    public void Thick_hemispherical_shell()
    {
        const double wall = 0.008;
        BodySection dome = Nose(BodyShape.Ellipsoid, R);
        double r = R - wall, outer = Density * 2 * Math.PI / 3 * R * R * R, inner = Density * 2 * Math.PI / 3 * r * r * r;
        MassProperties shell = (dome.Moments() - dome.Cavity(wall)).Filled(Density);
        Assert.Equal(1, shell.Mass / (outer - inner), 1e-10);
        Assert.Equal((outer * (R - 3.0 / 8 * R) - inner * (R - 3.0 / 8 * r)) / (outer - inner), shell.Station, 1e-10);
        Assert.Equal(1, shell.Inertia.Xx / (0.4 * (outer * R * R - inner * r * r)), 1e-10);
    }

    /// <summary>The offset of an arc is an arc about the same centre, so a hollow ogive has a closed inner radius.</summary>
    [Fact]
    public void Hollow_ogive_has_a_concentric_inside()
    {
        const double wall = 0.003;
        BodySection ogive = Nose(BodyShape.TangentOgive, L);
        double rho = (R * R + L * L) / (2 * R);
        foreach (double s in new[] { 0.05, 0.1, 0.2, 0.29, 0.3 })
        {
            double expected = Math.Sqrt((rho - wall) * (rho - wall) - (L - s) * (L - s)) - (rho - R);
            Assert.Equal(expected, ogive.InnerRadiusAt(s, wall), 1e-12);
        }
    }
}
