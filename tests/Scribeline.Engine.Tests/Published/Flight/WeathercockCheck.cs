using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>
/// The stiff limit of weathercocking: in axes that move with the wind the rocket flies a gravity turn at constant thrust over weight,
/// V = k z^(n−1) (1 + z²), z = tan(ψ/2) (Culler and Fried 1957, from memory; computed independently).
/// </summary>
public sealed class WeathercockCheck
{
    private const double G = 9.80665;

    /// <summary>20 m/s up, wind 5 m/s, eight times its weight. A stiffness of 100 rad/s leaves the limit by about 1e-4.</summary>
    [Fact]
    public void Gravity_turn_in_the_moving_air()
    {
        const double mass = 5, inertia = 1e-3, frequency = 100, damping = 0.02;
        double v0 = Math.Sqrt(425), psi0 = Math.Atan2(5, 20), area = Math.PI * 0.01 / 4, slope = 1e-4;
        double c1 = inertia * frequency * frequency, c2 = 2 * damping * frequency * inertia;
        BenchModel model = new()
        {
            GravityAtPad = G,
            Density = 1.225,
            BurntMass = mass,
            Inertia = new(inertia, inertia, inertia, 0, 0, 0),
            EastWind = 5,
            Curve = BenchModel.Constant(8 * mass * G, 5),
            Slope = slope,
            CentreOfPressure = c1 / (0.5 * 1.225 * v0 * v0 * area * slope),
            Sum2 = c2 / (0.5 * 1.225 * v0 * area),
        };

        // Nose into the relative wind, turning as the gravity turn does there.
        FlightState<Scalar> state = new(
            new(0, 0, 0), new(0, 0, 20), Flights.Nose(Math.PI / 2 - psi0, -Math.PI / 2), new(0, -G * Math.Sin(psi0) / v0, 0), 0);
        FlightOptions options = new(RelativeTolerance: 1e-8, MaximumSteps: 200_000);
        FlightResult flight = FlightComputation<BenchModel>.FromAir(model, [0, 2.7], 0, state, RecoveryPlan.Ballistic, options with { Extent = FlightExtent.Apogee });

        double low = 1, high = 2.7;
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            if (flight.At(middle).Airspeed < 200) low = middle;
            else high = middle;
        }

        FlightSample at = flight.At(low);
        Vector3<Scalar> flow = at.Velocity - at.Wind;
        Assert.Equal(2.59597, at.Time, 5e-4);
        Assert.Equal(19.2948, Math.Atan2(-flow.X, flow.Z) * 180 / Math.PI, 0.005);
        Assert.Equal(-61.086, at.Velocity.X, 0.02);
        Assert.Equal(188.766, at.Velocity.Z, 0.01);
    }
}
