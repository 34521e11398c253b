using System.Globalization;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Resolving;

/// <summary>The steps of building a rocket, from its parts, joints, bonds, holes and plates.</summary>
/// <param name="design">As typed.</param>
/// <param name="vehicle">The airframe.</param>
/// <param name="holes">Every hole.</param>
internal sealed class BuildResolver(RocketDesign design, Vehicle vehicle, HoleSchedule holes)
{
    // Sizes of a part as it came; places of things on it are measured where they are made.
    private static readonly HashSet<string> Sizes =
    [
        "length", "outside", "inside", "wall", "thickness", "shoulder length", "shoulder outside", "shoulder inside", "coupler length", "coupler outside", "coupler inside",
        "coupler wall", "band length", "band outside",
    ];

    private readonly ValueList<PlannedMeasure> measures = DesignMeasures.Of(design);
    private readonly List<BuildStep> steps = [];
    private readonly List<(string Before, string After, string Reason)> places = [];
    private readonly List<string> missing = [], assumed = [];
    private readonly HashSet<string> taken = [];

    /// <summary>All steps, in about the order a builder would take them.</summary>
    public BuildSteps Resolve()
    {
        foreach (var part in design.Parts)
        {
            string[] own = [part.Name, .. part.Plates.Select(p => p.Name)];
            Add(part.Name, part.Name, BuildWork.Measure, 1, [part.Name], asks: [.. own.SelectMany(o => Asked(o, m => Sizes.Contains(m.What)))]);
        }

        foreach (var joint in vehicle.Joints) Joint(joint);
        Whole(BuildWork.MarkDatum);
        foreach (var part in vehicle.Parts) Bonds(part);
        foreach (var joint in vehicle.Joints.Where(j => j.Kind == JointKind.Bonded)) BondedJoint(joint);
        foreach (var row in holes.Rows) Row([.. row]);
        foreach (var plate in holes.PlateHoles.GroupBy(h => h.Plate)) Plate(plate.Key, plate.Count());
        foreach (var bay in vehicle.Parts.OfType<AltimeterBay>()) Fitted(bay);
        if (design.Surface?.Finish is Finish.SandedPaint or Finish.SprayedPaint or Finish.HeavyPaint)
        {
            Whole(BuildWork.Paint);
            Whole(BuildWork.DryPaint);
        }

        Whole(BuildWork.TestFit, Friction());
        foreach (var part in vehicle.Parts) Add(part.Name, part.Name, BuildWork.Weigh, 1, [part.Name], asks: Asked(part.Name, m => m.What is "mass" or "balance"));
        Stowed();
        Whole(BuildWork.Balance);
        Whole(BuildWork.Ready);
        if (steps.Exists(s => s.Work == BuildWork.Cure)) assumed.Add("No adhesive is named for a bond: each is taken to set 24 h until it may be handled, and 7 days more to full strength.");
        return BuildSteps.Of(steps.ToValueList(), places, missing.ToValueList(), assumed.Distinct().ToValueList());
    }

    private void Joint(Joint joint)
    {
        string ahead = vehicle.Parts[joint.Forward].Name, behind = vehicle.Parts[joint.Aft].Name;
        Add($"{ahead} to {behind}", $"{ahead} and {behind}", BuildWork.FitJoint, 1, [ahead, behind], asks: Asked($"{ahead} to {behind}", m => m.What == "fit play"));
    }

    private void Bonds(Part part)
    {
        if (part is Coupler { BandLength: > 0 }) Bond($"{part.Name} band", $"band of {part.Name}", 1, [part.Name]);
        if (part is not AltimeterBay)
        {
            foreach (var plate in part.Fittings.OfType<BulkPlate>()) Bond(plate.Name, $"{plate.Name} in {part.Name}", 1, [part.Name]);
        }

        string? mount = null;
        var rings = part.Fittings.OfType<CentringRing>().Count();
        if (part.Fittings.OfType<MotorMount>().Any())
        {
            mount = Bond($"{part.Name} mount", $"motor mount in {part.Name}", Math.Max(rings, 1), [part.Name], Asked(part.Name, m => m.What.StartsWith("motor mount", StringComparison.Ordinal)));

            // The tube itself is not touched yet.
            if (rings > 0) places.Add((Bond($"{part.Name} rings", $"rings on the motor mount of {part.Name}", rings, []), mount, "the mount goes in with its rings on it"));
        }

        foreach (var fins in part.Fittings.OfType<FinPlates>()) Fins(fins, part, mount);
    }

    private void Fins(FinPlates fins, Part part, string? mount)
    {
        var count = fins.Fins.Count;
        var place = Bond($"{part.Name} fins", $"fins of {part.Name}", count, [part.Name], Asked(part.Name, m => m.What.StartsWith("fins", StringComparison.Ordinal)));
        if (fins.TabDepth > 0) Add(place, $"fins of {part.Name}", BuildWork.CutSlots, count, [part.Name]);
        if (mount is not null) places.Add((mount, place, fins.TabDepth > 0 ? "the fins stand on the mount" : "the tube is stiff with its mount in it"));
        if (fins.Fillet <= 0) return;
        var fillets = Bond($"{part.Name} fillets", $"fillets of the fins of {part.Name}", 2 * count, [part.Name], fit: false);
        places.Add((place, fillets, "a fillet is laid on a fin that stands still"));
    }

