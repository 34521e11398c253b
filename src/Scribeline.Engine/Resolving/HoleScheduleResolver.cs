using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Every hole of a design with its place, its drills and the walls it goes through; what is missing is named.</summary>
internal sealed class HoleScheduleResolver(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
{
    private readonly List<Row> rows = [];
    private readonly List<string> missing = [], assumed = [];

    /// <summary>The schedule without the holes of plates, whose places may still have to be proposed.</summary>
    public HoleSchedule Resolve()
    {
        foreach (var joint in vehicle.Joints) Joint(joint);
        for (var i = 0; i < design.Parts.Count; i++)
        {
            if (design.Parts[i] is AltimeterBayDesign bay) Bay(bay, i);
            foreach (var vents in design.Parts[i].Vents) Vents(vents, i);
            foreach (var guides in design.Parts[i].RailGuides) Guides(guides, i);
            if (design.Parts[i] is not TubeDesign tube) continue;
            foreach (var fins in tube.Fins.Where(f => f.FirstClock is null)) missing.Add($"{fins.At}.first clock: clock angle of the first fin of {tube.Name}");
        }

        // Rows of one kind on one part are told apart by a number.
        var inOrder = rows.GroupBy(r => r.Name).SelectMany(g => g.Select((r, n) => n == 0 ? r : r with { Name = $"{r.Name} ({n + 1})" })).Select(OnTheRocket)
            .Where(r => r.Places.Count > 0).OrderBy(r => r.Places.Min(p => p.Station));
        var holes = inOrder.SelectMany((row, i) => row.Places.Select((place, n) => Hole(row, place, $"{HoleMarks.Letters(i)}{n + 1}")));
        return new(holes.ToValueList(), [], missing.Distinct().ToValueList(), assumed.Distinct().ToValueList());
    }

    private sealed record Row(HoleKind Kind, string Name, int Joint, double Head, TubeEdge? Edge, Func<Wall, int, HoleCut> Cut, ValueList<(double Station, double Clock)> Places)
    {
        public double Fastener { get; init; }
    }

    private void Joint(Joint joint)
    {
        string ahead = vehicle.Parts[joint.Forward].Name, behind = vehicle.Parts[joint.Aft].Name;
        if (JointResolver.Of(design, vehicle, joint) is not { } typed) return;
        if (typed.Pins is { } pins)
        {
            var thread = Thread(pins.Screw.Thread, $"{pins.At}.screw");
            assumed.Add("Pins turn into a thread tapped in the inner wall; the outer wall is opened to the close fit (common practice).");
            Add(
                HoleKind.Pin, $"pins of {ahead} and {behind}", joint, pins.Count, pins.Clock, pins.FromEdge, pins.At, pins.Screw.Thread, ScrewHead.Find(pins.Screw.Thread)?.Pan ?? 0,
                (wall, depth) => depth == 0 ? Cut(wall, thread?.Close) : Cut(wall, thread?.Tap) with { Tap = pins.Screw.Thread.Designation });
        }

        if (typed.Screws is { } screws)
            Add(HoleKind.Screw, $"screws of {ahead} and {behind}", joint, screws.Count, screws.Clock, screws.FromEdge, screws.At, screws.Thread, Head(screws.Thread, screws.Head), Screwed(screws));
    }

    private Func<Wall, int, HoleCut> Screwed(ScrewsDesign screws)
    {
        var thread = Thread(screws.Thread, $"{screws.At}.thread");
        if (screws.Into is null) missing.Add($"{screws.At}.into: what the screws turn into, tapped wall or captive nut");
        if (screws.Head is null) assumed.Add("Screws have pan heads where no head is typed.");
        var head = ScrewHead.Find(screws.Thread);
        return (wall, depth) =>
        {
            if (depth > 0) return Held(wall, thread, screws.Thread, screws.Into);
            var outer = Cut(wall, thread?.Normal);
            return screws.Head == ScrewHeadWord.Flat && head is not null ? outer with { Countersink = head.Flat, CountersinkAngle = head.FlatAngle } : outer;
        };
    }

    private static HoleCut Held(Wall wall, string name, ScrewThread? thread, ThreadName typed, ScrewHoldWord? into) => into switch
    {
        ScrewHoldWord.TappedWall => Cut(wall, name, thread?.Tap) with { Tap = typed.Designation },
        ScrewHoldWord.CaptiveNut => Cut(wall, name, thread?.Normal) with { Remark = $"nut {typed.Designation} bonded behind it", Nut = typed.Designation },
        _ => Cut(wall, name, null),
    };

    private HoleCut Held(Wall wall, ScrewThread? thread, ThreadName typed, ScrewHoldWord? into) => Held(wall, vehicle.Parts[wall.Part].Name, thread, typed, into);

    private void Bay(AltimeterBayDesign bay, int index)
    {
        var part = vehicle.Parts[index];
        if (bay.Ports is { } ports)
        {
            if (ports.FirstClock is null) missing.Add($"{ports.At}.first clock: clock angle of the first port of {part.Name}");
            var station = HoleResolver.FromBand(part, ports.StationFromBandCentre, draw);
            var clocks = ports.FirstClock is { } first ? ClockAngles.Even(ports.Count, draw(first)) : Enumerable.Repeat(double.NaN, ports.Count);
            Open(HoleKind.StaticPort, $"ports of {part.Name}", ports.Diameter.Typed, clocks.Select(c => (station, c)));
        }

        foreach (var open in bay.Switch)
        {
            var name = open.Name ?? $"switch of {part.Name}";
            if (open.Clock is null) missing.Add($"{open.At}.clock: clock angle of {name}");
            Open(HoleKind.Switch, name, open.Diameter, [(HoleResolver.FromBand(part, open.StationFromBandCentre, draw), open.Clock is { } clock ? draw(clock) : double.NaN)]);
        }
    }

    private void Vents(HolesDesign vents, int index)
    {
        var part = vehicle.Parts[index];
        var name = $"vents of {part.Name}";
        var clocks = Clocks(vents.Clock, vents.Count, vents.At, name);
        var station = HoleResolver.StationOf(vents, part, draw);
        var edge = vents.FromForwardEnd is not null ? Edge(index, true) : vents.FromAftEnd is not null ? Edge(index, false) : null;
        Open(HoleKind.Vent, name, vents.Diameter.Typed, clocks.Select(c => (station, c)), edge);
    }

    private void Guides(RailGuideDesign guides, int index)
    {
        if (guides.Bonded) return;
        var part = vehicle.Parts[index];
        var name = $"rail guides of {part.Name}";
        if (guides.Screw is null) missing.Add($"{guides.At}.screw: thread of the screws of the {name}");
        else if (guides.Into is null) missing.Add($"{guides.At}.into: what those screws turn into, tapped wall or captive nut");
        var thread = guides.Screw is { } typed ? Thread(typed, $"{guides.At}.screw") : null;
        var clock = guides.Clock is { } c ? draw(c) : 0;
        var width = part.Fittings.OfType<RailGuide>().Select(g => g.Width).DefaultIfEmpty(0).Max();
        var places = guides.FromAftEnd.Select(m => (part.RearReach - draw(m), WrapTemplate.Turn(clock)));
        rows.Add(new(
            HoleKind.RailGuide, name, -1, width, Edge(index, false),
            (wall, _) => guides.Screw is { } screw ? Held(wall, thread, screw, guides.Into) : Cut(wall, null), places.ToValueList())
        { Fastener = guides.Screw?.MajorDiameter ?? 0 });
    }

    private void Open(HoleKind kind, string name, IMeasure? diameter, IEnumerable<(double Station, double Clock)> places, TubeEdge? edge = null)
    {
        var wide = diameter is null ? double.NaN : draw(diameter);
        var drill = diameter is not null ? HoleMarks.Drill(diameter.Si) : null;
        rows.Add(new(
            kind, name, -1, 0, edge, (wall, _) => new(wall.Part, vehicle.Parts[wall.Part].Name, wide, drill, wall.Thickness),
            places.Select(p => (p.Station, double.IsNaN(p.Clock) ? p.Clock : WrapTemplate.Turn(p.Clock))).ToValueList()));
    }

    private void Add(
        HoleKind kind, string name, Joint joint, int count, ValueList<ClockPattern> typed, ValueList<Measure<UnitsNet.Length>> edges, string at, ThreadName thread, double head,
        Func<Wall, int, HoleCut> cut)
    {
        var clocks = Clocks(typed, count, at, name);
        if (edges.Count == 0)
        {
            missing.Add($"{at}.from edge: from the edge of the outer tube to the middle of the {name}");
            return;
        }

        // The edge is that of the tube the other part slides into.
        var edge = joint.ShoulderAhead ? Edge(joint.Aft, true) : Edge(joint.Forward, false);
        var places = clocks.Select((clock, i) =>
        {
            var from = draw(edges[Math.Min(i, edges.Count - 1)]);
            return (joint.Break + (joint.ShoulderAhead ? from : -from), double.IsNaN(clock) ? clock : WrapTemplate.Turn(clock));
        });
        rows.Add(new(kind, name, joint.Forward, head, edge, cut, places.ToValueList()) { Fastener = thread.MajorDiameter });
    }

    private IReadOnlyList<double> Clocks(ValueList<ClockPattern> typed, int count, string at, string name)
    {
        var angles = ClockAngles.Of(typed, draw);
        if (angles.Count == count) return angles;
        missing.Add($"{at}.clock: clock angles of the {name}");
        return [.. Enumerable.Repeat(double.NaN, count)];
    }

    private Row OnTheRocket(Row row)
    {
        foreach (var place in row.Places.Where(p => Wall.At(vehicle, p.Station).Count == 0))
            missing.Add($"parts: a place of the {row.Name} on the rocket; {1000 * place.Station:F0} mm from the tip there is no wall");
        return row with { Places = row.Places.Where(p => Wall.At(vehicle, p.Station).Count > 0).ToValueList() };
    }

    private Hole Hole(Row row, (double Station, double Clock) place, string mark)
    {
        var walls = Wall.At(vehicle, place.Station);
        var edge = row.Edge ?? Nearest(walls[0].Part, place.Station);
        return new(
            mark, row.Kind, row.Name, row.Joint, place.Station, place.Clock, walls[0].OuterDiameter, walls.Select(row.Cut).ToValueList(), row.Head, edge,
            Math.Abs(place.Station - edge.Station))
        { Fastener = row.Fastener };
    }

    private TubeEdge Nearest(int part, double station) =>
        Edge(part, station - vehicle.Parts[part].Front <= vehicle.Parts[part].Rear - station);

    private TubeEdge Edge(int part, bool forward)
    {
        var p = vehicle.Parts[part];
        return new(part, forward, $"{(forward ? "forward" : "aft")} edge of {p.Name}", forward ? p.Front : p.Rear);
    }

    private HoleCut Cut(Wall wall, Drill? drill) => Cut(wall, vehicle.Parts[wall.Part].Name, drill);

    private static HoleCut Cut(Wall wall, string name, Drill? drill) => new(wall.Part, name, drill?.Diameter ?? double.NaN, drill, wall.Thickness);

    private ScrewThread? Thread(ThreadName typed, string at)
    {
        var found = ScrewThread.Find(typed);
        if (found?.Normal is null) missing.Add($"{at}: a thread of the table, such as #4-40 or M3; {typed.Designation} has no drills there");
        return found;
    }

    private static double Head(ThreadName thread, ScrewHeadWord? head) =>
        ScrewHead.Find(thread) is not { } found ? thread.MajorDiameter : head == ScrewHeadWord.Flat ? found.Flat : found.Pan;
}
