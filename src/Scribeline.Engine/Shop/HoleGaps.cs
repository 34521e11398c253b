using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>How far a hole is from something.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="From">The other thing, in words.</param>
/// <param name="Distance">Between middles for another hole, from the middle to an edge, or free between rim and what it must keep off, m.</param>
/// <param name="Diameters">The same in diameters of the hole, where that is what counts.</param>
public sealed record HoleGap(Hole Hole, string From, double Distance, double Diameters);

/// <summary>Distances of the holes of a schedule from one another, from edges, bonds, fins and the rail.</summary>
/// <param name="vehicle">The airframe.</param>
/// <param name="schedule">Its holes; those without clock angle or diameter are left out.</param>
public sealed class HoleGaps(Vehicle vehicle, HoleSchedule schedule)
{
    private readonly Hole[] holes = [.. schedule.Holes.Where(h => double.IsFinite(h.Clock))];

    /// <summary>For each hole the nearest other hole through the same wall, in diameters of the wider one.</summary>
    public ValueList<HoleGap> Neighbours() => holes.Select(h =>
        (from other in holes
         where other != h
         from cut in h.Cuts
         let match = other.Cuts.FirstOrDefault(c => c.Part == cut.Part)
         where match is not null && double.IsFinite(cut.Diameter) && double.IsFinite(match.Diameter)
         let distance = Apart(h, other)
         select new HoleGap(h, $"hole {other.Mark}", distance, distance / Math.Max(cut.Diameter, match.Diameter))).MinBy(g => g.Diameters))
        .OfType<HoleGap>().ToValueList();

    /// <summary>For each hole the nearest edge of a wall it goes through, in diameters there; 0 where a fastener finds no second wall.</summary>
    public ValueList<HoleGap> Edges() => holes.SelectMany(h => h.Cuts.Where(c => double.IsFinite(c.Diameter)).SelectMany(c => EdgesOf(vehicle.Parts[c.Part]).Select(e =>
            new HoleGap(h, $"{e.Name} of {c.PartName}", Math.Abs(h.Station - e.Station), Math.Abs(h.Station - e.Station) / c.Diameter)))
            .Concat(h.Joint >= 0 && h.Cuts.Count < 2 ? [new HoleGap(h, "a second wall: it goes through one only", 0, 0)] : []))
        .GroupBy(g => g.Hole).Select(g => g.MinBy(x => x.Diameters)!).ToValueList();

    /// <summary>For each hole the nearest bonded plate, ring or fin root: free between the rims, m; below 0 it is drilled into it.</summary>
    public ValueList<HoleGap> Bonds() => holes.Select(h => Inside(h).Concat(Roots(h)).MinBy(g => g.Distance)).OfType<HoleGap>().ToValueList();

    /// <summary>For each hole but those of the guides: free between it, or the head in it, and what runs along the rail, m.</summary>
    public ValueList<HoleGap> Rail()
    {
        var guides = vehicle.Parts.SelectMany(p => p.Fittings.OfType<RailGuide>()).ToArray();
        return holes.Where(h => h.Kind != HoleKind.RailGuide).SelectMany(h => guides.Select(g => new HoleGap(
            h, "rail line", (Turned(h.Clock, g.Clock) * h.SurfaceDiameter / 2) - (g.Width / 2) - (Math.Max(h.HeadDiameter, h.OpenDiameter) / 2), double.NaN)))
            .GroupBy(g => g.Hole).Select(g => g.MinBy(x => x.Distance)!).ToValueList();
    }

    /// <summary>Holes for anything but pins that go through both walls of a joint that must let go.</summary>
    public ValueList<Hole> Ties() => holes.Where(h => h.Kind is not (HoleKind.Pin or HoleKind.StaticPort or HoleKind.Vent or HoleKind.Switch)
        && vehicle.Joints.Any(j => j.Separable && h.Cuts.Any(c => c.Part == j.Forward) && h.Cuts.Any(c => c.Part == j.Aft))).ToValueList();

    // On the outside of the wall, where both are drilled.
    private static double Apart(Hole a, Hole b)
    {
        double round = Turned(a.Clock, b.Clock) * Math.Min(a.SurfaceDiameter, b.SurfaceDiameter) / 2, along = a.Station - b.Station;
        return Math.Sqrt((round * round) + (along * along));
    }

    private static double Turned(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 2 * Math.PI));

    private static IEnumerable<(string Name, double Station)> EdgesOf(Part part)
    {
        if (part is not NoseCone) yield return ("forward end", part.FrontReach);
        yield return ("aft end", part.RearReach);
        if (part is not Coupler { BandLength: > 0 }) yield break;
        yield return ("forward edge of the band", part.Front);
        yield return ("aft edge of the band", part.Rear);
    }

    private IEnumerable<HoleGap> Inside(Hole hole) =>
        from part in vehicle.Parts
        from fitting in part.Fittings
        where fitting is BulkPlate or CentringRing
        let front = part.Front + fitting.Offset
        let free = Math.Max(front - hole.Station, hole.Station - front - fitting.Length) - (hole.Pilot / 2)
        where double.IsFinite(free)
        select new HoleGap(hole, fitting.Name, free, double.NaN);

    private IEnumerable<HoleGap> Roots(Hole hole) =>
        from part in vehicle.Parts
        from plates in part.Fittings.OfType<FinPlates>()
        let fins = plates.Placed(part.Front)
        from i in Enumerable.Range(0, fins.Count)
        let round = (Turned(hole.Clock, fins.FirstClock + (2 * Math.PI * i / fins.Count)) * hole.SurfaceDiameter / 2) - (fins.Thickness / 2) - plates.Fillet
        let along = Math.Max(fins.RootLeadingEdge - hole.Station, hole.Station - fins.RootLeadingEdge - plates.Length)
        let rim = Math.Max(hole.OpenDiameter, hole.HeadDiameter) / 2
        where double.IsFinite(rim)
        select new HoleGap(hole, $"root of fin {i + 1}", Math.Max(round, along) - rim, double.NaN);
}
