using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>
/// Puts stowed things into their bays. A typed place counts; otherwise things with a packed length lie one behind the other in the order typed,
/// the last against the aft closure, where boost presses them; things without lie at the middle of the bay.
/// </summary>
internal static class StowedResolver
{
    public static Vehicle Stow(Vehicle vehicle, RocketDesign design, ResolvingNotes notes)
    {
        List<Part> parts = [.. vehicle.Parts];
        ValueList<Bay> bays = vehicle.Bays();
        foreach (StowedDesign stray in design.Stowed.Where(d => !parts.Exists(p => Same(p.Name, d.In))))
            notes.Problem(stray.At + ".in", $"There is no part '{stray.In}' to stow things in.", $"Parts are {string.Join(", ", parts.Select(p => p.Name))}.");

        for (int i = 0; i < parts.Count; i++)
        {
            Part part = parts[i];
            List<StowedDesign> things = [.. design.Stowed.Where(d => Same(d.In, part.Name))];
            if (things.Count == 0) continue;
            Bay? bay = bays.FirstOrDefault(b => Same(b.Name, part.Name)) ?? bays.MaxBy(b => Math.Min(b.Rear, part.Rear) - Math.Max(b.Front, part.Front));
            if (bay is null || Math.Min(bay.Rear, part.RearReach) <= Math.Max(bay.Front, part.FrontReach))
            {
                notes.Problem(things[0].At, $"{part.Name} is not closed at both ends, so nothing can be stowed in it.", "Close it with bulk plates, the nose or the motor mount.");
                continue;
            }

            parts[i] = part with { Stowed = Placed(things, part, bay, notes) };
        }

        return vehicle with { Parts = parts.ToValueList() };
    }

    private static ValueList<Stowed> Placed(List<StowedDesign> things, Part part, Bay bay, ResolvingNotes notes)
    {
        List<Stowed> placed = [];
        double rear = bay.Rear;
        foreach (StowedDesign design in Enumerable.Reverse(things))
        {
            if (Thing(design, bay, notes) is not { } thing) continue;
            double front = thing.PackedLength > 0 ? rear - thing.PackedLength : (bay.Front + bay.Rear) / 2;
            if (design.FromForwardEnd is { } typed) front = part.Datum + notes.Si(typed);
            if (thing.PackedLength > 0) rear = front;
            placed.Insert(0, thing with { Offset = front - part.Front });
        }

        return placed.ToValueList();
    }

    private static Stowed? Thing(StowedDesign d, Bay bay, ResolvingNotes notes)
    {
        int kinds = new object?[] { d.Canopy, d.Cord, d.Blanket, d.Link, d.Other }.Count(k => k is not null);
        if (kinds != 1)
        {
            notes.Problem(d.At, $"A stowed thing is exactly one of canopy, cord, blanket, link and other, not {kinds}.");
            return null;
        }

        return d switch
        {
            { Canopy: { } c } => Packed(c.Name, c.Mass, c.PackedLength, c.PackedVolume, c.At),
            { Cord: { } c } => Cord(c),
            { Blanket: { } b } => Packed(b.Name ?? "Blanket", b.Mass, b.PackedLength, b.PackedVolume, b.At),
            { Link: { } l } => Packed(l.Name, l.Mass, null, null, l.At),
            _ => Packed(d.Other!.Name, d.Other.Mass, d.Other.PackedLength, d.Other.PackedVolume, d.Other.At),
        };

        Stowed Cord(CordDesign c)
        {
            string name = c.Name ?? c.Material;
            if (c.Mass is not null || c.MassPerLength is null) return Packed(name, c.Mass, c.PackedLength, c.PackedVolume, c.At);
            Stowed thing = Packed(name, c.MassPerLength, c.PackedLength, c.PackedVolume, c.At);
            return thing with { Mass = thing.Mass * notes.Si(c.Length) };
        }

        Stowed Packed(string name, IMeasure? mass, IMeasure? length, IMeasure? volume, string at)
        {
            if (mass is null) notes.Open(at + ".mass", $"The mass of {name} is not known; it counts as 0.", "Weigh it.");

            // A thing of known volume or length alone fills the bay from wall to wall.
            double section = Math.PI * bay.Bore * bay.Bore / 4, v = notes.Si(volume, 0), l = notes.Si(length, 0);
            if (length is null && v > 0) l = v / section;
            if (volume is null && l > 0) v = l * section;
            double diameter = l > 0 ? Math.Sqrt(4 * v / (Math.PI * l)) : 0;
            return new(name, 0, l, diameter, mass is null ? 0 : notes.Si(mass), v, mass?.Known ?? Basis.Estimated);
        }
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
