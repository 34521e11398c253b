using CsCheck;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Airframe;

public class MassPropertiesTests
{
    private static readonly Gen<MassProperties> Body =
        from mass in Gen.Double[0.01, 5]
        from station in Gen.Double[0, 3]
        from y in Gen.Double[-0.1, 0.1]
        from z in Gen.Double[-0.1, 0.1]
        from size in Gen.Double[0.001, 0.3]
        from clock in Gen.Double[0, 6]
        select new MassProperties(mass, station, y, z, mass * InertiaTensor.AtClock(clock, size, size / 3, size / 7, size / 9), Basis.Estimated);

    [Fact]
    public void Summing_in_groups_changes_nothing() => Gen.Select(Body, Body, Body).Sample((a, b, c) =>
    {
        MassProperties all = MassProperties.Sum(a, b, c), grouped = MassProperties.Sum(MassProperties.Sum(a, b), c);
        Near(all, grouped, 1e-12);
    });

    [Fact]
    public void Moving_everything_moves_the_balance_alone() => Gen.Select(Body, Body, Gen.Double[-2, 2]).Sample((a, b, aft) =>
        Near(MassProperties.Sum(a, b).Moved(aft), MassProperties.Sum(a.Moved(aft), b.Moved(aft)), 1e-12));

    [Fact]
    public void Inertia_is_least_about_the_centre_of_mass() => Gen.Select(Body, Gen.Double[0, 3], Gen.Double[-0.1, 0.1]).Sample((body, s, y) =>
        Assert.True(body.InertiaAbout(s, y, 0).Zz >= body.Inertia.Zz - 1e-12));

    [Fact]
    public void Mirroring_clock_angles_mirrors_offsets_and_products() => Gen.Select(Gen.Double[0, 6.2], Gen.Double[0, 6.2]).Sample((fins, ballast) =>
    {
        MassProperties there = SampleRocket.Vehicle(fins, ballast).Masses().Of(new(0, 0)), back = SampleRocket.Vehicle(-fins, -ballast).Masses().Of(new(0, 0));
        Near(there, back with { OffsetY = -back.OffsetY, Inertia = back.Inertia with { Xy = -back.Inertia.Xy, Yz = -back.Inertia.Yz } }, 1e-12);
    });

    [Fact]
    public void Three_fins_feel_the_same_whichever_way_they_are_clocked() => Gen.Double[0, 6.2].Sample(clock =>
    {
        MassProperties a = SampleRocket.Vehicle(clock).Masses().Parts[3].Built, b = SampleRocket.Vehicle(0).Masses().Parts[3].Built;
        Near(a, b, 1e-9);
    });

    [Fact]
    public void Splitting_a_tube_in_two_changes_nothing() => Gen.Double[0.05, 0.85].Sample(cut =>
    {
        Tube whole = new("tube", 0.4, SampleRocket.Glass, 0.9, 0.080, 0.076), front = whole with { TubeLength = cut };
        Tube rear = whole with { Front = front.Rear, TubeLength = 0.9 - cut };
        Near(whole.Bare, MassProperties.Sum(front.Bare, rear.Bare), 1e-11);
    });

    [Fact]
    public void Splitting_a_cone_in_two_changes_nothing() => Gen.Double[0.02, 0.28].Sample(cut =>
    {
        RevolutionMoments whole = RevolutionMoments.Frustum(0.1, 0.3, 0, 0.05);
        double middle = 0.05 * cut / 0.3;
        RevolutionMoments parts = RevolutionMoments.Frustum(0.1, cut, 0, middle) + RevolutionMoments.Frustum(0.1 + cut, 0.3 - cut, middle, 0.05);
        Near(whole.Filled(1000), parts.Filled(1000), 1e-11);
    });

    [Fact]
    public void Mass_grows_with_the_cube_of_size_and_inertia_with_its_fifth_power() => Gen.Double[0.2, 5].Sample(k =>
    {
        MassProperties one = Nose(1), other = Nose(k);
        Assert.Equal(1, other.Mass / (one.Mass * k * k * k), 1e-9);
        Assert.Equal(1, other.Inertia.Yy / (one.Inertia.Yy * Math.Pow(k, 5)), 1e-9);
        Assert.Equal(1, other.Station / (one.Station * k), 1e-9);
    });

    [Theory]
    [InlineData(BodyShape.Conical, 0.03, 0.05)]
    [InlineData(BodyShape.Conical, 0.05, 0.03)]
    [InlineData(BodyShape.Ellipsoid, 0.05, 0.03)]
    [InlineData(BodyShape.Haack, 0.03, 0.05)]
    [InlineData(BodyShape.TangentOgive, 0, 0.05)]
    public void A_hollow_part_is_the_same_wherever_it_stands(BodyShape shape, double front, double rear) => Gen.Double[0, 3].Sample(station =>
    {
        Transition here = new("part", 0, SampleRocket.Glass, new(shape), 0.1, 2 * front, 2 * rear, 0.002), there = here with { Front = station };
        Assert.True(here.Bare.Mass > 0);
        Near(here.Bare.Moved(station), there.Bare, 1e-9);
    });

    /// <summary>A conical wall: outer frustum less the inner one, whose radii are less by wall × slant / length, so V = π × slant × wall × (r₁ + r₂ - that).</summary>
    [Fact]
    public void A_conical_wall_by_hand()
    {
        const double wall = 0.002, slant = 0.1019803902718557;
        MassProperties part = new Transition("part", 1, SampleRocket.Glass, new(BodyShape.Conical), 0.1, 0.06, 0.10, wall).Bare;
        Assert.Equal(SampleRocket.Glass.Density * Math.PI * slant * wall * (0.03 + 0.05 - wall * slant / 0.1), part.Mass, 1e-12);
    }

    private static MassProperties Nose(double k) =>
        new NoseCone("nose", 0, SampleRocket.Glass, new(BodyShape.TangentOgive), 0.3 * k, 0.08 * k, 0.002 * k, new(0.08 * k, 0.076 * k, 0.07 * k)).Bare;

    internal static void Near(MassProperties a, MassProperties b, double tolerance)
    {
        double size = a.Inertia.Xx + a.Inertia.Yy + a.Inertia.Zz;
        Assert.Equal(a.Mass, b.Mass, tolerance * a.Mass);
        Assert.Equal(a.Station, b.Station, tolerance);
        Assert.Equal(a.OffsetY, b.OffsetY, tolerance);
        Assert.Equal(a.OffsetZ, b.OffsetZ, tolerance);
        foreach (var (x, y) in new[]
        {
            (a.Inertia.Xx, b.Inertia.Xx), (a.Inertia.Yy, b.Inertia.Yy), (a.Inertia.Zz, b.Inertia.Zz),
            (a.Inertia.Xy, b.Inertia.Xy), (a.Inertia.Xz, b.Inertia.Xz), (a.Inertia.Yz, b.Inertia.Yz),
        })
        {
            Assert.Equal(x, y, 10 * tolerance * size);
        }
    }
}
