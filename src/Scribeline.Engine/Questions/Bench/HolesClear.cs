using System.Globalization;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Shop;
using static System.Math;

namespace Scribeline.Engine.Questions.Bench;

/// <summary>Does every hole have its place? The schedule, and each hole against its neighbours, edges, bonds, the rail line and the ports' air.</summary>
public sealed partial class HolesClear() : Question("holes-clear", "Does every hole have its place?", Place.Bench)
{
    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var schedule = study.HoleSchedule;
        foreach (var missing in schedule.Missing) draft.Miss(missing);
        if (schedule.Holes.Count == 0) draft.Miss("joints: pins or screws, or ports and vents of a part: there is no hole yet");
        HoleGaps gaps = new(study.Vehicle, schedule);
        var edges = gaps.Edges();
        Edges(draft, schedule, edges);
        Nearest(draft, gaps.Neighbours());
        Free(draft, "rail line", gaps.Rail(), "holes-clear.rail");
        Free(draft, "plates, rings and fins", gaps.Bonds(), "holes-clear.bonds");
        if (gaps.Ties() is { Count: > 0 } ties) draft.Note($"{string.Join(", ", ties.Select(t => t.Mark))} would tie a joint together that must let go.");
        draft.Find("fasteners across a joint that must let go", gaps.Ties().Count, Unit.Count, "holes-clear.ties");
        Ports(draft, study);
        foreach (var joint in study.Vehicle.Joints) Key(draft, study, schedule, joint);
        draft.List(() => Schedule(schedule, edges, study));
        draft.List(() => Rows(schedule));
        draft.List(() => InPlates(schedule));
        Remarks(draft, schedule);
        return draft.Done();
    }

    private static void Edges(Draft draft, HoleSchedule schedule, ValueList<HoleGap> edges)
    {
        foreach (var (row, i) in schedule.Rows.Select((r, i) => (r, i + 1)))
        {
            if (edges.Where(g => g.Hole.Row == row.Key).MinBy(g => g.Diameters) is not { } worst) continue;
            var w = draft.Working;
            var names = Locals.Numbered($"_{i}", "e", "d");
            var e = w.Given($"e_{i}", worst.Distance, "m", $"{worst.Hole.Mark}, {row.Key}: to the {worst.From}", "design");
            var d = w.Given($"d_{i}", worst.Distance > 0 ? worst.Distance / worst.Diameters : worst.Hole.Diameter, "m", "its diameter there", "drill table, or the design");
            var r = w.StepOf($"r_{i}", e / d, "", "edge distance in diameters", "definition", names);
            draft.Find($"{row.Key}: edge distance in diameters", r, Unit.Ratio, "holes-clear.edge");
        }
    }

    private static void Nearest(Draft draft, ValueList<HoleGap> neighbours)
    {
        if (neighbours.MinBy(g => g.Diameters) is not { } nearest) return;
        draft.Working.Simulated("p", nearest.Distance, "m", $"nearest holes, middle to middle: {nearest.Hole.Mark} and {nearest.From}", "root of the squares of arc and distance along the tube");
        draft.Find("nearest holes, middle to middle, in diameters", nearest.Diameters, Unit.Ratio, "holes-clear.pitch");
    }

    private static void Free(Draft draft, string of, ValueList<HoleGap> gaps, string limit)
    {
        if (gaps.MinBy(g => g.Distance) is not { } worst) return;
        draft.Working.Simulated(of == "rail line" ? "g_r" : "g_b", worst.Distance, "m", $"{worst.Hole.Mark}, {worst.Hole.Row}: free of the {worst.From}", "rim or head to what it must keep off, on the surface");
        draft.Find($"free of {of}, least", worst.Distance, Unit.Length, limit);
        if (worst.Distance < 0) draft.Note($"{worst.Hole.Mark}, {worst.Hole.Row}, lies on the {worst.From}.");
    }

    private static void Ports(Draft draft, Study study)
    {
        foreach (var ports in study.Rocket.Holes.Where(h => h.StaticPort && h.Clocks.Count > 0))
        {
            var placed = PortPlacement.Of(ports, study.Shape, study.Rocket.SurfaceThings);
            if (placed.InLine is null) continue;
            draft.Working.Simulated($"o_{ports.Part + 1}", placed.OffLine, "rad", $"{ports.Name}: off the line of a {placed.InLine} ahead", "least clock angle to what stands within 4 calibres ahead");
            draft.Find($"{ports.Name}: off the line of what stands ahead", placed.OffLine, Unit.Angle, "breathes.off-line");
        }
    }

    private static AnswerTable Schedule(HoleSchedule schedule, ValueList<HoleGap> edges, Study study)
    {
        var limit = study.Limits["holes-clear.edge"];
        return new(
            "Hole schedule",
            [
                new("mark"), new("station", Unit.Length), new("from edge", Unit.Length), new("clock", Unit.Angle), new("arc", Unit.Length), new("hole", Unit.Length),
                new("first drill"), new("depth", Unit.Length), new("edge/d", Unit.Ratio),
            ],
            schedule.Holes.Select(h =>
            {
                var edge = edges.FirstOrDefault(g => g.Hole == h)?.Diameters;
                return TableRow.Of(
                    edge is { } e ? limit.Judge(e, null) : null, h.Mark, h.Station, h.FromEdge, Known(h.Clock), Known(h.Arc), Known(h.Diameter), First(h), h.Depth, edge);
            }).ToValueList());
    }

    private static AnswerTable Rows(HoleSchedule schedule) => new(
        "What each row is",
        [new("marks"), new("what"), new("drilled through"), new("measured from"), new("after the first drill")],
        schedule.Rows.Select(r =>
        {
            var (first, last) = (r.First(), r.Last());
            return TableRow.Of(
                null, first == last ? first.Mark : $"{first.Mark} to {last.Mark}", r.Key, string.Join(" and ", first.Parts), first.Edge.Name, Then(first));
        }).ToValueList());

    private static TableCell Known(double value) => double.IsNaN(value) ? "not known" : value;

    private static AnswerTable InPlates(HoleSchedule schedule) => new(
        "Holes in plates, seen from the forward end",
        [new("mark"), new("plate"), new("what"), new("from the middle", Unit.Length), new("clock", Unit.Angle), new("diameter", Unit.Length), new("drill"), new("depth", Unit.Length)],
        schedule.PlateHoles.Select(h => TableRow.Of(null, h.Mark, h.Plate, h.Name, h.FromCentre, h.Clock, h.Diameter, h.Drill?.Name ?? "bore", h.Depth)).ToValueList());

    private static string First(Hole hole) =>
        double.IsNaN(hole.Pilot) ? "not known" : hole.Cuts.MinBy(c => c.Diameter)!.Drill?.Name ?? string.Create(CultureInfo.InvariantCulture, $"{1000 * hole.Pilot:0.##} mm");

    // What follows the first pass, wall by wall.
    private static string Then(Hole hole)
    {
        List<string> then = [];
        foreach (var cut in hole.Cuts)
        {
            if (cut.Drill is { } drill && cut.Diameter > hole.Pilot) then.Add($"open {cut.PartName} to {drill.Name}");
            if (cut.Countersink > 0) then.Add(string.Create(CultureInfo.InvariantCulture, $"countersink {cut.PartName} {cut.CountersinkAngle * 180 / PI:F0}° to {1000 * cut.Countersink:F1} mm"));
            if (cut.Tap is { } tap) then.Add($"tap {cut.PartName} {tap}");
            if (cut.Remark.Length > 0) then.Add(cut.Remark);
        }

        return string.Join("; ", then);
    }

    private static void Remarks(Draft draft, HoleSchedule schedule)
    {
        foreach (var assumed in schedule.Assumed) draft.Note(assumed);
        draft.Note("Walls drilled together are drilled assembled, clocked and taped: one hole, one error. Punch, pilot 2 to 3 mm, then size; back the exit with wood.");
        if (schedule.Holes.Count == 0) return;
        double wall = schedule.Holes.Max(h => h.Depth), across = schedule.Holes.Max(h => h.SurfaceDiameter), tilt = 2 * PI / 180;
        draft.Note(string.Create(CultureInfo.InvariantCulture, $"A drill 2° off square comes out {1000 * DrillWander.Aside(wall, tilt):F2} mm aside through the thickest wall and {1000 * DrillWander.Aside(across, tilt):F1} mm across the tube: drill each wall from outside."));
    }
}
