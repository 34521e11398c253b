using System.Numerics;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using static Scribeline.Engine.Tests.Published.Flight.FlightChecks;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>Rotation: torque-free tops, constant rates, the pitch oscillation, jet damping. Closed forms.</summary>
public sealed class RotationChecks
{
    private const double Degree = Math.PI / 180;

    /// <summary>Nose 0.9 m ahead with slope 2, fins 0.475 m behind with slope 8; centre of mass at station 1 m.</summary>
    private static readonly BenchModel Finned = new()
    {
        Density = 1.225,
        BurntMass = 1e9,
        CentreOfMass = 1,
        CentreOfPressure = 1.2,
        Slope = 10,
        Sum1 = 2 * 0.1 + 8 * 1.475,
        Sum2 = 2 * 0.01 + 8 * 1.475 * 1.475,
        Inertia = new(0.02, 1.5, 1.5, 0, 0, 0),
    };

    [Fact]
    public void Torque_free_symmetric_top()
    {
        FlightResult flight = Spun(new BenchModel { Inertia = new(0.02, 1.5, 1.5, 0, 0, 0) }, new(10 * Math.PI, 0.3, 0));
        Holds("D04", flight.At(1).Rate.Y);
        Holds("D05", flight.At(1).Rate.Z);
        Assert.Equal(0.200739, flight.At(2).Rate.Y, 1e-6);
        Assert.Equal(0.222943, flight.At(2).Rate.Z, 1e-6);

        // Angular momentum stays where it is, H/I_t the precession rate, and the axis keeps its angle to it.
        foreach (FlightSample s in flight.Series(0.37))
        {
            Vector3<Scalar> momentum = s.Attitude.ToFrame(new(0.02 * s.Rate.X, 1.5 * s.Rate.Y, 1.5 * s.Rate.Z));
            Vector3<Scalar> axis = s.Attitude.ToFrame(new(1, 0, 0));
            Holds("D02", momentum.Length / 1.5);
            Holds("D01", Math.Acos(Vector3<Scalar>.Dot(momentum, axis) / momentum.Length) / Degree);
        }

        // Seen from the body the rate goes round backwards.
        FlightSample later = flight.At(0.05);
        Holds("D03", -Math.Atan2(later.Rate.Z, later.Rate.Y) / 0.05);
    }

    [Fact]
    public void Constant_rate()
    {
        FlightResult flight = Spun(new BenchModel(), new(10 * Degree, 20 * Degree, 30 * Degree), Quaternion<Scalar>.Identity);
        foreach ((double time, int row) in (ReadOnlySpan<(double, int)>)[(1, 22), (10, 29)])
        {
            Quaternion<Scalar> q = flight.At(time).Attitude;
            Holds($"D{row}", q.W);
            Holds($"D{row + 1}", q.X);
            Holds($"D{row + 2}", q.Y);
            Holds($"D{row + 3}", q.Z);
            (double roll, double pitch, double yaw) = EulerAngles.Of(q);
            Holds($"D{row + 4}", roll / Degree);
            Holds($"D{row + 5}", pitch / Degree);
            Holds($"D{row + 6}", yaw / Degree);
        }
    }

    [Fact]
    public void Norm_of_the_attitude_does_not_drift()
    {
        FlightOptions options = new(RelativeTolerance: 1e-9, MaximumSteps: 3000);
        FlightResult flight = Spun(new BenchModel { Inertia = new(1, 2, 3, 0.1, 0, 0) }, new(1, 3, 2), options: options);
        foreach (FlightEvent e in flight.Events) Assert.Equal(1, e.At.Attitude.Norm, 1e-12);
        Vector3<Scalar> before = Momentum(flight.At(0)), after = Momentum(flight.At(flight.End));
        Assert.Equal(0, (after - before).Length, 1e-6 * before.Length);

        static Vector3<Scalar> Momentum(FlightSample s) => s.Attitude.ToFrame(new Inertia<Scalar>(1, 2, 3, 0.1, 0, 0) * s.Rate);
    }

