using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Every plate and ring of a design with what sits on it.</summary>
internal sealed class PlateResolver(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
{
    private readonly List<string> missing = [];

    /// <summary>What to type so that every plate is known.</summary>
    public ValueList<string> Missing => missing.Distinct().ToValueList();

    /// <summary>Plates and rings, nose to tail.</summary>
    public ValueList<PlateLayout> Resolve() => vehicle.Parts.SelectMany((part, i) => part.Fittings.Select(f => f switch
    {
        BulkPlate p => Layout(i, p, p.Name, p.Diameter, 0),
        CentringRing r => Layout(i, r, r.Name, r.OuterDiameter, r.InnerDiameter),
        _ => null,
    })).OfType<PlateLayout>().OrderBy(p => p.Station).ToValueList();

    /// <summary>The holes of plates, lettered after those of the walls.</summary>
    /// <param name="layouts">The plates.</param>
    /// <param name="walls">Holes through walls.</param>
    public ValueList<PlateHole> Holes(ValueList<PlateLayout> layouts, HoleSchedule walls)
    {
        var first = walls.Rows.Count();
        return layouts.Where(l => l.Things.Any(t => t.Kind == PlateThingKind.Hole)).SelectMany((l, i) =>
            l.Things.Where(t => t is { Kind: PlateThingKind.Hole, Outline: PlateCircle }).Select((t, n) =>
            {
                var circle = (PlateCircle)t.Outline;
                var drill = Drill.Nearest(2 * circle.Radius);
                return new PlateHole(
                    $"{HoleScheduleResolver.Letters(first + i)}{n + 1}", l.Name, t.Name, Math.Sqrt((circle.X * circle.X) + (circle.Y * circle.Y)),
                    WrapTemplate.Turn(Math.Atan2(circle.Y, circle.X)), 2 * circle.Radius,
                    Math.Abs(drill.Diameter - (2 * circle.Radius)) <= HoleScheduleResolver.SameSize ? drill : null, l.Thickness);
            })).ToValueList();
    }

    private PlateLayout Layout(int index, Fitting fitting, string name, double outside, double inside)
    {
        var part = vehicle.Parts[index];
        double front = part.Front + fitting.Offset, rear = front + fitting.Length;
        double ahead = BoreOf(front - 1e-4, outside), behind = BoreOf(rear + 1e-4, outside);
        return new(name, index, outside, inside, fitting.Length, front, ahead, behind, Rods(index, fitting, front, rear));
    }

    // The smallest bore that the things on a face must pass: that of the tube round it there.
    private double BoreOf(double station, double otherwise) => vehicle.BoreAt(station) is { } radius and > 0 ? 2 * radius : otherwise;

    private ValueList<PlateThing> Rods(int index, Fitting fitting, double front, double rear)
    {
        if (fitting is not BulkPlate || design.Parts[index] is not AltimeterBayDesign { Rods: { } rods }) return [];
        var part = vehicle.Parts[index];
        var fitted = part.Fittings.OfType<Rods>().First();
        if (front < part.Front + fitted.Offset - 1e-6 || rear > part.Front + fitted.Offset + fitted.RodLength + 1e-6) return [];
        if (ScrewThread.Find(rods.Thread)?.Normal is not { } drill)
        {
            missing.Add($"{rods.At}.thread: a thread of the table, such as 1/4-20 or M6");
            return [];
        }

        var first = rods.FirstClock is { } clock ? draw(clock) : 0;
        return ClockAngles.Even(rods.Count, first).Select((c, i) => new PlateThing(
            $"rod {i + 1}", PlateThingKind.Hole, PlateFace.Through, new PlateCircle(fitted.CircleRadius * Math.Cos(c), fitted.CircleRadius * Math.Sin(c), drill.Diameter / 2),
            "rods", rods.Spacing is not null)).ToValueList();
    }
}
