using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>Every hole of the rocket: through its walls, and in its plates and rings.</summary>
/// <param name="Holes">Towards the axis, nose to tail, row by row.</param>
/// <param name="PlateHoles">Along the axis, plate by plate.</param>
/// <param name="Missing">What to type so that every hole is known.</param>
/// <param name="Assumed">Common practice that stands in for what was left out, in sentences.</param>
public sealed record HoleSchedule(ValueList<Hole> Holes, ValueList<PlateHole> PlateHoles, ValueList<string> Missing, ValueList<string> Assumed)
{
    /// <summary>Rows of holes through walls, in order.</summary>
    public IEnumerable<IGrouping<string, Hole>> Rows => Holes.GroupBy(h => h.Row);

    /// <summary>Holes through the outside of a part.</summary>
    /// <param name="part">Index of the part.</param>
    public IEnumerable<Hole> On(int part) => Holes.Where(h => h.Cuts[0].Part == part);
}
