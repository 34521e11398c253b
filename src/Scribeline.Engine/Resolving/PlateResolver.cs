using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Every plate and ring of a design with what sits on it; what has no place yet is left to be proposed.</summary>
internal sealed class PlateResolver(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
{
    private readonly List<string> missing = [];

    /// <summary>What to type so that every plate is known.</summary>
    public ValueList<string> Missing => missing.Distinct().ToValueList();

    /// <summary>Plates and rings, nose to tail.</summary>
    public ValueList<PlateDraft> Resolve() => vehicle.Parts.SelectMany((part, i) => part.Fittings.Select(f => f switch
    {
        BulkPlate p => Plate(i, p),
        CentringRing r => new PlateDraft(Layout(i, r, r.Name, r.OuterDiameter, r.InnerDiameter), []),
        _ => null,
    })).OfType<PlateDraft>().OrderBy(p => p.Plate.Station).ToValueList();

    private PlateDraft Plate(int index, BulkPlate plate)
    {
        var layout = Layout(index, plate, plate.Name, plate.Diameter, 0);
        if (design.Parts[index].Plates.FirstOrDefault(p => p.Name == plate.Name) is not { } typed) return new(layout, []);
        var part = vehicle.Parts[index];
        var outer = typed.Face switch
        {
            EndWord.Forward => PlateFace.Forward,
            EndWord.Aft => PlateFace.Aft,
            _ => layout.Station - part.FrontReach < part.RearReach - layout.Station ? PlateFace.Forward : PlateFace.Aft,
        };
        List<PlateGroup> groups = [];
        if (Rods(index, layout, outer) is { } rods) groups.Add(rods);
        if (Bolt(typed, outer) is { } bolt) groups.Add(bolt);
        foreach (var carried in typed.Carries) groups.AddRange(Carried(carried, outer));
        var cups = groups.Count(g => g.Things.Any(t => t.Kind == PlateThingKind.ChargeCup));
        var charges = design.Charges.Where(c => c.On.Equals(plate.Name, StringComparison.OrdinalIgnoreCase)).ToArray();
        if (cups < charges.Length) missing.Add($"{typed.At}.carries: a charge cup for each of {string.Join(" and ", charges.Select(c => c.Name))} on {plate.Name}");
        return new(layout, groups.ToValueList());
    }

    private PlateLayout Layout(int index, Fitting fitting, string name, double outside, double inside)
    {
        var front = vehicle.Parts[index].Front + fitting.Offset;
        return new(name, index, outside, inside, fitting.Length, front, BoreOf(front - 1e-4, outside), BoreOf(front + fitting.Length + 1e-4, outside), []);
    }

    // The smallest bore that the things on a face must pass: that of the tube round it there.
    private double BoreOf(double station, double otherwise) => vehicle.BoreAt(station) is { } radius and > 0 ? 2 * radius : otherwise;

    private PlateGroup? Rods(int index, PlateLayout layout, PlateFace outer)
    {
        if (design.Parts[index] is not AltimeterBayDesign { Rods: { } rods }) return null;
        var part = vehicle.Parts[index];
        var fitted = part.Fittings.OfType<Rods>().First();
        if (layout.Station < part.Front + fitted.Offset - 1e-6 || layout.Station + layout.Thickness > part.Front + fitted.Offset + fitted.RodLength + 1e-6) return null;
        if (ScrewThread.Find(rods.Thread)?.Normal is not { } drill || Hardware.Nut(rods.Thread) is not { } nut)
        {
            missing.Add($"{rods.At}.thread: a thread of the table, such as 1/4-20 or M6");
            return null;
        }

        if (rods.Nuts is null) missing.Add($"{rods.At}.nuts: hex or wing, what closes the plates of {part.Name}");
        List<PlateThing> things = [Thing("hole of rod#", PlateThingKind.Hole, PlateFace.Through, Circle(drill.Diameter))];
        if (Hardware.Washer(rods.Thread) is { } washer) things.Add(Thing("washer of rod#", PlateThingKind.Nut, outer, Circle(washer.Across)));
        if (rods.Nuts == RodNutWord.Hex) things.Add(Thing("nut of rod#", PlateThingKind.Nut, outer, Circle(nut.Across)));

        // Wing nuts of three generations are on sale: the widest is the safe one to leave room for.
        if (rods.Nuts == RodNutWord.Wing && Hardware.WingNuts(rods.Thread) is [.., var widest]) things.Add(Thing("sweep of the wing nut of rod#", PlateThingKind.WingNut, outer, Circle(widest.Across)));
        if (rods.Count == 1) return new(PlateSolver.Shared, 1, 0, 0, things.ToValueList());
        return new(PlateSolver.Shared, rods.Count, rods.Spacing is { } spacing ? draw(spacing) / 2 : null, rods.FirstClock is { } clock ? draw(clock) : rods.Spacing is null ? null : 0, things.ToValueList());
    }

    private PlateGroup? Bolt(PlateDesign plate, PlateFace outer)
    {
        if (plate.Hardware is not { } typed) return null;
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var size = words[^1].TrimEnd('"');
        var inner = outer == PlateFace.Forward ? PlateFace.Aft : PlateFace.Forward;
        var place = plate.Bolt;
        double fromCentre = place?.FromCentre is { } from ? draw(from) : 0;
        if (typed.Contains("U-bolt", StringComparison.OrdinalIgnoreCase) && Hardware.UBolts(size) is { Count: > 0 } bolts)
        {
            var usual = place?.InsideWidth is { } typedWidth ? bolts.MinBy(b => Math.Abs(b.Inner!.Value - draw(typedWidth)))! : bolts[0];
            return UBolt(plate, place, usual, fromCentre, outer, inner);
        }

        if (typed.Contains("eye", StringComparison.OrdinalIgnoreCase) && ThreadOf(size) is { } thread && ScrewThread.All.FirstOrDefault(t => t.Designation == thread.Designation)?.Normal is { } drill)
        {
            var across = place?.Across is { } eye ? draw(eye) : Hardware.EyeBolt(size)?.Across;
            if (across is null) missing.Add($"{plate.At}.bolt.across: across the eye of the eye bolt of {plate.Name}");
            List<PlateThing> things = [Thing("hole of the eye bolt", PlateThingKind.Hole, PlateFace.Through, Circle(drill.Diameter))];
            if (across is { } wide) things.Add(Thing("eye of the eye bolt", PlateThingKind.Bolt, outer, Circle(wide)));
            if (Hardware.Nut(thread) is { } nut) things.Add(Thing("nut of the eye bolt", PlateThingKind.Nut, inner, Circle(nut.Across)));
            Backing(things, place, outer, inner);

            // In the middle an eye bolt may point any way.
            return new("eye bolt", 1, fromCentre, place?.Clock is { } clock ? draw(clock) : fromCentre == 0 ? 0 : null, things.ToValueList());
        }

        missing.Add($"{plate.At}.hardware: a U-bolt or eye bolt with its size, such as U-bolt 1/4 or eye bolt M6; '{typed}' has no outline");
        return null;
    }

    private PlateGroup? UBolt(PlateDesign plate, BoltPlaceDesign? place, Hardware usual, double fromCentre, PlateFace outer, PlateFace inner)
    {
        if (ThreadOf(usual.Size) is not { } thread || ScrewThread.Find(thread)?.Normal is not { } drill || Hardware.Nut(thread) is not { } nut) return null;
        double width = place?.InsideWidth is { } typed ? draw(typed) : usual.Inner!.Value, rod = thread.MajorDiameter, leg = (width + rod) / 2;
        if (place?.InsideWidth is null) missing.Add($"{plate.At}.bolt.inside width: between the legs of the U-bolt of {plate.Name}; measure your own, none is standard");
        List<PlateThing> things = [];
        foreach (var (x, n) in new[] { (leg, 1), (-leg, 2) })
        {
            things.Add(Thing($"hole of leg {n}", PlateThingKind.Hole, PlateFace.Through, new PlateCircle(x, 0, drill.Diameter / 2)));
            things.Add(Thing($"nut of leg {n}, outside", PlateThingKind.Nut, outer, new PlateCircle(x, 0, nut.Across / 2)));
            things.Add(Thing($"nut of leg {n}, inside", PlateThingKind.Nut, inner, new PlateCircle(x, 0, nut.Across / 2)));
        }

        things.Add(Thing("bend of the U-bolt", PlateThingKind.Bolt, outer, new PlateRectangle(0, 0, width + (2 * rod), rod, 0)));
        Backing(things, place, outer, inner);
        return new("U-bolt", 1, fromCentre, place?.Clock is { } clock ? draw(clock) : null, things.ToValueList());
    }

    private void Backing(List<PlateThing> things, BoltPlaceDesign? place, PlateFace outer, PlateFace inner)
    {
        if (place is not { BackingLength: { } length, BackingWidth: { } width }) return;
        foreach (var face in new[] { outer, inner })
            things.Add(Thing($"backing plate, {(face == outer ? "outside" : "inside")}", PlateThingKind.BackingPlate, face, new PlateRectangle(0, 0, draw(length), draw(width), 0)));
    }

    private IEnumerable<PlateGroup> Carried(OnPlateDesign d, PlateFace outer)
    {
        var (word, kind) = d.Kind switch
        {
            OnPlateWord.ChargeCup => ("charge cup", PlateThingKind.ChargeCup),
            OnPlateWord.TerminalBlock => ("terminal block", PlateThingKind.TerminalBlock),
            OnPlateWord.WireHole => ("wire hole", PlateThingKind.WireHole),
            OnPlateWord.KeepClear => ("keep clear", PlateThingKind.KeepClear),
            _ => ("thing", PlateThingKind.Other),
        };
        var name = d.Name ?? word;
        PlateOutline? outline = d is { Diameter: { } round } ? Circle(draw(round))
            : d is { Length: { } length, Width: { } width } ? new PlateRectangle(0, 0, draw(width), draw(length), 0) : null;
        if (outline is null)
        {
            missing.Add($"{d.At}: the size of {name}: diameter, or length and width");
            yield break;
        }

        var face = kind == PlateThingKind.WireHole ? PlateFace.Through : d.Face switch { EndWord.Forward => PlateFace.Forward, EndWord.Aft => PlateFace.Aft, _ => outer };
        double? fromCentre = d.FromCentre is { } from ? draw(from) : null;
        var clocks = ClockAngles.Of(d.Clock, draw);
        var count = d.Count ?? Math.Max(clocks.Count, 1);
        if (clocks.Count > 0 && clocks.Count != count) missing.Add($"{d.At}.clock: {count} clock angles for {name}");
        for (var i = 0; i < count; i++)
            yield return new(count > 1 ? $"{name} {i + 1}" : name, 1, fromCentre, clocks.Count == count ? clocks[i] : null, [Thing(count > 1 ? $"{name} {i + 1}" : name, kind, face, outline)]);
    }

    private static ThreadName? ThreadOf(string size) =>
        ScrewThread.All.FirstOrDefault(t => t.Designation.StartsWith(size + "-", StringComparison.Ordinal) || t.Designation.StartsWith(size + "x", StringComparison.Ordinal)) is { } row
            ? ThreadName.Read(row.Designation).Value : null;

    private static PlateCircle Circle(double diameter) => new(0, 0, diameter / 2);

    private static PlateThing Thing(string name, PlateThingKind kind, PlateFace face, PlateOutline outline) => new(name, kind, face, outline, "", true);
}