    private void BondedJoint(Joint joint)
    {
        string ahead = vehicle.Parts[joint.Forward].Name, behind = vehicle.Parts[joint.Aft].Name;
        Bond($"{ahead} to {behind}", $"joint of {ahead} and {behind}", 1, [ahead, behind], fit: false);
    }

    /// <summary>One bond from the dry fit to full strength; gives its place.</summary>
    private string Bond(string place, string what, int count, ValueList<string> parts, ValueList<string>? asks = null, bool fit = true)
    {
        var slug = Free(place);
        if (fit) Add(slug, what, BuildWork.DryFit, count, parts, asks: asks);
        for (var work = BuildWork.Scuff; work <= BuildWork.FullCure; work++) Add(slug, what, work, count, parts);
        return slug;
    }

    private void Row(Hole[] row)
    {
        var first = row[0];
        var slug = Free(first.Row);
        foreach (var work in (BuildWork[])[BuildWork.MarkHoles, BuildWork.Drill, BuildWork.Deburr]) Add(slug, first.Row, work, row.Length, first.Parts, work == BuildWork.Drill ? Drills(first) : "");
        if (first.Cuts.FirstOrDefault(c => c.Countersink > 0) is { } sunk)
            Add(slug, first.Row, BuildWork.Countersink, row.Length, first.Parts, string.Create(CultureInfo.InvariantCulture, $"To {1000 * sunk.Countersink:0.0} mm in {sunk.PartName}."));
        if (first.Cuts.FirstOrDefault(c => c.Tap is not null) is { } tapped)
            Add(slug, first.Row, BuildWork.Tap, row.Length, first.Parts, $"{tapped.Tap} in {tapped.PartName}.");
        if (first.Cuts.FirstOrDefault(c => c.Nut is not null) is { } nut)
        {
            Add(slug, first.Row, BuildWork.BondNuts, row.Length, first.Parts, $"{nut.Nut} in {nut.PartName}.");
            Add(slug, first.Row, BuildWork.CureNuts, row.Length, first.Parts);
        }
    }

    // Walls that are drilled together are drilled with the joint closed and clocked, so that their errors are common.
    private static string Drills(Hole hole)
    {
        var together = hole.Parts.Count > 1 ? $" {string.Join(" and ", hole.Parts)} are drilled together, assembled and clocked." : "";
        var drills = hole.Cuts.Where(c => c.Drill is not null).Select(c => hole.Cuts.Count > 1 ? $"{c.Drill!.Name} in {c.PartName}" : c.Drill!.Name).ToArray();
        return (drills.Length > 0 ? $"Drill {string.Join(", ", drills)}." : "The hole schedule names the drill.") + together;
    }

    private void Plate(string name, int count)
    {
        var part = vehicle.Parts.FirstOrDefault(p => p.Fittings.Any(f => f.Name == name))?.Name ?? name;
        var slug = Free($"{name} holes");
        foreach (var work in (BuildWork[])[BuildWork.MarkHoles, BuildWork.Drill, BuildWork.Deburr])
            Add(slug, $"holes of {name}", work, count, [part], work == BuildWork.Drill ? "Back it up with wood." : "");
    }

    private void Fitted(AltimeterBay bay)
    {
        var slug = BuildStep.Slug(bay.Name);
        var rods = bay.Fittings.OfType<Rods>().Sum(r => r.Count);
        Add(slug, bay.Name, BuildWork.FitHardware, rods, [bay.Name]);
        Add(slug, bay.Name, BuildWork.CureLocker, 1, [bay.Name]);
        Add(slug, bay.Name, BuildWork.Wire, 1, [bay.Name]);
    }

    private void Stowed()
    {
        if (design.Stowed.Count == 0) return;
        var asks = measures.Where(m => m.What == "mass" && m.At.StartsWith("stowed", StringComparison.Ordinal)).Select(m => m.Name).ToValueList();
        Add("stowed", "canopies, cords and what else is stowed", BuildWork.Weigh, design.Stowed.Count, [], asks: asks);
    }

    private void Whole(BuildWork work, ValueList<string>? asks = null) =>
        Add("rocket", work == BuildWork.MarkDatum ? "all parts" : vehicle.Name, work, vehicle.Parts.Count, vehicle.Parts.Select(p => p.Name).ToValueList(), asks: asks);

    private ValueList<string> Friction() => measures.Where(m => m.What == "fit friction").Select(m => m.Name).ToValueList();

    private ValueList<string> Asked(string of, Func<PlannedMeasure, bool> which) =>
        measures.Where(m => m.Of == of && which(m) && (m.Plan is not null || m.What is "mass" or "balance")).Select(m => m.Name).ToValueList();

    private string Free(string place)
    {
        var slug = BuildStep.Slug(place);
        for (var n = 2; !taken.Add(slug); n++) slug = $"{BuildStep.Slug(place)}-{n}";
        return slug;
    }

    private void Add(string place, string what, BuildWork work, int count, ValueList<string> parts, string details = "", ValueList<string>? asks = null)
    {
        var row = BuildWorkRow.All[work];
        var slug = BuildStep.Slug(place);
        var says = string.Format(CultureInfo.InvariantCulture, row.Says, what, details).Trim();
        var duration = row.HandsOn ? row.Once + (row.Each * count) : row.Once;
        steps.Add(new($"{slug}/{BuildStep.Slug(BuildWorkRow.WordsOf(work))}", work, slug, says, duration, parts) { Asks = asks ?? [] });
    }
}
