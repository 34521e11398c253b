using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions;

/// <content>Forces in the joints, air in the bays, and flights in which something fails.</content>
public sealed partial class Study
{
    // Shares of the air's forces are tabulated up to a round Mach number, so that another motor finds them made.
    private const double MachReach = 0.5;

    private ValueList<BayHistory>? bayHistories;
    private ValueList<JointHistory>? jointHistories;
    private JointLoads? jointLoads;

    /// <summary>The air in every bay along the flight as planned, nose to tail.</summary>
    public ValueList<BayHistory> BayHistories =>
        LazyInitializer.EnsureInitialized(ref bayHistories, () => Bays.Select(Breathe).ToValueList());

    /// <summary>What pulls on each separable joint until it is let go, nose to tail.</summary>
    public ValueList<JointHistory> JointHistories =>
        LazyInitializer.EnsureInitialized(ref jointHistories, () => Vehicle.Joints.Where(j => j.Separable).Select(Pull).ToValueList());

    /// <summary>Forces in the joints of the whole rocket.</summary>
    public JointLoads JointLoads => LazyInitializer.EnsureInitialized(ref jointLoads, () =>
    {
        var pad = Air.At<Scalar>(Air.Elevation);
        var reach = Math.Ceiling((Flight.Maxima.Mach.Value + 0.1) / MachReach) * MachReach;
        var shares = cache.Get((Vehicle, Shape, reach, pad.Density * pad.SoundSpeed / pad.Viscosity), k => AirLoads.Of(k.Vehicle, k.Shape, k.reach, k.Item4));
        return cache.Get((Vehicle, MotorLoad, shares), k => new JointLoads(k.Vehicle, Masses, k.MotorLoad, Shape, k.shares));
    });

    /// <summary>When a joint first opens in the flight, s after ignition; infinite where it never does.</summary>
    /// <param name="joint">Index of the joint.</param>
    public double ReleaseOf(int joint) => OpeningTime(joint) ?? double.PositiveInfinity;

    /// <summary>What surely holds a joint, N: the weakest pins; null where it is not known.</summary>
    /// <param name="joint">Index of the joint.</param>
    public double? WeakestRetention(int joint) => Rocket.Separation.Of(joint)?.Weakest(PinTemperature);

    /// <summary>Whether altimeters sit in a bay.</summary>
    public bool HoldsAltimeters(Bay bay) => VentRules.HoldsAltimeters(Vehicle, bay);

    /// <summary>Rows of holes through which a bay breathes.</summary>
    public IEnumerable<HoleRow> HolesOf(Bay bay) => Rocket.Holes.Where(h => h.Opens(bay));

    /// <summary>Diameter of the holes of a row, m: as typed, or the drill that the customary port rule asks for in its bay.</summary>
    /// <param name="row">The row.</param>
    /// <param name="bay">Its bay.</param>
    public double DiameterOf(HoleRow row, Bay bay) => row.DiameterIn(AirOf(bay), Rocket.Inch);

    /// <summary>The air in a bay, m³.</summary>
    public double AirOf(Bay bay) => VentRules.AirOf(Vehicle, bay);

    /// <summary>Least area of holes that keeps the push in a bay before a time under a pressure, m².</summary>
    /// <param name="history">The bay.</param>
    /// <param name="pressure">Pa, more than 0.</param>
    /// <param name="until">s after ignition.</param>
    public double LeastVent(BayHistory history, double pressure, double until) =>
        cache.Get((history, pressure, until), k => k.history.LeastArea(k.pressure, k.until));

    private BayHistory Breathe(Bay bay)
    {
        var rows = HolesOf(bay).ToArray();
        BreathingBay air = new(AirOf(bay), rows.Sum(r => r.AreaAt(DiameterOf(r, bay))), Air.Temperature);
        return cache.Get((Flight.Inputs!, bay, air, IsSample), _ =>
        {
            var samples = Following(bay.Forward.Part);
            var suction = StaticPressure.At(Shape, rows.Length > 0 ? rows[0].Station : (bay.Front + bay.Rear) / 2);
            var outside = samples.Select(s => PressureAt(s) + (s.Phase == FlightPhase.Descent ? 0 : suction * s.DynamicPressure)).ToValueList();
            return new BayHistory(bay, air, samples, outside, outside).With(air.Area);
        });
    }

