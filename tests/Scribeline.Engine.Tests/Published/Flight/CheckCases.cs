using System.Globalization;
using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>
/// The atmospheric check-cases 1 to 10 of NASA/TM-2015-218675, on the round Earth, against the published trajectory data of two
/// simulations and an independent recomputation, every 5 s for 30 s. The report sets no tolerance; held to 0.02 ft, 0.001 ft/s,
/// 0.001°, 0.001°/s.
/// </summary>
public sealed class CheckCases
{
    private const double Foot = 0.3048, Degree = Math.PI / 180, Slug = 14.5939029372, SlugFoot2 = Slug * Foot * Foot;

    private static readonly RoundEarth Ball = new()
    {
        Mass = Slug,
        DragArea = 0.1 * Math.PI * 0.25 * Foot * Foot / 4,
        Inertia = new(3.6 * SlugFoot2, 3.6 * SlugFoot2, 3.6 * SlugFoot2, 0, 0, 0),
    };

    private static readonly RoundEarth Brick = new()
    {
        Mass = 0.155404754 * Slug,
        Inertia = new(0.001894220 * SlugFoot2, 0.006211019 * SlugFoot2, 0.007194665 * SlugFoot2, 0, 0, 0),
    };

    private static readonly double SpanMoment = 0.22222 * 0.33333 * 0.33333 / 2 * Math.Pow(Foot, 4);
    private static readonly double ChordMoment = 0.22222 * 0.66667 * 0.66667 / 2 * Math.Pow(Foot, 4);

    private static readonly Dictionary<int, RoundEarth> Cases = new()
    {
        [1] = Ball with { DragArea = 0 },
        [2] = Brick,
        [3] = Brick with { Damping = new(SpanMoment, ChordMoment, SpanMoment) },
        [4] = Ball with { Sphere = true, Turning = 0 },
        [5] = Ball with { Sphere = true },
        [6] = Ball,
        [7] = Ball with { Wind = 20 * Foot },
        [8] = Ball with { Wind = -20 * Foot, WindSlope = 0.003 },
        [9] = Ball,
        [10] = Ball,
    };

    /// <summary>In case 3 the first published set damps the inertial rate, the others the rate over the Earth, as here.</summary>
    public static TheoryData<int, string> Sets()
    {
        TheoryData<int, string> sets = [];
        foreach (int i in Cases.Keys)
        {
            foreach (string source in (string[])["recomputed", "sim 04", "sim 05"])
            {
                if (i != 3 || source != "sim 04") sets.Add(i, source);
            }
        }

        return sets;
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Agrees(int number, string source)
    {
        RoundEarth earth = Cases[number];
        double[][] rows = [.. FlightChecks.Lines("flight-nesc-checkcases.csv")
            .Where(f => f[0] == $"{number}" && f[1] == source)
            .Select(f => f[2..].Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray())];
        Assert.Equal(7, rows.Length);
        double[] state = Start(earth, number);
        OdeIntegrator<Tsitouras54> integrator = new(13, new StepControl { RelativeTolerance = 1e-12, AbsoluteTolerance = [1e-10] });
        for (int i = 0; i < rows.Length; i++)
        {
            if (i > 0) Assert.True(integrator.Integrate(earth, rows[i - 1][0], rows[i][0], state).Succeeded);
            Compare(earth, rows[i], state);
        }
    }

    private static double[] Start(RoundEarth earth, int number)
    {
        (Vector3<Scalar> velocity, Vector3<Scalar> rates, double yaw) = number switch
        {
            9 => (new(0, 1000, -1000), new(0, -0.004178074132, 0), 90.0),
            10 => (new(1000, 0, -1000), new(0.004178074132, 0, 0), 0.0),
            2 or 3 or 4 or 5 => (Vector3<Scalar>.Zero, new Vector3<Scalar>(10, 20, 30), 0.0),
            _ => (Vector3<Scalar>.Zero, Vector3<Scalar>.Zero, 0.0),
        };
        Geodetic place = new(0, 0, number >= 9 ? 0 : 30_000 * Foot);
        Vector3<Scalar> r = earth.Inertial(place);
        (Vector3<Scalar> north, Vector3<Scalar> east, Vector3<Scalar> down) = earth.Axes(0, place);
        Vector3<Scalar> v = Foot * velocity.X * north + Foot * velocity.Y * east + Foot * velocity.Z * down
            + Vector3<Scalar>.Cross(new(0, 0, earth.Turning), r);
        (double s, double c) = Math.SinCos(yaw * Degree);
        Quaternion<Scalar> q = Quaternion<Scalar>.FromAxes((Scalar)c * north + (Scalar)s * east, (Scalar)(-s) * north + (Scalar)c * east, down);
        return [r.X, r.Y, r.Z, v.X, v.Y, v.Z, q.W, q.X, q.Y, q.Z, Degree * rates.X, Degree * rates.Y, Degree * rates.Z];
    }

    private static void Compare(RoundEarth earth, double[] row, double[] y)
    {
        double time = row[0];
        Vector3<Scalar> r = new(y[0], y[1], y[2]), v = new(y[3], y[4], y[5]);
        Geodetic place = earth.Place(time, r);
        (Vector3<Scalar> north, Vector3<Scalar> east, Vector3<Scalar> down) = earth.Axes(time, place);
        Vector3<Scalar> ground = earth.OverGround(r, v);
        Quaternion<Scalar> q = new Quaternion<Scalar>(y[6], y[7], y[8], y[9]).Normalised();
        Vector3<Scalar> x = q.ToFrame(new(1, 0, 0)), yAxis = q.ToFrame(new(0, 1, 0)), z = q.ToFrame(new(0, 0, 1));

        Near("altitude", row[1], place.Height / Foot, 0.02);
        Near("latitude", row[2], place.Latitude / Degree, 1e-6);
        Near("longitude", row[3], place.Longitude / Degree, 1e-6);
        Near("vN", row[4], Vector3<Scalar>.Dot(ground, north) / Foot, 0.001);
        Near("vE", row[5], Vector3<Scalar>.Dot(ground, east) / Foot, 0.001);
        Near("vD", row[6], Vector3<Scalar>.Dot(ground, down) / Foot, 0.001);
        Near("roll", row[7], Math.Atan2(Vector3<Scalar>.Dot(yAxis, down), Vector3<Scalar>.Dot(z, down)) / Degree, 0.001, 360);
        Near("pitch", row[8], Math.Asin(-Vector3<Scalar>.Dot(x, down)) / Degree, 0.001);
        Near("yaw", row[9], Math.Atan2(Vector3<Scalar>.Dot(x, east), Vector3<Scalar>.Dot(x, north)) / Degree, 0.001, 360);
        for (int i = 0; i < 3; i++) Near($"rate {i}", row[10 + i], y[10 + i] / Degree, 0.001);

        void Near(string what, double expected, double actual, double tolerance, double period = double.PositiveInfinity)
        {
            double off = double.IsInfinity(period) ? actual - expected : Math.IEEERemainder(actual - expected, period);
            Assert.True(Math.Abs(off) <= tolerance, $"{what} at {time} s: {off:E3} off {expected}");
        }
    }
}