    /// <summary>As a body of endless mass, which does not plunge.</summary>
    [Fact]
    public void Pitch_oscillation_of_a_pivoted_body()
    {
        FlightResult flight = Tilted(Finned, 5 * Degree);
        FlightSample start = flight.At(0);
        Holds("D06", start.PitchFrequency * start.PitchFrequency * 1.5);
        Holds("D07", start.PitchDamping * 2 * start.PitchFrequency * 1.5);
        Holds("D08", start.PitchFrequency);
        Holds("D09", start.PitchDamping);
        Holds("D10", 2 * Math.PI / (start.PitchFrequency * Math.Sqrt(1 - start.PitchDamping * start.PitchDamping)));

        // Small-angle closed form; sin 5° lies 0.13 % below 5°, and the phase feels that: a smaller angle, scaled.
        FlightResult small = Tilted(Finned, 5e-3 * Degree);
        Assert.Equal(Value("D12"), 1000 * Pitch(small.At(0.5)) / Degree, 1e-5);
        double period = Value("D10");
        Holds("D11", Pitch(small.At(period)) / Pitch(small.At(0)), 1e-5);
    }

    [Fact]
    public void Jet_damping_adds_to_the_ratio()
    {
        BenchModel model = Finned with
        {
            Curve = BenchModel.Constant(500, 3),
            Propellant = 1.5,
            Nozzle = new(1.8),
        };
        Holds("D13", Tilted(model, 1e-3).At(1e-6).PitchDamping, 1e-6);
    }

    /// <summary>
    /// The free body at 5 kg. Its two roots are read off four equally spaced samples of cross flow. The closed form leaves out the force
    /// of turning, ½ρVA Σ C_Nα,i (x − X_i), worth 0.1 % here; with it the roots are those of the two-by-two matrix below.
    /// </summary>
    [Fact]
    public void Pitch_oscillation_of_a_free_body()
    {
        FlightResult flight = Tilted(Finned with { BurntMass = 5 }, 1e-5);
        double h = 0.1, a = Cross(0), b = Cross(h), c = Cross(2 * h), d = Cross(3 * h);
        double p = (a * d - b * c) / (a * c - b * b), q = (b * d - c * c) / (a * c - b * b);
        Complex root = Complex.Log((p + Complex.Sqrt(p * p - 4 * q)) / 2) / h;
        double frequency = root.Magnitude, damping = -root.Real / frequency;
        Holds("D14", frequency, 2e-3);
        Holds("D15", damping, 2e-3);

        // w' = −Z w + (V + Y) ω, ω' = −(C1/IV) w − (C2/I) ω.
        double va = 0.5 * 1.225 * 100 * Math.PI * 0.01 / 4;
        double z = va * 10 / 5, y = va * (1 * 10 - Finned.Sum1) / 5, m = Value("D06") / 1.5 / 100, n = Value("D07") / 1.5;
        Assert.Equal(Math.Sqrt(z * n + m * (100 + y)), frequency, 1e-5);
        Assert.Equal((z + n) / 2, damping * frequency, 1e-5);

        double Cross(double t)
        {
            FlightSample s = flight.At(t);
            return s.Attitude.ToBody(s.Velocity).Z;
        }
    }

    /// <summary>Constant k and l_e: ω/ω0 = (m/m0)^(l_e²/k² − 1).</summary>
    [Fact]
    public void Jet_damping()
    {
        BenchModel model = new()
        {
            BurntMass = 8,
            Propellant = 2,
            Inertia = new(1, 2, 2, 0, 0, 0),
            PropellantGyration = 0.25,
            Curve = BenchModel.Constant(100, 4),
            Nozzle = new(1),
        };
        FlightState<Scalar> state = new(
            new(0, 0, 1000), new(0, 0, 10), Quaternion<Scalar>.Identity, new(0, 0.1, -0.05), 0);
        FlightResult flight = FlightComputation<BenchModel>.FromAir(
            model, model.Knots, 0, state, RecoveryPlan.Ballistic, Flights.Tight with { MaximumSteps = 200 });
        Holds("D16", flight.Burnout!.Rate.Y / 0.1);
        Holds("D16", flight.Burnout.Rate.Z / -0.05);
    }

