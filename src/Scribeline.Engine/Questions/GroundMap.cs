using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Questions;

/// <summary>A map of the ground about the pad, north up: what a face draws of landings. The pad is at the origin.</summary>
/// <param name="Title">In plain words, unique within the answer.</param>
/// <param name="Field">Outline of the field; empty where none is known.</param>
/// <param name="Kept">Areas to keep clear of.</param>
/// <param name="Clouds">Landings, the most important first.</param>
/// <param name="Wind">Wind at 10 m: speed, m/s, and where it comes from, rad clockwise from north.</param>
/// <param name="Plane">Where the pad is, for export; null where not known.</param>
public sealed record GroundMap(
    string Title, ValueList<LandingPoint> Field, ValueList<KeptArea> Kept, ValueList<LandingCloud> Clouds, (double Speed, double From) Wind, LandingPlane? Plane)
{
    /// <summary>Corners of what must be seen: south-west and north-east, m.</summary>
    public (LandingPoint Least, LandingPoint Most) Extent
    {
        get
        {
            var seen = Field.Concat(Kept.SelectMany(k => k.Area.Corners)).Concat(Clouds.SelectMany(c => c.Ellipses.SelectMany(e => e.Outline(16)))).Append(new(0, 0)).ToArray();
            return (new(seen.Min(p => p.East), seen.Min(p => p.North)), new(seen.Max(p => p.East), seen.Max(p => p.North)));
        }
    }
}

/// <summary>Where one body comes down.</summary>
/// <param name="Name">In plain words, unique within the map.</param>
/// <param name="Points">Landings that are drawn; not more than can be seen.</param>
/// <param name="Ellipses">By content, the smaller first; empty where nothing scatters.</param>
public sealed record LandingCloud(string Name, ValueList<LandingPoint> Points, ValueList<LandingEllipse> Ellipses);
