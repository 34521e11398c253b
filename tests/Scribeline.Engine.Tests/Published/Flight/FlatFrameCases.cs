using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using static Scribeline.Engine.Tests.Published.Flight.FlightChecks;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>
/// Check-cases of NASA/TM-2015-218675 in the flat east-north-up frame of the flight equations, tangent at the start on the equator:
/// gravity μ/(a+h)² (1 + 1.5 J2 (a/(a+h))²) − ω² (a+h), Coriolis, standard air by height. Independent computation.
/// </summary>
public sealed class FlatFrameCases
{
    private const double Foot = 0.3048, Degree = Math.PI / 180, Slug = 14.5939029372, SlugFoot2 = Slug * Foot * Foot;
    private const double A = Wgs84.SemiMajorAxis, Mu = Wgs84.GravitationalConstant, Omega = Wgs84.RotationRate;

    private static readonly BenchModel Ball = new()
    {
        BurntMass = Slug,
        Cd = 0.1,
        Area = Math.PI * 0.25 * Foot * Foot / 4,
        Density = null,
        EarthRate = new(0, Omega, 0),
        GravityLaw = h => Mu / ((A + h) * (A + h)) * (1 + 1.5 * Wgs84.J2 * A * A / ((A + h) * (A + h))) - Omega * Omega * (A + h),
    };

    [Fact]
    public void Tumbling_brick()
    {
        BenchModel brick = new() { Inertia = new(0.001894220 * SlugFoot2, 0.006211019 * SlugFoot2, 0.007194665 * SlugFoot2, 0, 0, 0) };
        FlightResult flight = Fly(brick, 30_000, Vector3<Scalar>.Zero, new(10 * Degree, 20 * Degree, 30 * Degree));
        foreach ((int time, int row) in (ReadOnlySpan<(int, int)>)[(10, 1), (20, 7), (30, 13)])
        {
            FlightSample s = flight.At(time);
            (double roll, double pitch, double yaw) = FromNorth(s.Attitude);
            HoldsWithin($"F{row:00}", roll / Degree, 1e-5);
            HoldsWithin($"F{row + 1:00}", pitch / Degree, 1e-5);
            HoldsWithin($"F{row + 2:00}", yaw / Degree, 1e-5);
            HoldsWithin($"F{row + 3:00}", s.Rate.X / Degree, 1e-6);
            HoldsWithin($"F{row + 4:00}", s.Rate.Y / Degree, 1e-6);
            HoldsWithin($"F{row + 5:00}", s.Rate.Z / Degree, 1e-6);
            Vector3<Scalar> momentum = brick.Inertia * s.Rate;
            Assert.Equal(0.00591001900, momentum.Length, 1e-10);
            Assert.Equal(0.00377860140, Vector3<Scalar>.Dot(momentum, s.Rate), 1e-10);
        }
    }

    [Fact]
    public void Ball_on_a_sphere_that_does_not_turn()
    {
        const double R = 6_371_007.1809;
        FlightResult flight = Fly(Ball with { EarthRate = Vector3<Scalar>.Zero, GravityLaw = h => Mu / ((R + h) * (R + h)) }, 30_000, Vector3<Scalar>.Zero);
        for (int i = 0; i < 3; i++)
        {
            FlightSample s = flight.At(10 * (i + 1));
            Holds($"F{19 + 2 * i}", s.Height / Foot, 1e-8);
            Holds($"F{20 + 2 * i}", -s.VerticalSpeed / Foot);
        }
    }

    [Theory]
    [InlineData(25, 0, 0)]
    [InlineData(29, 20, 0)]
    [InlineData(33, -20, 0.003)]
    public void Ball_dropped_in_wind(int row, double wind, double slope)
    {
        FlightSample s = Fly(Ball with { EastWind = wind * Foot, WindSlope = slope }, 30_000, Vector3<Scalar>.Zero).At(30);
        Holds($"F{row}", s.Height / Foot);
        Holds($"F{row + 1}", s.Position.X / Foot);
        Holds($"F{row + 2}", s.Velocity.X / Foot);
        Holds($"F{row + 3}", -s.VerticalSpeed / Foot);
    }

    [Fact]
    public void Ball_thrown_east_and_north()
    {
        FlightSample east = Fly(Ball, 0, new(1000, 0, 1000)).At(30), north = Fly(Ball, 0, new(0, 1000, 1000)).At(30);
        Holds("F37", east.Height / Foot);
        Holds("F38", east.Position.X / Foot);
        Holds("F39", north.Height / Foot);
        Holds("F40", north.Position.X / Foot);
        Holds("F41", north.Position.Y / Foot);
    }

    private static FlightResult Fly(BenchModel model, double heightFeet, Vector3<Scalar> feetPerSecond, Vector3<Scalar> rate = default)
    {
        // x north, y east, z down.
        Quaternion<Scalar> attitude = Quaternion<Scalar>.FromAxes(new(0, 1, 0), new(1, 0, 0), new(0, 0, -1));
        FlightState<Scalar> state = new(new(0, 0, heightFeet * Foot), Foot * feetPerSecond, attitude, rate, 0);
        return FlightComputation<BenchModel>.FromAir(model, [], 0, state, RecoveryPlan.Ballistic, Flights.Tight with { MaximumSteps = 3000 });
    }

    private static (double Roll, double Pitch, double Yaw) FromNorth(Quaternion<Scalar> q)
    {
        Vector3<Scalar> x = q.ToFrame(new(1, 0, 0)), y = q.ToFrame(new(0, 1, 0)), z = q.ToFrame(new(0, 0, 1));
        return (Math.Atan2(-y.Z, -z.Z), Math.Asin(x.Z), Math.Atan2(x.X, x.Y));
    }
}
