using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>
/// The mass of every charge: as typed, as a share of another, or chosen. A chosen charge is chosen once, for the design as typed, and stays
/// the same in every case drawn from the tolerances, as it does on the bench.
/// </summary>
internal sealed class ChargeResolver(
    RocketDesign design, Vehicle vehicle, Motor? motor, FiringResolver firing, SeparationGear gear, ValueList<HoleRow> holes,
    ValueList<OwnLimit> limits, double temperature, Func<IMeasure, double> draw)
{
    // Air to choose a charge in. A charge that burns out works alike at every height; thinner air costs a few per cent of speed.
    private const double Pressure = 101_325, Temperature = 288.15;

    private readonly Dictionary<string, double?> masses = [];
    private (ValueList<Bay> Bays, List<(ValueList<Bay> More, ValueList<Bay> Less)> Moved)? asTyped;

    /// <summary>The charges in the order of the file.</summary>
    /// <param name="chosen">Charges already chosen for the design as typed; null to choose now.</param>
    public ValueList<ChargeLoad> Resolve(ValueList<ChargeLoad>? chosen)
    {
        List<ChargeLoad> loads = [];
        foreach (var charge in design.Charges)
        {
            if (firing.Opens(charge) is not { } opens) continue;
            var (bay, joint) = opens;
            var choice = !charge.Mass.Auto ? null
                : chosen is not null ? chosen.FirstOrDefault(c => c.Name == charge.Name)?.Choice
                : Choose(bay, joint);
            loads.Add(new(
                charge.Name, bay.Forward.Name, bay.Aft.Name, joint, null, Powder.RadiusOf(charge.Powder), choice,
                charge.Mass.Mass?.Known ?? Basis.Estimated));
        }

        foreach (var load in loads) masses[load.Name] = load.Choice?.Mass;
        foreach (var charge in design.Charges.Where(c => c.Mass.Mass is not null)) masses[charge.Name] = draw(charge.Mass.Mass!);
        return loads.Select(l => l with { Mass = MassOf(l.Name, design.Charges.Count) }).ToValueList();
    }

    // A share of a share is followed; a ring of shares ends without a mass.
    private double? MassOf(string name, int depth)
    {
        var charge = design.Charges.FirstOrDefault(c => c.Name == name);
        if (charge?.Mass is not { Share: { } share, Of: { } other }) return masses.GetValueOrDefault(name);
        return depth == 0 || MassOf(other, depth - 1) is not { } mass ? null : draw(share) * mass;
    }

    private ChargeChoice? Choose(Bay bay, int joint)
    {
        var full = Same(AsTyped.Bays, bay) ?? bay;
        if (gear.Of(joint) is not { } held || full.FreeVolume <= 0) return null;
        var (ahead, behind) = Masses(joint);
        if (ahead <= 0 || behind <= 0) return null;
        var pack = vehicle.Parts.Sum(p => p.Stowed.Where(s => Inside(p, s, bay)).Sum(s => s.Mass));
        var pull = pack * StandardGravity * bay.Length;
        var corner = new EjectionInputs
        {
            ChargeMass = 0,
            FreeVolume = full.FreeVolume + Growth(bay),
            Bore = vehicle.Joints[joint].BoreDiameter,
            Stroke = Math.Max(vehicle.Joints[joint].Engagement, 1e-3),
            ForwardMass = ahead,
            AftMass = behind,
            PinForce = held.Pins?.Strongest(Math.Min(temperature, Temperature)) ?? 0,
            StaticFriction = held.Friction.Most,
            SlidingFriction = FrictionFit.SlidingShare * held.Friction.Most,
            AmbientPressure = Pressure,
            AmbientTemperature = Temperature,
            WallArea = EjectionSetup.WallArea(bay),
            VentArea = EjectionSetup.VentArea(vehicle, holes, bay, design.Display == DisplaySystem.Inch),
        };
        var sizing = new ChargeSizing(corner, Limit("lets-go.force-ratio"), Limit("lets-go.draws-clear"), pull);
        var (force, draws) = (sizing.ForForce, sizing.ForDrawOut);
        var ruling = draws > force ? "lets-go.draws-clear" : "lets-go.force-ratio";
        return double.IsInfinity(draws) ? null : new(Math.Max(force, draws), ruling, corner.FreeVolume, corner.PinForce + corner.StaticFriction);
    }

    private (double Ahead, double Behind) Masses(int joint)
    {
        var sum = vehicle.Masses();
        var (ahead, behind) = (new Piece(0, joint), new Piece(joint + 1, vehicle.Parts.Count - 1));
        double Of(Piece piece) => sum.Of(piece).Mass + (motor is not null && piece.Has(vehicle.MotorPart) ? vehicle.Load(motor)?.Burnt.Mass ?? 0 : 0);
        return (Of(ahead), Of(behind));
    }

    private static bool Inside(Part part, Stowed stowed, Bay bay)
    {
        var middle = part.Front + stowed.Offset + (stowed.PackedLength / 2);
        return middle >= bay.Front && middle < bay.Rear;
    }

    /// <summary>How much larger the bay may be within the tolerances, all on the worse side, m³.</summary>
    private double Growth(Bay bay)
    {
        double Volume(ValueList<Bay> bays) => Same(bays, bay)?.FreeVolume ?? 0;
        var nominal = Volume(AsTyped.Bays);
        return AsTyped.Moved.Sum(m => Math.Max(0, Math.Max(Volume(m.More), Volume(m.Less)) - nominal));
    }

    /// <summary>The bays as typed, and with each length or volume that has a tolerance at either end of it: found once for all charges.</summary>
    private (ValueList<Bay> Bays, List<(ValueList<Bay> More, ValueList<Bay> Less)> Moved) AsTyped => asTyped ??= Vary();

    private (ValueList<Bay> Bays, List<(ValueList<Bay> More, ValueList<Bay> Less)> Moved) Vary()
    {
        HashSet<IMeasure> toleranced = new(ReferenceEqualityComparer.Instance);
        var nominal = Bays(m =>
        {
            if (m.Sigma > 0) toleranced.Add(m);
            return m.Si;
        });
        return (nominal, [.. toleranced.Where(m => m.Dimension == Dimension.Of<UnitsNet.Length>() || m.Dimension == Dimension.Of<UnitsNet.Volume>())
            .Select(m => (Bays(x => ReferenceEquals(x, m) ? x.Si + x.ToleranceSi : x.Si), Bays(x => ReferenceEquals(x, m) ? x.Si - x.ToleranceSi : x.Si)))]);
    }

    private static Bay? Same(ValueList<Bay> bays, Bay bay) => bays.FirstOrDefault(b => b.Forward.Name == bay.Forward.Name && b.Aft.Name == bay.Aft.Name);

    // The space in the bays hangs on nothing that weighing or looking the airframe over adds.
    private ValueList<Bay> Bays(Func<IMeasure, double> values)
    {
        ResolvingNotes notes = new(design, values);
        return AirframeResolver.Stacked(design, notes) is { } made && notes.Problems.Count == 0
            ? made.Vehicle.Bays(motor is null ? null : made.Vehicle.Load(motor))
            : [];
    }

    private double Limit(string id) => limits.FirstOrDefault(l => l.Id == id)?.Value ?? LimitRow.All.First(r => r.Id == id).Value;

    private const double StandardGravity = 9.80665;
}
