using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Joints, put in the order of the parts.</summary>
internal static class JointResolver
{
    /// <summary>Kind of each joint nose to tail, and the design's joint behind it.</summary>
    public static (List<JointKind> Kinds, List<JointDesign> Order) Kinds(RocketDesign design, ResolvingNotes notes)
    {
        List<JointDesign> order = [], left = [.. design.Joints];
        for (int i = 0; i + 1 < design.Parts.Count; i++)
        {
            string ahead = design.Parts[i].Name, behind = design.Parts[i + 1].Name;
            JointDesign? joint = left.Find(j => j.Between is [var a, var b] && (Same(a, ahead) && Same(b, behind) || Same(a, behind) && Same(b, ahead)));
            if (joint is null)
            {
                notes.Problem("joints", $"Nothing says how {ahead} meets {behind}.", $"Add a joint between: [{ahead}, {behind}].");
                continue;
            }

            left.Remove(joint);
            order.Add(joint);
        }

        foreach (JointDesign stray in left)
        {
            notes.Problem(
                stray.At, $"{(stray.Between.Count == 0 ? "A joint" : string.Join(" and ", stray.Between))} cannot be joined here.",
                "A joint is between a part and the next one aft, once.");
        }

        return ([.. order.Select(j => Kind(j.Kind))], order);
    }

    /// <summary>Joints with a play typed in place of the one their diameters give.</summary>
    public static ValueList<Joint> Fitted(ValueList<Joint> joints, List<JointDesign> order, ResolvingNotes notes) =>
        joints.Select((joint, i) => order[i].Fit?.Play is { } play ? joint with { BoreDiameter = joint.ShoulderDiameter + notes.Si(play) } : joint).ToValueList();

    /// <summary>A problem of a joint, placed where the design has that joint.</summary>
    public static Problem Located(Problem problem, List<JointDesign> order)
    {
        for (int i = 0; i < order.Count; i++)
        {
            if (problem.At == $"joints[{i}]" && order[i].At.Length > 0) return problem with { At = order[i].At };
        }

        return problem;
    }

    /// <summary>The design's joint behind a joint of the vehicle; null if it cannot be found.</summary>
    public static JointDesign? Of(RocketDesign design, Vehicle vehicle, Joint joint)
    {
        string ahead = vehicle.Parts[joint.Forward].Name, behind = vehicle.Parts[joint.Aft].Name;
        return design.Joints.FirstOrDefault(j => j.Between is [var a, var b] && ((Same(a, ahead) && Same(b, behind)) || (Same(a, behind) && Same(b, ahead))));
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static JointKind Kind(JointWord word) => word switch
    {
        JointWord.Bonded => JointKind.Bonded,
        JointWord.Screwed => JointKind.Screwed,
        JointWord.Pinned => JointKind.Pinned,
        _ => JointKind.Sliding,
    };
}
