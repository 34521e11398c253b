using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>The strips a rocket needs: one for each group of holes, for each set of fins, and for each shoulder.</summary>
public static class WrapTemplates
{
    // Paper beyond the outermost holes; rows farther apart than the gap get a strip each; an edge nearer than the reach is laid against. m.
    private const double Margin = 0.015, Gap = 0.080, Reach = 0.100;

    /// <summary>All of them, nose to tail.</summary>
    /// <param name="vehicle">The airframe.</param>
    /// <param name="schedule">Its holes.</param>
    /// <param name="paper">Thickness of the paper, m.</param>
    public static ValueList<WrapTemplate> Of(Vehicle vehicle, HoleSchedule schedule, double paper = WrapTemplate.OfficePaper)
    {
        List<WrapTemplate> all = [];
        for (var part = 0; part < vehicle.Parts.Count; part++)
        {
            foreach (var group in Groups(schedule.On(part).Where(h => double.IsFinite(h.Clock)).OrderBy(h => h.Station)))
                all.Add(Holes(vehicle, part, group, paper));
            all.AddRange(vehicle.Parts[part].Fittings.OfType<FinPlates>().Select(f => Fins(vehicle, part, f, paper)));
        }

        all.AddRange(vehicle.Joints.Where(j => j.Engagement > 0).Select(j => Shoulder(vehicle, j, schedule, paper)));
        return all.OrderBy(t => t.Front).ToValueList();
    }

    private static IEnumerable<List<Hole>> Groups(IEnumerable<Hole> holes)
    {
        List<Hole> group = [];
        foreach (var hole in holes)
        {
            if (group.Count > 0 && hole.Station - group[^1].Station > Gap)
            {
                yield return group;
                group = [];
            }

            group.Add(hole);
        }

        if (group.Count > 0) yield return group;
    }

    private static WrapTemplate Holes(Vehicle vehicle, int index, List<Hole> holes, double paper)
    {
        var part = vehicle.Parts[index];
        double front = Math.Max(holes[0].Station - Margin, part.Front), rear = Math.Min(holes[^1].Station + Margin, part.Rear);
        bool ahead = holes[0].Station - part.Front <= Reach, behind = part.Rear - holes[^1].Station <= Reach;
        if (ahead) front = part.Front;
        if (behind) rear = part.Rear;
        var register = ahead ? EdgeOf(part, index, true) : behind ? EdgeOf(part, index, false) : holes[0].Edge;
        var far = register.Forward ? front - register.Station : register.Station - rear;
        var diameter = holes.Max(h => h.SurfaceDiameter);
        var name = $"{part.Name}: {string.Join(", ", holes.Select(h => h.Row).Distinct())}";
        WrapTemplate strip = new(name, WrapKind.Holes, index, part.Name, diameter, paper, front, rear, register, Math.Max(far, 0), [], Edges(vehicle, index, front, rear), []);
        return strip with { Lines = Lines(vehicle, index, strip), Marks = holes.Select(h => new WrapMark(h, strip.Along(h.Clock), h.Station - front)).ToValueList() };
    }

    private static WrapTemplate Fins(Vehicle vehicle, int index, FinPlates plates, double paper)
    {
        var part = vehicle.Parts[index];
        var fins = plates.Placed(part.Front);
        double root = plates.Length, front = Math.Max(fins.RootLeadingEdge - Margin, part.Front), rear = part.Rear;
        WrapTemplate strip = new(plates.Name, WrapKind.Fins, index, part.Name, 2 * fins.BodyRadius, paper, front, rear, EdgeOf(part, index, false), 0, [], [], []);
        List<WrapEdge> edges =
        [
            new("root leading edge", fins.RootLeadingEdge - front, fins.RootLeadingEdge),
            new("root trailing edge", fins.RootLeadingEdge + root - front, fins.RootLeadingEdge + root),
        ];
        if (plates.TabLength > 0)
        {
            var tab = fins.RootLeadingEdge + plates.TabFront;
            edges.Add(new("front of the slot", tab - front, tab));
            edges.Add(new("rear of the slot", tab + plates.TabLength - front, tab + plates.TabLength));
        }

        edges.AddRange(Edges(vehicle, index, front, rear));
        var half = Math.Asin(Math.Min(fins.Thickness / (2 * fins.BodyRadius), 1));
        List<WrapLine> lines = [.. Lines(vehicle, index, strip).Where(l => l.Kind != WrapLineKind.Fin)];
        for (var i = 0; i < fins.Count; i++)
        {
            var clock = fins.FirstClock + (2 * Math.PI * i / fins.Count);
            lines.Add(Line($"fin {i + 1}", WrapLineKind.Fin, clock, strip));
            lines.Add(Line($"fin {i + 1}, left face", WrapLineKind.FinFace, clock - half, strip));
            lines.Add(Line($"fin {i + 1}, right face", WrapLineKind.FinFace, clock + half, strip));
        }

        return strip with { Lines = lines.ToValueList(), Edges = edges.OrderBy(e => e.Down).ToValueList() };
    }

