using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using static Scribeline.Engine.Tests.Published.Flight.FlightChecks;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>Leaving the rail. Closed forms for small angles.</summary>
public sealed class RailChecks
{
    private const double Elevation = 85 * Math.PI / 180, G = 9.80665;

    private static readonly BenchModel Rocket = new()
    {
        GravityAtPad = G,
        BurntMass = 5,
        CentreOfMass = 1,
        Inertia = new(0.02, 1.5, 1.5, 0, 0, 0),
        Curve = BenchModel.Constant(500, 3),
        Nozzle = new(1.6),
    };

    [Fact]
    public void Speed_at_the_forward_guides_exit()
    {
        RailExit exit = Launch(Rocket, 0.1);
        Holds("D18", exit.Forward.Speed);
        Holds("D17", exit.Forward.Speed / exit.Forward.Time);
    }

    [Fact]
    public void Speed_with_drag()
    {
        RailExit exit = Launch(Rocket with { Density = 1.225, Cd = 0.5, CentreOfPressure = 1 }, 0.1);
        Holds("D19", exit.Forward.Speed);
    }

    /// <summary>
    /// The closed form takes no friction from the acceleration while it turns; friction is 9e-4 of it, and enters the small second term
    /// of the series alone: 1e-4.
    /// </summary>
    [Fact]
    public void Tip_off()
    {
        RailExit exit = Launch(Rocket, 0.1);
        Holds("D20", Math.Abs(exit.Aft.Rate.Length) * 180 / Math.PI, 1e-4);
        Holds("D21", (Elevation - (Math.PI / 2 - exit.Aft.Tilt)) * -180 / Math.PI is var down ? Math.Abs(down) : 0, 1e-4);
        Assert.True(exit.Aft.Tilt > Math.PI / 2 - Elevation, "the nose falls");
    }

    /// <summary>Without friction: θ' = A λ sinh(λt), exact but for the cosine of the angle.</summary>
    [Fact]
    public void Tip_off_without_friction()
    {
        RailExit exit = Launch(Rocket, 0);
        double a = G * 5 * Math.Cos(Elevation) / 500, lambda = Math.Sqrt(500 * 0.4 / (1.5 + 5 * 0.16)), t = exit.Aft.Time - exit.Forward.Time;
        Assert.Equal(a * lambda * Math.Sinh(lambda * t), exit.Aft.Rate.Length, 1e-5 * exit.Aft.Rate.Length);
        Assert.Equal(a * (Math.Cosh(lambda * t) - 1), exit.Aft.Tilt - (Math.PI / 2 - Elevation), 1e-5 * 5.6e-4);
    }

    [Fact]
    public void Waits_for_the_thrust()
    {
        BenchModel model = Rocket with { Curve = new([new(0, 0), new(0.5, 500), new(3, 500)]) };
        FlightResult flight = Fly(model, 0);
        FlightEvent liftOff = flight.Events.Single(e => e.Kind == FlightEventKind.LiftOff);
        Assert.Equal(5 * G * Math.Sin(Elevation) / 1000, liftOff.Time, 1e-9);
        Assert.Equal(0, flight.At(liftOff.Time / 2).Speed);
    }

    [Fact]
    public void Too_weak_a_motor_says_so()
    {
        FlightResult flight = Fly(Rocket with { Curve = BenchModel.Constant(40, 3) }, 0);
        Assert.Equal(FlightFailure.NoLiftOff, flight.Failure);
        Assert.Null(flight.RailExit);
    }

    private static RailExit Launch(BenchModel model, double friction)
    {
        RailExit? exit = Fly(model, friction).RailExit;
        Assert.NotNull(exit);
        return exit;
    }

    private static FlightResult Fly(BenchModel model, double friction)
    {
        Quaternion<Scalar> attitude = Flights.Nose(Elevation);
        Vector3<Scalar> direction = attitude.ToFrame(new(1, 0, 0));
        RailGeometry rail = new(direction, direction, 2, 2.8, 1.4, friction);
        return FlightComputation<BenchModel>.FromRail(
            model, model.Knots, rail, attitude, RecoveryPlan.Ballistic, Flights.Tight with { Extent = FlightExtent.RailExit });
    }
}