    private double PressureAt(FlightSample sample) => Air.At<Scalar>(Air.Elevation + sample.Height).Pressure;

    // Close together until everything has opened at apogee, then as far apart as a canopy's slow changes allow.
    private ValueList<FlightSample> Following(int part) =>
        cache.Get((Flight, Vehicle.NameOf(LandingPieces.First(p => p.Has(part))), IsSample), k => Following(k.Item2));

    private ValueList<FlightSample> Following(string name)
    {
        var quick = (Flight.Apogee?.Time ?? Flight.End) + 5;
        List<FlightSample> samples = [];
        foreach (var body in Flight.Bodies.Where(b => b.Parent is null || b.Pieces.Contains(name)).OrderBy(b => b.Start))
        {
            for (var time = body.Start; time < body.End; time += (time < quick ? 1 : 5) * (IsSample ? 0.1 : 0.02)) Add(time);
            Add(body.End);

            void Add(double time)
            {
                if (samples.Count == 0 || time > samples[^1].Time) samples.Add(Flight.At(time, body.Index));
            }
        }

        return samples.ToValueList();
    }

    private JointHistory Pull(Joint joint)
    {
        var bay = BayHistories.FirstOrDefault(b => b.Bay.Opens.Contains(joint.Forward));
        return cache.Get((Flight, JointLoads, joint, bay, ReleaseOf(joint.Forward)), k => Pull(k.joint, k.bay));
    }

    private JointHistory Pull(Joint joint, BayHistory? bay)
    {
        var samples = bay?.Samples ?? Following(joint.Forward);
        double release = ReleaseOf(joint.Forward), whole = Flight.Bodies[0].End, area = Math.PI / 4 * joint.BoreDiameter * joint.BoreDiameter;
        List<JointMoment> history = [];
        var moments = MomentsTogether;
        for (var i = 0; i < samples.Count && samples[i].Time <= release; i++)
        {
            var push = bay is null ? 0 : bay.Excess(i);
            if (samples[i].Time > whole)
            {
                history.Add(new(samples[i].Time, default, push, push * area));
                continue;
            }

            var force = JointLoads.At(joint.Forward, moments[i]);
            history.Add(new(samples[i].Time, force, push, force.Tension + (push * area)));
        }

        return new(joint, history.ToValueList());
    }

    // While the rocket is whole, every piece is followed at the same times.
    private ValueList<LoadMoment> MomentsTogether => cache.Get(
        (Flight, IsSample, "moments"),
        _ => Following(0).TakeWhile(s => s.Time <= Flight.Bodies[0].End).Select(s => MomentAt(s.Time)).ToValueList());

    /// <summary>A moment of the flight of the whole rocket, for the forces in its joints.</summary>
    /// <param name="time">s after ignition.</param>
    public LoadMoment MomentAt(double time) =>
        LoadMoment.Of(Flight, time, Math.Clamp(Motor.Curve.ImpulseAt<Scalar>(time) / Motor.Curve.TotalImpulse, 0, 1));
}

/// <summary>What pulls on a joint until it is let go.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Moments">In order of time.</param>
public sealed record JointHistory(Joint Joint, ValueList<JointMoment> Moments)
{
    /// <summary>The moment of the greatest pull.</summary>
    public JointMoment Worst => Moments.MaxBy(m => m.Pull);
}

/// <summary>A moment of a joint.</summary>
/// <param name="Time">s after ignition.</param>
/// <param name="Force">From the motion of the parts; 0 once the rocket is no longer whole.</param>
/// <param name="Excess">Pressure in its bay over the outside, Pa.</param>
/// <param name="Pull">Both together, N; positive pulls it apart.</param>
public readonly record struct JointMoment(double Time, JointForce Force, double Excess, double Pull);
