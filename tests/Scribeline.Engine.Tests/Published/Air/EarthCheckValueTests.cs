using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Row = System.Collections.Generic.Dictionary<string, string>;

namespace Scribeline.Engine.Tests.Published.Air;

/// <summary>Rows E of air-check-values.csv and further values of WGS 84 (NIMA TR8350.2), Vincenty (1975) and NASA/TM-2015-218675.</summary>
public class EarthCheckValueTests
{
    private const double Degree = Math.PI / 180;

    public static TheoryData<string> Ids => [.. Rows().Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_is_met(string id)
    {
        var row = Rows().Single(r => r["id"] == id);
        if (row["unit"] == "d m s")
        {
            // Azimuths in degrees, minutes and seconds, to a hundredth of a second.
            var p = row["value"].Split(' ').Select(s => double.Parse(s, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
            Assert.Equal(p[0] + (p[1] / 60) + (p[2] / 3600), Computed(row), 0.01 / 3600);
            return;
        }
        var expected = row.Number("value");
        Assert.Equal(expected, Computed(row), Math.Abs(expected) * row.Number("rel_tol"));
    }

    // Normal gravity, m/s², at latitude and height (computed independently; seven decimals).
    [Theory]
    [InlineData(0, 9.7803253, 9.7772384, 9.7710688, 9.7495206)]
    [InlineData(30, 9.7932473, 9.7901614, 9.7839939, 9.7624533)]
    [InlineData(40, 9.8016969, 9.7986117, 9.7924456, 9.7709099)]
    [InlineData(45, 9.8061978, 9.8031129, 9.7969476, 9.7754146)]
    [InlineData(52, 9.8124741, 9.8093898, 9.8032255, 9.7816962)]
    [InlineData(60, 9.8191770, 9.8160932, 9.8099301, 9.7884047)]
    [InlineData(90, 9.8321849, 9.8291023, 9.8229413, 9.8014236)]
    public void Normal_gravity(double latitude, double h0, double h1000, double h3000, double h10000)
    {
        double[] heights = [0, 1000, 3000, 10_000], expected = [h0, h1000, h3000, h10000];
        for (var i = 0; i < 4; i++) Assert.Equal(expected[i], Gravity.Normal(latitude * Degree, heights[i]), 5.1e-8);
    }

    // Standard atmosphere's gravity at 1, 3, 10 km (computed independently).
    [Theory]
    [InlineData(1000, 9.803565)]
    [InlineData(3000, 9.797400)]
    [InlineData(10_000, 9.775868)]
    public void Standard_gravity(double height, double gravity) => Assert.Equal(gravity, Gravity.Standard<Scalar>(height), 5.1e-7);

    // NASA/TM-2015-218675 data files: gravitation 32.106536 ft/s² at 30 000 ft over the equator.
    [Fact]
    public void Gravitation_with_J2()
    {
        var (x, y, z) = Gravity.Gravitation<Scalar>(Wgs84.SemiMajorAxis + (30_000 * 0.3048), 0, 0);
        Assert.Equal(-32.106536, x / 0.3048, 1e-6);
        Assert.Equal((0, 0), (y.Value, z.Value));
    }

    // Gravitation less the centrifugal part is normal gravity, at equator and pole, once the next term of the ellipsoid's field is
    // added: J4 = -2.37091222e-6 (TR8350.2), by -15/8 J4 at the equator and -5 J4 (a/b)⁴ at the pole. What is left is J6, 1e-7 or so.
    [Fact]
    public void Gravitation_agrees_with_normal_gravity()
    {
        const double J4 = -2.37091222e-6, a = Wgs84.SemiMajorAxis, b = Wgs84.SemiMinorAxis, GM = Wgs84.GravitationalConstant;
        var equator = -Gravity.Gravitation<Scalar>(a, 0, 0).X - (Math.Pow(Wgs84.RotationRate, 2) * a) - (GM / (a * a) * 15 / 8 * J4);
        var pole = -Gravity.Gravitation<Scalar>(0, 0, b).Z - (GM / (b * b) * 5 * J4 * Math.Pow(a / b, 4));
        Assert.Equal(Wgs84.EquatorGravity, equator, 1e-6);
        Assert.Equal(Wgs84.PoleGravity, pole, 1e-6);
    }

    // Earth-fixed coordinates, m (computed independently).
    [Theory]
    [InlineData(33, -107, 1400, -1565840.2063, -5121632.5389, 3454721.1358)]
    [InlineData(52.2, 5.4, 10, 3900020.8568, 368660.5132, 5016481.4509)]
    [InlineData(-34.9, 138.6, 50, -3928199.0157, 3463173.2867, -3628802.3235)]
    public void Earth_fixed(double latitude, double longitude, double height, double x, double y, double z)
    {
        var point = new Geodetic(latitude * Degree, longitude * Degree, height).ToEarthFixed();
        Assert.Equal(x, point.X, 6e-5);
        Assert.Equal(y, point.Y, 6e-5);
        Assert.Equal(z, point.Z, 6e-5);
    }

    // Local coordinates back to degrees and metres (computed independently; the first is a published example of a geodesic library).
    [Theory]
    [InlineData(48.833333333333333, 2.333333333333333, 0, -38000, 230000, -4000, 50.900336422, 1.793175675, 264.915192)]
    [InlineData(33, -107, 1400, 1000, 2000, 3000, 33.018020577, -106.989304654, 4400.39279)]
    [InlineData(33, -107, 1400, -3000, 4000, 0, 33.036054896, -107.032107644, 1401.96338)]
    public void Local_to_geodetic(
        double latitude, double longitude, double height, double e, double n, double u, double latitude2, double longitude2, double height2)
    {
        var point = new LocalFrame(new(latitude * Degree, longitude * Degree, height)).ToGeodetic(e, n, u);
        Assert.Equal(latitude2, point.Latitude / Degree, 1e-9);
        Assert.Equal(longitude2, point.Longitude / Degree, 1e-9);
        Assert.Equal(height2, point.Height, 6e-6);
    }

    // Radii of curvature, m (computed independently).
    [Theory]
    [InlineData(33, 6354357.320, 6384479.188)]
    [InlineData(45, 6367381.816, 6388838.290)]
    [InlineData(52, 6375149.741, 6391435.268)]
    public void Radii(double latitude, double meridian, double primeVertical)
    {
        Assert.Equal(meridian, EarthRadii.Meridian(latitude * Degree), 6e-4);
        Assert.Equal(primeVertical, EarthRadii.PrimeVertical(latitude * Degree), 6e-4);
    }

    // Published example of the inverse problem, and a short line near 52° north (confirmed, and computed independently).
    [Theory]
    [InlineData(50.06632, -5.71475, 58.64402, -3.07009, 969954.166, 9.1419, 5e-5)]
    [InlineData(52, 5, 52.01, 5.02, 1767.56670, 50.979242, 5e-7)]
    public void Geodesics(double lat1, double lon1, double lat2, double lon2, double distance, double azimuth, double azimuthTolerance)
    {
        var line = Line(lat1, lon1, lat2, lon2);
        Assert.Equal(distance, line.Distance, 5e-4);
        Assert.Equal(azimuth, line.Azimuth / Degree, azimuthTolerance);
    }

    // East offsets, m, of a vertical vacuum flight and a drop (closed form -(2/3) Ω cos φ v0³/g², g = 9.80665).
    [Theory]
    [InlineData(3000, 33, -6.05090, -12.1018, 3.02545)]
    [InlineData(3000, 45, -5.10169, -10.2034, 2.55084)]
    [InlineData(3000, 52, -4.44192, -8.88384, 2.22096)]
    [InlineData(1000, 45, -0.98182, -1.96364, 0.49091)]
    public void Coriolis_offsets(double height, double latitude, double apogee, double back, double drop)
    {
        var speed = Math.Sqrt(2 * 9.80665 * height);
        Assert.Equal(apogee, EastOffset(latitude, speed, speed / 9.80665), 5.1e-6);
        Assert.Equal(back, EastOffset(latitude, speed, 2 * speed / 9.80665), 5.1e-5);
        Assert.Equal(drop, EastOffset(latitude, 0, speed / 9.80665), 5.1e-6);
    }

    private static IEnumerable<Row> Rows() => AirTable.Read("air-check-values.csv").Where(r => r["id"][0] == 'E');

    private static double Computed(Row row)
    {
        var origin33 = new Geodetic(33 * Degree, -107 * Degree, 1400);
        var local = new LocalFrame(new((48 + (50.0 / 60)) * Degree, (2 + (20.0 / 60)) * Degree, 0)).ToLocal(new(50.9 * Degree, 1.8 * Degree, 0));
        var back = new LocalFrame(origin33).ToGeodetic(1000, 2000, 3000);
        var flinders = Line(
            -(37 + (57 / 60.0) + (3.72030 / 3600)), 144 + (25 / 60.0) + (29.52440 / 3600),
            -(37 + (39 / 60.0) + (10.15610 / 3600)), 143 + (55 / 60.0) + (35.38390 / 3600));
        var shortLine = Line(33, -107, 33.02, -106.99);
        var speed = Math.Sqrt(2 * 9.80665 * 3000);
        return row["id"] switch
        {
            "E11" => origin33.ToEarthFixed().X,
            "E12" => origin33.ToEarthFixed().Y,
            "E13" => origin33.ToEarthFixed().Z,
            "E14" => local.East,
            "E15" => local.North,
            "E16" => local.Up,
            "E17" => back.Latitude / Degree,
            "E18" => back.Longitude / Degree,
            "E19" => back.Height,
            "E20" => flinders.Distance,
            "E21" => flinders.Azimuth / Degree,
            "E22" => flinders.ReverseAzimuth / Degree,
            "E23" => shortLine.Distance,
            "E24" => shortLine.Azimuth / Degree,
            "E25" => Geodesic.SphericalDistance(new(33 * Degree, -107 * Degree, 0), new(33.02 * Degree, -106.99 * Degree, 0)),
            "E26" => EastOffset(45, speed, speed / 9.80665),
            "E27" => EastOffset(45, speed, 2 * speed / 9.80665),
            "E28" => EastOffset(45, 0, speed / 9.80665),
            "E29" => EarthRadii.Meridian(45 * Degree),
            "E30" => EarthRadii.PrimeVertical(45 * Degree),
            _ when row["quantity"] == "normal gravity" => Gravity.Normal(row.Input("lat") * Degree, row.Input("h")),
            _ => double.NaN,
        };
    }

    private static Geodesic Line(double lat1, double lon1, double lat2, double lon2) =>
        Geodesic.Between(new(lat1 * Degree, lon1 * Degree, 0), new(lat2 * Degree, lon2 * Degree, 0))!.Value;

    // East displacement by the engine's Coriolis acceleration along a vacuum trajectory: ∫(T - t) a(t) dt, by Simpson's rule, exact
    // for the quadratic integrand.
    private static double EastOffset(double latitude, double speed, double duration)
    {
        var site = new SiteGravity(latitude * Degree);
        double Moment(double t) => (duration - t) * site.Coriolis<Scalar>(0, 0, speed - (9.80665 * t)).East;
        return duration / 6 * (Moment(0) + (4 * Moment(duration / 2)) + Moment(duration));
    }
}
