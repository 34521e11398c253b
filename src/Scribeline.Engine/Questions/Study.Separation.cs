using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions;

/// <content>What the charges do.</content>
public sealed partial class Study
{
    private ValueList<ChargeFiring>? chargeFirings;

    /// <summary>Every charge fired alone at its place in the flight, in the order of the file; those that lack an input are left out.</summary>
    public ValueList<ChargeFiring> ChargeFirings =>
        LazyInitializer.EnsureInitialized(ref chargeFirings, () => Rocket.Separation.Charges.Select(FireAlone).OfType<ChargeFiring>().ToValueList());

    /// <summary>Of pins and joints: that of the air at the pad, K, since the climb is too short to cool them.</summary>
    public double PinTemperature => Air.At<Scalar>(Air.Elevation).Temperature;

    /// <summary>The bay a charge fills; null where the airframe has none there.</summary>
    public Bay? BayOf(ChargeLoad charge) => Bays.FirstOrDefault(b => b.Forward.Name == charge.Forward && b.Aft.Name == charge.Aft);

    /// <summary>When a joint first opens in the flight, s after ignition; null where it never does.</summary>
    public double? OpeningTime(int joint) => Flight.Events
        .Where(e => e.Kind == FlightEventKind.Charge && Rocket.Firings.Any(f => f.Joint == joint && f.Name == e.Name))
        .Select(e => (double?)e.Time).Min();

    /// <summary>Joints that have opened before another does, nose to tail.</summary>
    public IEnumerable<int> OpenedBefore(int joint) => Rocket.Firings.Select(f => f.Joint).Distinct().Order()
        .Where(j => j != joint && OpeningTime(j) is { } other && other < ReleaseOf(joint));

    /// <summary>An ejection, kept by the value of its inputs.</summary>
    public Ejection Fire(EjectionInputs inputs) => cache.Get(inputs, i => i.Fire(IsSample ? 1e-7 : 1e-8));

    /// <summary>A charge fired alone with pins and friction as expected; null where an input is missing.</summary>
    internal Ejection? Burn(ChargeLoad charge) => Setting(charge) is { } setting ? Fire(setting.Inputs) : null;

    /// <summary>A charge fired into what an earlier one of the same bay left, which did not part the joint; null where an input is missing.</summary>
    /// <param name="charge">The later charge.</param>
    /// <param name="earlier">The earlier one.</param>
    /// <param name="gap">s between them.</param>
    internal Ejection? Burn(ChargeLoad charge, Ejection earlier, double gap) => Setting(charge) is { } setting
        ? cache.Get((earlier.Inputs, setting.Inputs, gap), k => earlier.Next(k.gap, k.Item2.ChargeMass, k.Item2.Powder.GrainRadius))
        : null;

    private ChargeFiring? FireAlone(ChargeLoad charge) => Setting(charge) is { } s
        ? new(charge, s.Bay, s.Held, s.Ahead, s.Behind, s.Height, Fire(s.Inputs), Fire(s.Inputs with { PinForce = double.PositiveInfinity }))
        : null;

    private (EjectionInputs Inputs, Bay Bay, JointRetention Held, Piece Ahead, Piece Behind, double Height)? Setting(ChargeLoad charge)
    {
        if (charge.Mass is not { } mass || BayOf(charge) is not { FreeVolume: > 0 } bay || Rocket.Separation.Of(charge.Joint) is not { } held) return null;
        var joint = Vehicle.Joints[charge.Joint];
        var pieces = Vehicle.PiecesAfter(OpenedBefore(charge.Joint).Append(charge.Joint));
        var (ahead, behind) = (pieces.First(p => p.Last == charge.Joint), pieces.First(p => p.First == charge.Joint + 1));
        var fired = Flight.Events.FirstOrDefault(e => e.Kind == FlightEventKind.Charge && e.Name.EndsWith($": {charge.Name}", StringComparison.Ordinal));

        // To the metre: nothing in an ejection feels less, and flights that differ elsewhere share it.
        var height = Math.Round(Math.Max((fired?.At ?? Flight.Apogee)?.Height ?? 0, 0));
        var air = Air.At<Scalar>(Air.Elevation + height);
        var friction = Math.Max(held.Friction.Force, 0);
        var inputs = new EjectionInputs
        {
            Powder = (Powder.Customary with { GrainRadius = charge.GrainRadius }).Scaled(charge.Impetus),
            ChargeMass = Math.Max(mass, 0),
            FreeVolume = bay.FreeVolume,
            Bore = joint.BoreDiameter,
            Stroke = Math.Max(joint.Engagement, 1e-3),
            ForwardMass = PieceProperties(ahead).Mass,
            AftMass = PieceProperties(behind).Mass,
            PinForce = held.Pins?.Nominal(PinTemperature) ?? 0,
            StaticFriction = friction,
            SlidingFriction = FrictionFit.SlidingShare * friction,
            AmbientPressure = air.Pressure,
            AmbientTemperature = air.Temperature,
            WallArea = EjectionSetup.WallArea(bay),
            VentArea = EjectionSetup.VentArea(Vehicle, Rocket.Holes, bay, Rocket.Inch),
        };
        return inputs.ForwardMass <= 0 || inputs.AftMass <= 0 ? null : (inputs, bay, held, ahead, behind, height);
    }
}
