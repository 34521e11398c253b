using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>The holes of plates, read off their layouts.</summary>
public static class PlateHoles
{
    /// <summary>Plate by plate, lettered on after the rows of the walls.</summary>
    /// <param name="plates">With everything in place.</param>
    /// <param name="rows">How many letters the holes of the walls take.</param>
    public static ValueList<PlateHole> Of(IEnumerable<PlateLayout> plates, int rows) => plates
        .Select(p => (Plate: p, Holes: p.Things.Where(t => t is { Face: PlateFace.Through, Outline: PlateCircle }).ToArray())).Where(p => p.Holes.Length > 0)
        .SelectMany((p, i) => p.Holes.Select((hole, n) => Of(p.Plate, hole, (PlateCircle)hole.Outline, $"{HoleMarks.Letters(rows + i)}{n + 1}"))).ToValueList();

    private static PlateHole Of(PlateLayout plate, PlateThing thing, PlateCircle circle, string mark) => new(
        mark, plate.Name, thing.Name, Math.Sqrt((circle.X * circle.X) + (circle.Y * circle.Y)), WrapTemplate.Turn(Math.Atan2(circle.Y, circle.X)), 2 * circle.Radius,
        HoleMarks.Drill(2 * circle.Radius), plate.Thickness);
}
