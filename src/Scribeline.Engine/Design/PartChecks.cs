using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions within single parts.</summary>
internal static class PartChecks
{
    internal static void In(RocketDesign design, DesignNames names, List<Problem> problems)
    {
        foreach (var part in design.Parts)
        {
            switch (part)
            {
                case NoseConeDesign nose:
                    Profile(nose.Shape, nose.Parameter, nose.At, problems);
                    Shell(nose.Wall, nose.Solid, nose.At, problems);
                    break;
                case TransitionDesign transition:
                    Profile(transition.Shape, transition.Parameter, transition.At, problems);
                    Shell(transition.Wall, transition.Solid, transition.At, problems);
                    break;
                case TubeDesign tube:
                    Either(tube.Inside, "inside", tube.Wall, "wall", tube.At, problems);
                    foreach (var fins in tube.Fins) FinChecks.In(fins, problems);
                    if (tube.MotorMount is { } mount) Mount(mount, problems);
                    break;
                case CouplerDesign coupler:
                    Either(coupler.Inside, "inside", coupler.Wall, "wall", coupler.At, problems);
                    break;
                case AltimeterBayDesign bay:
                    Either(bay.Coupler.Inside, "inside", bay.Coupler.Wall, "wall", bay.Coupler.At, problems);
                    if (bay.Band.FromAftEnd is null)
                        problems.Add(new(bay.Band.At, "The band's place is missing.", "Add from aft end: the length of coupler behind it."));
                    break;
            }

            foreach (var plate in part.Plates) Place(plate.Face is not null, plate.FromForwardEnd, plate.FromAftEnd, plate.At, "the plate", problems, "face: forward, face: aft, ");
            foreach (var mass in part.Masses) Place(false, mass.FromForwardEnd, mass.FromAftEnd, mass.At, $"'{mass.Name}'", problems);
            foreach (var vents in part.Vents)
            {
                Place(false, vents.FromForwardEnd, vents.FromAftEnd, vents.At, "the vents", problems);
                Clocks(vents.Count, vents.Clock, vents.At, "holes", problems);
            }
        }

        if (design.Parts is [NoseConeDesign, ..] or [] || !names.Whole) return;
        problems.Add(new(design.Parts[0].At, "The first part is not a nose cone.", "List the parts nose to tail."));
    }

    /// <summary>Exactly one of two must be typed.</summary>
    internal static void Either(object? one, string oneKey, object? other, string otherKey, string at, List<Problem> problems)
    {
        if (one is null == other is null)
            problems.Add(new(at, one is null ? $"'{oneKey}' or '{otherKey}' is missing." : $"'{oneKey}' and '{otherKey}' are both typed.", $"Type one of {oneKey} and {otherKey}."));
    }

    /// <summary>Clock angles must be as many as there are things.</summary>
    internal static void Clocks(int count, ValueList<ClockPattern> clock, string at, string what, List<Problem> problems)
    {
        if (clock.Count == 0) return;
        var angles = clock.Sum(c => c.Share == 0 ? 1 : c.Share);
        if (angles != count)
            problems.Add(new($"{at}.clock", $"{angles} clock angles are given for {count} {what}.", "Give one angle for each, or a rule such as thirds from 60 deg."));
    }

    private static void Place(bool face, object? forward, object? aft, string at, string what, List<Problem> problems, string also = "")
    {
        var given = (face ? 1 : 0) + (forward is null ? 0 : 1) + (aft is null ? 0 : 1);
        if (given != 1)
            problems.Add(new(at, given == 0 ? $"The place of {what} is missing." : $"The place of {what} is given twice.", $"Type one of {also}from forward end and from aft end."));
    }

    private static void Profile(ProfileWord shape, Measure<Ratio>? parameter, string at, List<Problem> problems)
    {
        (double Least, double Most, string Name)? range = shape switch
        {
            ProfileWord.SecantOgive => (1, 1000, "the radius over the tangent ogive's, 1 or more"),
            ProfileWord.Parabola => (0, 1, "K', 0 to 1"),
            ProfileWord.Power => (0, 1, "n, 0 to 1"),
            ProfileWord.Haack => (0, 2.0 / 3, "C, 0 to 2/3"),
            _ => null,
        };
        if (range is null && parameter is not null) problems.Add(new($"{at}.parameter", "This shape has no parameter.", "Remove it."));
        else if (range is { } missing && parameter is null) problems.Add(new(at, "The shape needs a parameter.", $"Add parameter: {missing.Name}."));
        else if (range is { } r && parameter is { } p && !(p.Si >= r.Least && p.Si <= r.Most + 0.001))
            problems.Add(new($"{at}.parameter", $"The parameter {p.Text} is outside the shape's range.", $"Type {r.Name}."));
    }

    private static void Shell(Measure<Length>? wall, bool solid, string at, List<Problem> problems)
    {
        if (solid == wall is not null)
            problems.Add(new(at, solid ? "It is solid and has a wall." : "The wall is missing.", "Type wall: its thickness, or solid: yes."));
    }

    private static void Mount(MotorMountDesign mount, List<Problem> problems)
    {
        Either(mount.Outside, "outside", mount.Wall, "wall", mount.At, problems);
        foreach (var ring in mount.Rings) Place(false, ring.FromForwardEnd, ring.FromAftEnd, ring.At, "the ring", problems);
    }
}
