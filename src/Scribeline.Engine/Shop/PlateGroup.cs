using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// Things that are placed together on a plate, such as rods, evenly repeated round its middle. Its things are given as they lie when the
/// group stands at the middle with its own x outwards.
/// </summary>
/// <param name="Name">Unique on the plate.</param>
/// <param name="Count">Copies round the middle, 1 or more.</param>
/// <param name="FromCentre">Middle of the plate to its own middle, m; null where the program proposes it.</param>
/// <param name="Clock">Of the first copy, rad; null where the program proposes it.</param>
/// <param name="Things">Of one copy.</param>
public sealed record PlateGroup(string Name, int Count, double? FromCentre, double? Clock, ValueList<PlateThing> Things)
{
    /// <summary>Whether the builder placed it.</summary>
    public bool Fixed => FromCentre is not null && Clock is not null;

    /// <summary>Its things in place.</summary>
    /// <param name="fromCentre">m.</param>
    /// <param name="clock">rad.</param>
    public IEnumerable<PlateThing> At(double fromCentre, double clock)
    {
        for (var i = 0; i < Count; i++)
        {
            var (sin, cos) = Math.SinCos(clock + (2 * Math.PI * i / Count));
            var number = Count > 1 ? $" {i + 1}" : "";
            foreach (var thing in Things)
            {
                double x = fromCentre + thing.Outline.X, y = thing.Outline.Y;
                yield return thing with
                {
                    Name = thing.Name.Replace("#", number, StringComparison.Ordinal),
                    Owner = Name + number,
                    Outline = thing.Outline.At((x * cos) - (y * sin), (x * sin) + (y * cos), Math.Atan2(sin, cos)),
                    Fixed = Fixed,
                };
            }
        }
    }
}

/// <summary>A place the program proposes for a group.</summary>
/// <param name="Group">Its name.</param>
/// <param name="FromCentre">m.</param>
/// <param name="Clock">rad.</param>
public sealed record PlateProposal(string Group, double FromCentre, double Clock);

/// <summary>A plate before what the builder left open has been placed.</summary>
/// <param name="Plate">Without things.</param>
/// <param name="Groups">In the order of the file.</param>
public sealed record PlateDraft(PlateLayout Plate, ValueList<PlateGroup> Groups)
{
    /// <summary>The same with a group placed.</summary>
    /// <param name="place">Where it goes.</param>
    public PlateDraft With(PlateProposal place) =>
        this with { Groups = Groups.Select(g => g.Name == place.Group ? g with { FromCentre = place.FromCentre, Clock = place.Clock } : g).ToValueList() };
}
