using System.Globalization;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using static System.Math;

namespace Scribeline.Engine.Questions.Bench;

/// <summary>Does everything on the plates clear? Every pair of outlines on both faces, the walls round them, and places for what has none yet.</summary>
public sealed class PlatesClear() : Question("plates-clear", "Does everything on the plate clear?", Place.Bench)
{
    private const int Listed = 12;

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        foreach (var missing in study.Rocket.Shop.Missing) draft.Miss(missing);
        PlateLayout[] plates = [.. study.Plates.Where(p => p.Things.Count > 0)];
        foreach (var (plate, i) in plates.Select((p, i) => (p, i + 1)))
        {
            var gaps = PlateGaps.Of(plate);
            Narrowest(draft, plate, gaps, i);
            Wall(draft, plate, gaps, i);
            Holes(draft, plate, i);
            Proposed(draft, study, plate);
            draft.List(() => Gaps(plate, gaps, study));
        }

        if (plates.Length == 0) draft.Miss("parts: plates with rods, bolts or cups on them");
        draft.List(() => Things(plates));
        draft.Note("Seen from the forward end, clock angles run counter-clockwise; the aft face is the mirror image. A wing nut stops at any angle, so it counts as the circle it sweeps, of the widest kind on sale.");
        draft.Note("Outlines are at the greatest size their standards allow. A hexagon nut needs 2 to 3 mm more round it for a socket (common practice). Measure U-bolts and cups: they follow no standard.");
        return draft.Done();
    }

    private static void Narrowest(Draft draft, PlateLayout plate, ValueList<PlateGap> gaps, int i)
    {
        if (gaps.FirstOrDefault(g => !g.Wall) is not { } least) return;
        var (a, b) = (plate.Things.First(t => t.Name == least.First).Outline, plate.Things.First(t => t.Name == least.Second).Outline);
        draft.Find($"{plate.Name}: narrowest gap", a is PlateCircle p && b is PlateCircle q ? Between(draft, least, p, q, i) : draft.Working.Simulated($"g_{i}", least.Width, "m", Pair(least), "distance of their outlines"), Unit.Length, "plates-clear.gap");
        draft.Note($"{plate.Name}: {Pair(least)} come nearest, {Face(least.Face)}.");
    }

    private static double Between(Draft draft, PlateGap gap, PlateCircle p, PlateCircle q, int i)
    {
        var w = draft.Working;
        var names = Locals.Numbered($"_{i}", "x_1", "y_1", "r_1", "x_2", "y_2", "r_2");
        var x_1 = w.Given($"x_1_{i}", p.X, "m", $"{gap.First}: middle, towards the scribe line", "layout");
        var y_1 = w.Given($"y_1_{i}", p.Y, "m", "the same, towards 90°", "layout");
        var r_1 = w.Given($"r_1_{i}", p.Radius, "m", "its radius", "hardware table, or the design");
        var x_2 = w.Given($"x_2_{i}", q.X, "m", $"{gap.Second}: middle, towards the scribe line", "layout");
        var y_2 = w.Given($"y_2_{i}", q.Y, "m", "the same, towards 90°", "layout");
        var r_2 = w.Given($"r_2_{i}", q.Radius, "m", "its radius", "hardware table, or the design");
        return w.StepOf($"g_{i}", Sqrt(((x_1 - x_2) * (x_1 - x_2)) + ((y_1 - y_2) * (y_1 - y_2))) - r_1 - r_2, "m", "gap between them", "two circles", names);
    }

    private static void Wall(Draft draft, PlateLayout plate, ValueList<PlateGap> gaps, int i)
    {
        if (gaps.FirstOrDefault(g => g.Wall) is not { } least) return;
        draft.Working.Simulated($"h_{i}", least.Width, "m", $"{least.First}: to the {least.Second}", "radius of the wall less the farthest point of the outline");
        draft.Find($"{plate.Name}: narrowest to wall or edge", least.Width, Unit.Length, "plates-clear.gap");
        if (least.Width < 0) draft.Note($"{plate.Name}: {least.First} reaches beyond the {least.Second}.");
    }

    private static void Holes(Draft draft, PlateLayout plate, int i)
    {
        var holes = plate.Things.Where(t => t is { Kind: PlateThingKind.Hole, Outline: PlateCircle }).Select(t => (t.Name, Circle: (PlateCircle)t.Outline)).ToArray();
        if (holes.Length == 0) return;
        var worst = holes.MinBy(h => (plate.Diameter / 2) - Outlines.Reach(h.Circle));
        var w = draft.Working;
        var names = Locals.Numbered($"_{i}", "R", "f", "d");
        var R = w.Given($"R_{i}", plate.Diameter / 2, "m", $"radius of {plate.Name}", "design");
        var f = w.Given($"f_{i}", Sqrt((worst.Circle.X * worst.Circle.X) + (worst.Circle.Y * worst.Circle.Y)), "m", $"{worst.Name}: from the middle", "layout");
        var d = w.Given($"d_{i}", 2 * worst.Circle.Radius, "m", "its diameter", "thread table: normal fit");
        draft.Find($"{plate.Name}: edge distance of {worst.Name} in diameters", w.StepOf($"e_{i}", (R - f) / d, "", "edge distance in diameters", "definition", names), Unit.Ratio, "plates-clear.edge");
    }

    private static void Proposed(Draft draft, Study study, PlateLayout plate)
    {
        foreach (var p in plate.Proposals)
        {
            draft.Note(string.Create(
                CultureInfo.InvariantCulture,
                $"{plate.Name}: a place for {p.Group} is proposed, {Shown.Text(p.FromCentre, Unit.Length, study.Rocket.Inch)} from the middle at {p.Clock * 180 / PI:F0}°; write it in to keep it."));
        }
    }

    private static AnswerTable Gaps(PlateLayout plate, ValueList<PlateGap> gaps, Study study)
    {
        var limit = study.Limits["plates-clear.gap"];
        return new(
            $"{plate.Name}: narrowest gaps",
            [new("face"), new("between"), new("and"), new("gap", Unit.Length)],
            gaps.Take(Listed).Select(g => TableRow.Of(limit.Judge(g.Width, null), Face(g.Face), g.First, g.Second, g.Width)).ToValueList());
    }

    private static AnswerTable Things(PlateLayout[] plates) => new(
        "What sits where, seen from the forward end",
        [new("plate"), new("face"), new("what"), new("from the middle", Unit.Length), new("clock", Unit.Angle), new("across", Unit.Length), new("placed by")],
        plates.SelectMany(p => p.Things.Select(t => TableRow.Of(
            null, p.Name, Face(t.Face), t.Name, Sqrt((t.Outline.X * t.Outline.X) + (t.Outline.Y * t.Outline.Y)), WrapTemplate.Turn(Atan2(t.Outline.Y, t.Outline.X)),
            t.Outline is PlateCircle c ? 2 * c.Radius : ((PlateRectangle)t.Outline).Length, t.Fixed ? "design" : "proposal"))).ToValueList());

    private static string Pair(PlateGap gap) => $"{gap.First} and {gap.Second}";

    private static string Face(PlateFace face) => face switch
    {
        PlateFace.Forward => "forward face",
        PlateFace.Aft => "aft face",
        _ => "through",
    };
}
