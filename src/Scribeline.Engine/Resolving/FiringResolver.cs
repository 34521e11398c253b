using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Follows each channel to its charge, the charge to its bay, the bay to the joint that lets go and the canopies that come out.</summary>
internal sealed class FiringResolver(RocketDesign design, Vehicle vehicle, ValueList<string> canopies, Func<IMeasure, double> draw, List<Problem> problems)
{
    private readonly ValueList<Bay> bays = vehicle.Bays();

    /// <summary>Every firing, in the order of the file.</summary>
    public ValueList<Firing> Resolve() => design.Firing
        .SelectMany(f => Channels(f).OfType<Firing>().Select(c => c with { Altimeter = f.Altimeter, MachLockout = f.MachLockout is { } speed ? draw(speed) : null }))
        .ToValueList();

    /// <summary>The bay a charge fills and the joint it opens; null where it opens none.</summary>
    public (Bay Bay, int Joint)? Opens(ChargeDesign charge)
    {
        var bay = BayOf(charge);
        if (bay is null || bay.Opens.Count == 0) return null;

        // Of two joints on one bay the one further from the plate the charge sits on is pushed open.
        return (bay, bay.Forward.Name == charge.On ? bay.Opens[^1] : bay.Opens[0]);
    }

    /// <summary>Index of the part a cord ties to: by the name of the part, of a plate in it, or Motor; null where nothing has that name.</summary>
    public static int? PartOf(Vehicle vehicle, string tie)
    {
        if (tie == "Motor") return vehicle.MotorPart >= 0 ? vehicle.MotorPart : null;
        for (var i = 0; i < vehicle.Parts.Count; i++)
        {
            if (vehicle.Parts[i].Name == tie || vehicle.Parts[i].Fittings.Any(f => f.Name == tie)) return i;
        }

        return null;
    }

    /// <summary>A joint that lets go by itself: the firing that does what a charge for it would.</summary>
    /// <param name="joint">Index of the joint.</param>
    /// <param name="trigger">When.</param>
    /// <param name="moment">The same in words.</param>
    public Firing LettingGo(int joint, RecoveryTrigger trigger, string moment) => new(
        $"{vehicle.Parts[joint].Name} and {vehicle.Parts[joint + 1].Name} part by themselves at {moment}", trigger, joint, Tethered(joint),
        bays.FirstOrDefault(b => b.Opens.Contains(joint)) is { } bay ? Freed(bay) : []);

    private IEnumerable<Firing?> Channels(FiringDesign altimeter)
    {
        var name = altimeter.Altimeter ?? "Motor";
        if (altimeter.Apogee is { } apogee) yield return Follow(name, apogee.Charge, apogee.At, new AtApogee(Delay(apogee.After)));
        if (altimeter.DescendingThrough is { } height) yield return Follow(name, height.Charge, height.At, new DescendingThrough(draw(height.Height), Delay(height.After)));
        if (altimeter.AtTime is { } time) yield return Follow(name, time.Charge, time.At, new AfterLiftOff(draw(time.Time)));
        if (altimeter.MotorDelay is { } motor) yield return Follow(name, motor.Charge, motor.At, new AfterBurnout(draw(motor.Delay)));
    }

    private double Delay(IMeasure? typed) => typed is null ? 0 : Math.Max(draw(typed), 0);

    private Firing? Follow(string altimeter, string chargeName, string at, RecoveryTrigger trigger)
    {
        // A name that nothing has is reported by the checks of the design.
        if (design.Charges.FirstOrDefault(c => c.Name == chargeName) is not { } charge) return null;
        if (Opens(charge) is not { } opens)
        {
            problems.Add(new Problem(charge.At, $"The gas of charge {charge.Name} opens no joint: nothing that lets go closes the bay in {charge.Into}.", "Give the joint at that end the kind pinned or sliding, or put the charge into another part."));
            return null;
        }

        return new($"{altimeter}: {charge.Name}", trigger, opens.Joint, Tethered(opens.Joint), Freed(opens.Bay)) { Charge = charge.Name };
    }

    private Bay? BayOf(ChargeDesign charge)
    {
        var part = Index(charge.Into);
        return bays.Where(b => Overlap(b, part) > 0)
            .OrderByDescending(b => b.Forward.Name == charge.On || b.Aft.Name == charge.On)
            .ThenByDescending(b => b.Opens.Count > 0)
            .ThenByDescending(b => Overlap(b, part))
            .FirstOrDefault();
    }

    private ValueList<FreedCanopy> Freed(Bay bay) => design.Stowed
        .Where(s => s.Canopy is { } c && canopies.Contains(c.Name) && BayOfStowed(s) == bay)
        .Select(s => new FreedCanopy(s.Canopy!.Name, TiedTo(s) ?? Index(s.In))).ToValueList();

    private Bay? BayOfStowed(StowedDesign stowed)
    {
        var part = Index(stowed.In);
        return bays.Where(b => b.Opens.Count > 0 && Overlap(b, part) > 0).MaxBy(b => Overlap(b, part));
    }

    private bool Tethered(int joint) => Cords().Any(c =>
    {
        var ties = c.Ties.Select(PartOf).OfType<int>().ToArray();
        return ties.Length > 1 && ties.Min() <= joint && ties.Max() > joint;
    });

    private int? TiedTo(StowedDesign stowed)
    {
        var cord = stowed.Canopy!.On is { } on
            ? Cords().FirstOrDefault(c => c.Name == on)
            : design.Stowed.FirstOrDefault(s => s.In == stowed.In && s.Cord is not null)?.Cord;
        return cord?.Ties.Select(PartOf).OfType<int?>().FirstOrDefault();
    }

    private IEnumerable<CordDesign> Cords() => design.Stowed.Select(s => s.Cord).OfType<CordDesign>();

    private int? PartOf(string tie) => PartOf(vehicle, tie);

    private int Index(string part) => Math.Max(0, vehicle.Parts.Select((p, i) => (p.Name, i)).FirstOrDefault(x => x.Name == part).i);

    private double Overlap(Bay bay, int part) => Math.Min(bay.Rear, vehicle.Parts[part].Rear) - Math.Max(bay.Front, vehicle.Parts[part].Front);
}
