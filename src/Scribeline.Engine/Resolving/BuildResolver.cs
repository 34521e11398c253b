using System.Globalization;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>The steps of building a rocket, from its parts, joints, bonds, holes and plates.</summary>
/// <param name="design">As typed.</param>
/// <param name="vehicle">The airframe.</param>
/// <param name="shop">Holes, plates and bonds.</param>
internal sealed class BuildResolver(RocketDesign design, Vehicle vehicle, ShopPlan shop)
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
        foreach (var of in shop.Bonds.GroupBy(b => b.Part)) Bonds(of.ToArray());
        Guides();
        foreach (var row in shop.Holes.Rows) Row([.. row]);
        foreach (var plate in shop.Plates) Plate(plate);
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
        if (shop.Bonds.Any(b => b.Adhesive is not null) && shop.Practice.Temperature is null)
            assumed.Add("Adhesives are taken to set at the temperature of their data sheets: type bench.temperature for that of the workshop.");
        return BuildSteps.Of(steps.ToValueList(), places, missing.ToValueList(), assumed.Distinct().ToValueList());
    }

    private void Joint(Joint joint)
    {
        string ahead = vehicle.Parts[joint.Forward].Name, behind = vehicle.Parts[joint.Aft].Name;
        Add($"{ahead} to {behind}", $"{ahead} and {behind}", BuildWork.FitJoint, 1, [ahead, behind], asks: Asked($"{ahead} to {behind}", m => m.What == "fit play"));
    }

    private void Bonds(BondLine[] bonds)
    {
        string? rings = null, mount = null;
        foreach (var bond in bonds)
        {
            var part = vehicle.Parts[bond.Part].Name;
            switch (bond.Kind)
            {
                case BondKind.Joint:
                    var behind = vehicle.Parts[bond.Joint + 1].Name;
                    Bond(bond, $"{part} to {behind}", $"joint of {part} and {behind}", 1, [part, behind], fit: false);
                    break;
                case BondKind.RingsOnMount:
                    // The tube itself is not touched yet.
                    rings = Bond(bond, $"{part} rings", $"rings on the motor mount of {part}", bond.Count, []);
                    break;
                case BondKind.RingsInTube:
                    mount = Bond(bond, $"{part} mount", $"motor mount in {part}", bond.Count, [part], Asked(part, m => m.What.StartsWith("motor mount", StringComparison.Ordinal)));
                    break;
                case BondKind.FinRoots:
                    Fins(bond, part, mount);
                    break;
                default:
                    Bond(bond, bond.Kind == BondKind.Band ? $"{part} band" : bond.Owner, bond.Kind == BondKind.Band ? bond.Name : $"{bond.Owner} in {part}", bond.Count, [part]);
                    break;
            }
        }

        if (rings is not null && mount is not null) places.Add((rings, mount, "the mount goes in with its rings on it"));
    }

    private void Fins(BondLine bond, string part, string? mount)
    {
        var tabbed = vehicle.Parts[bond.Part].Fittings.OfType<FinPlates>().Any(f => f.Name == bond.Owner && f.TabDepth > 0);
        var place = Bond(bond, $"{part} fins", $"fins of {part}", bond.Count, [part], Asked(part, m => m.What.StartsWith("fins", StringComparison.Ordinal)));
        if (tabbed) Add(place, $"fins of {part}", BuildWork.CutSlots, bond.Count, [part]);
        if (mount is not null) places.Add((mount, place, tabbed ? "the fins stand on the mount" : "the tube is stiff with its mount in it"));
        if (bond.Fillet <= 0) return;
        var fillets = Bond(bond, $"{part} fillets", $"fillets of the fins of {part}", 2 * bond.Count, [part], fit: false);
        places.Add((place, fillets, "a fillet is laid on a fin that stands still"));
    }

    // Guides are bonded with what is mixed for their part.
    private void Guides()
    {
        foreach (var part in design.Parts.Where(p => p.RailGuides.Any(g => g.Bonded)))
        {
            var index = design.Parts.ToList().IndexOf(part);
            if (shop.Bonds.LastOrDefault(b => b.Part == index && b.Adhesive is not null) is { } like)
                Bond(like with { Mask = "the rail's side of the guides" }, $"{part.Name} guides", $"rail guides of {part.Name}", part.RailGuides.Where(g => g.Bonded).Sum(g => g.FromAftEnd.Count), [part.Name]);
        }
    }

    /// <summary>One bond from the dry fit to full strength; gives its place.</summary>
    private string Bond(BondLine bond, string place, string what, int count, ValueList<string> parts, ValueList<string>? asks = null, bool fit = true)
    {
        var slug = Free(place);
        if (fit) Add(slug, what, BuildWork.DryFit, count, parts, asks: asks);
        if (bond.Adhesive is null) missing.Add($"{bond.At}: the adhesive of {bond.Name}, whose times of setting count");
        double? handling = Set(bond.Adhesive, bond.Adhesive?.Handling), full = Set(bond.Adhesive, bond.Adhesive?.Full);
        for (var work = BuildWork.Scuff; work <= BuildWork.FullCure; work++)
        {
            Add(slug, what, work, count, parts, work == BuildWork.Mix ? Mix(bond.Adhesive) : work == BuildWork.Mask ? $"Keep free: {bond.Mask}." : "", wait: work switch
            {
                BuildWork.Cure => handling,
                BuildWork.FullCure => full is { } whole ? Math.Max(0, whole - (handling ?? 0)) : null,
                _ => null,
            });
        }

        return slug;
    }

    // In the workshop's temperature, where one is typed.
    private double? Set(Adhesive? adhesive, double? time) =>
        adhesive is null ? null : time * (shop.Practice.Temperature is { } bench ? Adhesion.TimeFactor(adhesive.Temperature, bench) : 1);

    private static string Mix(Adhesive? adhesive) => adhesive switch
    {
        null => "",
        { PotLife: { } life, PotMass: { } mass } => string.Create(CultureInfo.InvariantCulture, $"{adhesive.Name}: {1000 * mass:0} g in its cup last {life / 60:0.#} min at {adhesive.Temperature - 273.15:0} °C."),
        _ => $"{adhesive.Name}.",
    };

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

    private void Plate(PlateDraft plate)
    {
        var count = plate.Groups.Sum(g => g.Count * g.Things.Count(t => t is { Face: PlateFace.Through, Outline: PlateCircle }));
        if (count == 0) return;
        var (name, slug) = (plate.Plate.Name, Free($"{plate.Plate.Name} holes"));
        foreach (var work in (BuildWork[])[BuildWork.MarkHoles, BuildWork.Drill, BuildWork.Deburr])
            Add(slug, $"holes of {name}", work, count, [name], work == BuildWork.Drill ? "Back it up with wood." : "");
        if (shop.Bonds.Any(b => b.Kind == BondKind.Plate && b.Owner == name)) places.Add((slug, BuildStep.Slug(name), "a plate is drilled on the bench, before it is in its tube"));
    }

    private void Fitted(AltimeterBay bay)
    {
        var slug = BuildStep.Slug(bay.Name);
        var rods = bay.Fittings.OfType<Rods>().Sum(r => r.Count);
        ValueList<string> parts = [bay.Name, .. bay.Fittings.OfType<BulkPlate>().Select(p => p.Name)];
        Add(slug, bay.Name, BuildWork.FitHardware, rods, parts);
        Add(slug, bay.Name, BuildWork.CureLocker, 1, parts);
        Add(slug, bay.Name, BuildWork.Wire, 1, parts);
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

    private void Add(string place, string what, BuildWork work, int count, ValueList<string> parts, string details = "", ValueList<string>? asks = null, double? wait = null)
    {
        var row = BuildWorkRow.All[work];
        var slug = BuildStep.Slug(place);
        var says = string.Format(CultureInfo.InvariantCulture, row.Says, what, details).Trim();
        var duration = wait ?? (row.HandsOn ? row.Once + (row.Each * count) : row.Once);
        steps.Add(new($"{slug}/{BuildStep.Slug(BuildWorkRow.WordsOf(work))}", work, slug, says, duration, parts) { Asks = asks ?? [] });
    }
}
