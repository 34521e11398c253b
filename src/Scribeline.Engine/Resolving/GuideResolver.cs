using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Rail guides.</summary>
internal static class GuideResolver
{
    /// <summary>Usual guides by rail: height, width, m, and mass with screw, kg. Common practice.</summary>
    private static readonly Dictionary<string, (double Height, double Width, double Mass)> Usual = new()
    {
        ["1010"] = (0.011, 0.010, 0.004),
        ["1515"] = (0.015, 0.016, 0.010),
    };

    public static IEnumerable<RailGuide> Guides(RailGuideDesign d, PartDesign design, Part part, ResolvingNotes notes)
    {
        bool known = Usual.TryGetValue(d.Size.Trim(), out var usual), complete = d is { Height: not null, Width: not null } && (d.Mass ?? design.Mass) is not null;
        if (!known && !complete)
            notes.Problem(d.At, $"The guides for rail {d.Size} need height, width and mass.", $"Type them; usual figures are known for rails {string.Join(" and ", Usual.Keys)}.");
        else if (!complete)
            notes.Assume(d.At, $"Guides for rail {d.Size} are taken as {1000 * usual.Height:0} mm high, {1000 * usual.Width:0} mm wide and {1000 * usual.Mass:0} g each where not typed.");
        double aft = part.RearReach - part.Front;
        foreach (Measure<UnitsNet.Length> place in d.FromAftEnd)
        {
            double offset = aft - notes.Si(place);
            yield return new(
                $"Guide of {part.Name}", offset, notes.Si(d.Mass, usual.Mass), notes.Si(d.Height, usual.Height), notes.Si(d.Width, usual.Width),
                Radius(part, offset), notes.Si(d.Clock, 0), d.Faired);
        }
    }

    /// <summary>Outer radius of the part where a guide sits; that of its widest end where the guide lies off it.</summary>
    private static double Radius(Part part, double offset)
    {
        BodySection? under = part.Outside.FirstOrDefault(s => part.Front + offset >= s.Front && part.Front + offset <= s.Front + s.Length);
        return under?.RadiusAt(part.Front + offset) ?? part.Outside.Select(s => Math.Max(s.FrontDiameter, s.RearDiameter) / 2).DefaultIfEmpty(0).Max();
    }
}
