using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Shop;

/// <summary>
/// A hole along the axis through a plate or ring. Looked at from the forward end, x points to the scribe line and clock angles run
/// counter-clockwise; the aft face is the mirror image.
/// </summary>
/// <param name="Mark">Letter of its plate and number in it, unique in the rocket.</param>
/// <param name="Plate">Name of the plate or ring.</param>
/// <param name="Name">What it is for.</param>
/// <param name="FromCentre">Middle of the plate to middle of the hole, m.</param>
/// <param name="Clock">0 to 2π rad.</param>
/// <param name="Diameter">m.</param>
/// <param name="Drill">null where none of that size is sold.</param>
/// <param name="Depth">Thickness of the plate, m.</param>
public sealed record PlateHole(string Mark, string Plate, string Name, double FromCentre, double Clock, double Diameter, Drill? Drill, double Depth)
{
    /// <summary>Towards the scribe line, m.</summary>
    public double X => FromCentre * Math.Cos(Clock);

    /// <summary>Towards clock angle 90°, m.</summary>
    public double Y => FromCentre * Math.Sin(Clock);
}
