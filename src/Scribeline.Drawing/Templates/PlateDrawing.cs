using System.Globalization;
using Scribeline.Engine.Shop;

namespace Scribeline.Drawing.Templates;

/// <summary>A bulk plate or ring as a template, seen from its forward face with the scribe line up.</summary>
internal static class PlateDrawing
{
    private const double Edge = 2;

    /// <summary>The template of a plate.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="holes">Holes through it.</param>
    /// <param name="inch">Whether inches come first.</param>
    public static Template Of(PlateLayout plate, IReadOnlyList<PlateHole> holes, bool inch)
    {
        var draft = new TemplateDraft();
        double radius = Mm(plate.Diameter) / 2, middle = radius + Edge, size = 2 * middle;
        draft.Circle(LineRole.Cut, middle, middle, radius);
        if (plate.IsRing) draft.Circle(LineRole.Cut, middle, middle, Mm(plate.InnerDiameter) / 2);
        draft.Line(LineRole.Cross, false, (middle - 4, middle), (middle + 4, middle));
        draft.Line(LineRole.Cross, false, (middle, middle - 4), (middle, middle + 4));
        draft.Take(middle - 4, middle - 4, middle + 4, middle + 4);
        Scribe(draft, middle, radius, Mm(plate.InnerDiameter) / 2);
        foreach (var hole in holes) draft.Drilled(middle - Mm(hole.Y), middle - Mm(hole.X), Mm(hole.Diameter));
        foreach (var thing in plate.Things.Where(t => t.Kind != PlateThingKind.Hole)) Thing(draft, thing, middle);
        foreach (var hole in holes) draft.Beside(Label(hole), middle - Mm(hole.Y), middle - Mm(hole.X), Clear(plate, hole), size, size);
        foreach (var thing in plate.Things.Where(t => t.Kind != PlateThingKind.Hole && t.Face != PlateFace.Through))
            draft.Beside([thing.Name], middle - Mm(thing.Outline.Y), middle - Mm(thing.Outline.X), 0.5, size, size);
        Facts(draft, plate, holes, inch);
        return draft.Done(plate.Name, size, size);
    }

    // Past what stands round the hole: a nut, a washer, what a wing nut sweeps.
    private static double Clear(PlateLayout plate, PlateHole hole)
    {
        var round = plate.Things.Select(t => t.Outline).OfType<PlateCircle>().Where(c => Math.Abs(c.X - hole.X) + Math.Abs(c.Y - hole.Y) < 1e-3);
        return Math.Max(Mm(hole.Diameter) / 2, 0.71 * Mm(round.Select(c => c.Radius).DefaultIfEmpty(0).Max())) + 1;
    }

    private static void Scribe(TemplateDraft draft, double middle, double radius, double bore)
    {
        var foot = Math.Max(radius - 8, bore + 1);
        draft.Line(LineRole.Scribe, false, (middle, middle - radius), (middle, middle - foot));
        draft.Take(middle - 0.6, middle - radius, middle + 0.6, middle - foot);
    }

    private static void Thing(TemplateDraft draft, PlateThing thing, double middle)
    {
        var role = thing.Face == PlateFace.Aft ? LineRole.Aft : LineRole.Forward;
        switch (thing.Outline)
        {
            case PlateCircle circle:
                draft.Circle(role, middle - Mm(circle.Y), middle - Mm(circle.X), Mm(circle.Radius));
                break;
            case PlateRectangle rectangle:
                draft.Line(role, true, [.. rectangle.Corners.Select(c => (middle - Mm(c.Y), middle - Mm(c.X)))]);
                break;
            default:
                break;
        }
    }

    private static string[] Label(PlateHole hole) =>
        hole.Drill is { } drill ? [hole.Mark, WrapDrawing.DrillName(drill.Name)] : [hole.Mark, string.Create(CultureInfo.InvariantCulture, $"{Mm(hole.Diameter):0.00} mm")];

    private static void Facts(TemplateDraft draft, PlateLayout plate, IReadOnlyList<PlateHole> holes, bool inch)
    {
        var what = plate.IsRing ? $"Ring {TemplateDraft.Length(plate.Diameter, inch)} outside, {TemplateDraft.Length(plate.InnerDiameter, inch)} inside" : $"Plate {TemplateDraft.Length(plate.Diameter, inch)} across";
        draft.Fact($"{what}, {TemplateDraft.Length(plate.Thickness, inch)} thick. Seen from its forward face; the tick marks the scribe line. Dashed outlines stand on the aft face.");
        foreach (var hole in holes)
        {
            draft.Fact(string.Create(CultureInfo.InvariantCulture, $"{hole.Mark}: {hole.Name}, {Mm(hole.Diameter):0.00} mm; {TemplateDraft.Length(hole.FromCentre, inch)} from the middle at {hole.Clock * 180 / Math.PI:0.#}°."));
        }
    }

    private static double Mm(double metres) => 1000 * metres;
}