    private static WrapTemplate Shoulder(Vehicle vehicle, Joint joint, HoleSchedule schedule, double paper)
    {
        var giver = joint.ShoulderAhead ? joint.Forward : joint.Aft;
        var part = vehicle.Parts[giver];
        double front = joint.ShoulderAhead ? joint.Break : joint.Break - joint.Engagement, rear = front + joint.Engagement;
        TubeEdge step = new(giver, !joint.ShoulderAhead, $"{(joint.ShoulderAhead ? "aft" : "forward")} step of {part.Name}", joint.Break);
        var into = vehicle.Parts[joint.ShoulderAhead ? joint.Aft : joint.Forward].Name;
        WrapTemplate strip = new(
            $"{part.Name}: what slides into {into}", WrapKind.Shoulder, giver, part.Name, joint.ShoulderDiameter, paper, front, rear, step, 0, [], [], []);
        var marks = schedule.Holes.Where(h => h.Station > front && h.Station < rear && double.IsFinite(h.Clock) && h.Cuts.Skip(1).Any(c => c.Part == giver))
            .Select(h => new WrapMark(h, strip.Along(h.Clock), h.Station - front));
        return strip with
        {
            Lines = [Line("scribe line", WrapLineKind.Scribe, 0, strip), .. Enumerable.Range(1, 3).Select(q => Line($"{90 * q}°", WrapLineKind.Division, q * Math.PI / 2, strip))],
            Edges = Edges(vehicle, giver, front, rear),
            Marks = marks.ToValueList(),
        };
    }

    private static ValueList<WrapLine> Lines(Vehicle vehicle, int part, WrapTemplate strip)
    {
        List<WrapLine> lines = [Line("scribe line", WrapLineKind.Scribe, 0, strip)];
        foreach (var clock in RailClocks(vehicle).Where(c => c != 0)) lines.Add(Line("rail", WrapLineKind.Rail, clock, strip));
        foreach (var fins in vehicle.Parts[part].Fittings.OfType<FinPlates>())
        {
            for (var i = 0; i < fins.Fins.Count; i++) lines.Add(Line($"fin {i + 1}", WrapLineKind.Fin, fins.Fins.FirstClock + (2 * Math.PI * i / fins.Fins.Count), strip));
        }

        return lines.ToValueList();
    }

    /// <summary>Clock angles at which rail guides stand, rad.</summary>
    internal static IEnumerable<double> RailClocks(Vehicle vehicle) =>
        vehicle.Parts.SelectMany(p => p.Fittings.OfType<RailGuide>()).Select(g => WrapTemplate.Turn(g.Clock)).Distinct();

    // Ends of what slides in from either side, and what is bonded inside: no place for a drill.
    private static ValueList<WrapEdge> Edges(Vehicle vehicle, int index, double front, double rear)
    {
        List<(string Name, double Station)> found = [];
        foreach (var joint in vehicle.Joints.Where(j => j.Engagement > 0))
        {
            var giver = vehicle.Parts[joint.ShoulderAhead ? joint.Forward : joint.Aft];
            if (joint.Forward != index && joint.Aft != index) continue;
            if (giver != vehicle.Parts[index]) found.Add(($"end of {giver.Name} inside", joint.ShoulderAhead ? joint.Break + joint.Engagement : joint.Break - joint.Engagement));
        }

        var part = vehicle.Parts[index];
        foreach (var fitting in part.Fittings.Where(f => f is BulkPlate or CentringRing))
        {
            found.Add(($"front of {fitting.Name}", part.Front + fitting.Offset));
            found.Add(($"rear of {fitting.Name}", part.Front + fitting.Offset + fitting.Length));
        }

        return found.Where(e => e.Station > front && e.Station < rear).OrderBy(e => e.Station).Select(e => new WrapEdge(e.Name, e.Station - front, e.Station)).ToValueList();
    }

    private static TubeEdge EdgeOf(Part part, int index, bool forward) =>
        new(index, forward, $"{(forward ? "forward" : "aft")} edge of {part.Name}", forward ? part.Front : part.Rear);

    private static WrapLine Line(string name, WrapLineKind kind, double clock, WrapTemplate strip) => new(name, kind, strip.Along(clock), WrapTemplate.Turn(clock));
}