    /// <summary>Roll of canted fins: p = p∞ (1 − exp(−t/τ)), p∞ d/2V = −C_l0/C_lp, τ = I/(½ρV S d² |C_lp|/2).</summary>
    [Fact]
    public void Roll_of_canted_fins()
    {
        FlightResult flight = Tilted(Finned with { RollForcing = 0.01, RollDamping = -0.5 }, 0);
        double steady = 0.01 / 0.5 * 2 * 100 / 0.1, tau = 0.02 / (0.5 * 1.225 * 100 * Math.PI * 0.01 / 4 * 0.01 * 0.5 / 2);
        foreach (double t in (double[])[0.1, 1, 5]) Assert.Equal(steady * (1 - Math.Exp(-t / tau)), flight.At(t).RollRate, 1e-6 * steady);
    }

    /// <summary>Thrust tilted by δ and off the axis by e, l behind the centre of mass, without air: ω' = T (δ l + e)/I, small angles.</summary>
    [Fact]
    public void Thrust_off_the_axis_turns_the_rocket()
    {
        BenchModel model = new()
        {
            BurntMass = 5,
            Inertia = new(0.02, 1.5, 1.5, 0, 0, 0),
            Curve = BenchModel.Constant(500, 1),
            CentreOfMass = 1,
        };

        // A side force towards z behind the centre lifts the nose away from z, about +y; a push along x at +y turns it about −z.
        Assert.Equal(500 * 0.002 * 0.6 / 1.5 * 0.1, After(new(1.6, TiltZ: 0.002)).Y, 1e-5 * 0.04);
        Assert.Equal(-500 * 0.001 / 1.5 * 0.1, After(new(1.6, OffsetY: 0.001)).Z, 1e-5 * 0.033);

        Vector3<Scalar> After(NozzleGeometry nozzle)
        {
            FlightState<Scalar> state = new(new(0, 0, 1000), new(0, 0, 10), Quaternion<Scalar>.Identity, Vector3<Scalar>.Zero, 0);
            return FlightComputation<BenchModel>.FromAir(
                model with { Nozzle = nozzle }, model.Knots, 0, state, RecoveryPlan.Ballistic, Flights.Tight with { MaximumSteps = 300 })
                .At(0.1).Rate;
        }
    }

    /// <summary>T = T_test + (p_test − p) A_e.</summary>
    [Fact]
    public void Thrust_grows_where_the_air_is_thin()
    {
        BenchModel model = new() { Curve = BenchModel.Constant(500, 1), Nozzle = new(1, ExitArea: 0.001), Density = null, BurntMass = 5 };
        FlightState<Scalar> state = new(new(0, 0, 5003.936), new(0, 0, 10), Flights.Nose(Math.PI / 2), Vector3<Scalar>.Zero, 0);
        FlightResult flight = FlightComputation<BenchModel>.FromAir(
            model, model.Knots, 0, state, RecoveryPlan.Ballistic, Flights.Tight with { MaximumSteps = 100 });

        // U.S. Standard Atmosphere, 1976 at 5 km geopotential: 54019.9 Pa.
        Assert.Equal(500 + (101_325 - 54_019.9) * 0.001, flight.At(0).Thrust, 1e-4);
    }

    private static double Pitch(FlightSample s)
    {
        // Heading east along x; the nose started above it.
        Vector3<Scalar> axis = s.Attitude.ToFrame(new(1, 0, 0));
        return Math.Atan2(axis.Z, axis.X);
    }

    /// <summary>At 100 m/s east, nose up by an angle.</summary>
    private static FlightResult Tilted(BenchModel model, double angle)
    {
        FlightState<Scalar> state = new(new(0, 0, 1000), new(100, 0, 1e-9), Flights.Nose(angle), Vector3<Scalar>.Zero, 0);
        return FlightComputation<BenchModel>.FromAir(
            model, model.Knots, 0, state, RecoveryPlan.Ballistic, Flights.Tight with { RelativeTolerance = 1e-12, MaximumSteps = 1000 });
    }

    private static FlightResult Spun(BenchModel model, Vector3<Scalar> rate, Quaternion<Scalar>? attitude = null, FlightOptions? options = null)
    {
        FlightState<Scalar> state = new(new(0, 0, 1000), new(0, 0, 10), attitude ?? Flights.Nose(1), rate, 0);
        return FlightComputation<BenchModel>.FromAir(
            model, [], 0, state, RecoveryPlan.Ballistic, options ?? Flights.Tight with { MaximumSteps = 3000 });
    }
}
