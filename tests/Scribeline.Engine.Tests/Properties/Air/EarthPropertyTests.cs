using CsCheck;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Properties.Air;

public class EarthPropertyTests
{
    private static readonly Gen<Geodetic> Points =
        Gen.Select(Gen.Double[-1.57, 1.57], Gen.Double[-3.14, 3.14], Gen.Double[-500, 100_000]).Select((p, l, h) => new Geodetic(p, l, h));

    [Fact]
    public void Local_axes_round_trip() => Gen.Select(Points, Gen.Double[-50_000, 50_000].Array[3]).Sample((origin, x) =>
    {
        var frame = new LocalFrame(origin);
        var (e, n, u) = frame.ToLocal(frame.ToGeodetic(x[0], x[1], x[2]));
        Assert.Equal(x[0], e, 1e-6);
        Assert.Equal(x[1], n, 1e-6);
        Assert.Equal(x[2], u, 1e-6);
    });

    [Fact]
    public void Geodesic_reads_the_same_both_ways() => Gen.Select(Points, Gen.Double[-0.5, 0.5], Gen.Double[-1, 1]).Sample((a, dp, dl) =>
    {
        var b = new Geodetic(Math.Clamp(a.Latitude + dp, -1.57, 1.57), a.Longitude + dl, 0);
        var (there, back) = (Geodesic.Between(a, b)!.Value, Geodesic.Between(b, a)!.Value);
        Assert.Equal(there.Distance, back.Distance, 1e-3);
        if (there.Distance > 1000) Assert.Equal(0, Math.IEEERemainder(there.ReverseAzimuth - back.Azimuth, Math.Tau), 1e-6);
    });

    // Geopotential height is the integral of gravity: its slope is γ/g0 at every height and latitude (second order left: 3e-6 at 10 km).
    [Fact]
    public void Geopotential_height_is_the_integral_of_gravity() => Gen.Select(Gen.Double[-1.5, 1.5], Gen.Double[0, 10_000]).Sample((latitude, z) =>
    {
        var field = Geopotential.AtLatitude(latitude);
        var slope = (field.Height<Scalar>(z + 1) - field.Height<Scalar>(z - 1)).Value / 2;
        Assert.Equal(Gravity.Normal(latitude, z) / AirConstants.StandardGravity, slope, 1e-7);
        Assert.Equal(z, field.Geometric(field.Height<Scalar>(z)), 1e-7);
    });

    [Fact]
    public void Coriolis_does_no_work() => Gen.Select(Gen.Double[-1.57, 1.57], Gen.Double[-300, 300].Array[3]).Sample((latitude, v) =>
    {
        var (e, n, u) = new SiteGravity(latitude).Coriolis<Scalar>(v[0], v[1], v[2]);
        Assert.Equal(0, (e * v[0]) + (n * v[1]) + (u * v[2]), 1e-12);
    });
}
