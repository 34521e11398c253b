using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions between joints and parts.</summary>
internal static class JointChecks
{
    internal static void In(RocketDesign design, DesignNames names, List<Problem> problems)
    {
        HashSet<int> joined = [];
        foreach (var joint in design.Joints)
        {
            Held(joint, problems);
            if (joint.Between is not [var ahead, var behind])
            {
                problems.Add(new($"{joint.At}.between", $"A joint is between two parts, not {joint.Between.Count}.", "Write between: [the part ahead, the part behind]."));
                continue;
            }

            names.Need(ahead, names.Parts, "part", $"{joint.At}.between[0]", problems);
            names.Need(behind, names.Parts, "part", $"{joint.At}.between[1]", problems);
            if (!names.Whole) continue;
            var (front, back) = (Index(names.Parts, ahead), Index(names.Parts, behind));
            if (front < 0 || back < 0) continue;
            if (back != front + 1) problems.Add(new($"{joint.At}.between", Order(ahead, behind, front, back), "Joints name neighbours, nose to tail, in the order of parts."));
            else if (!joined.Add(front)) problems.Add(new($"{joint.At}.between", $"'{ahead}' and '{behind}' are joined twice.", "Keep one of the joints."));
        }

        if (!names.Whole || design.Joints.Any(j => j.Between.Count != 2)) return;
        for (var i = 0; i + 1 < design.Parts.Count; i++)
        {
            if (!joined.Contains(i) && !Misnamed(design, names.Parts[i], names.Parts[i + 1], names.Parts))
                problems.Add(new("joints", $"Nothing says how '{names.Parts[i]}' meets '{names.Parts[i + 1]}'.", $"Add {{between: [{names.Parts[i]}, {names.Parts[i + 1]}], kind: bonded}} or another kind."));
        }
    }

    // A joint with one wrong name probably is the one that seems missing: one problem is enough.
    private static bool Misnamed(RocketDesign design, string ahead, string behind, IReadOnlyList<string> parts) => design.Joints.Any(j =>
        (j.Between[0] == ahead && !parts.Contains(j.Between[1])) || (j.Between[1] == behind && !parts.Contains(j.Between[0]))
        || (j.Between[0] == behind && j.Between[1] == ahead)
        || (j.Between[0] == j.Between[1] && (j.Between[0] == ahead || j.Between[0] == behind)));

    private static int Index(IReadOnlyList<string> parts, string name)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            if (parts[i] == name) return i;
        }

        return -1;
    }

    private static string Order(string ahead, string behind, int front, int back) =>
        front == back ? $"'{ahead}' cannot be joined to itself."
        : back < front ? $"'{behind}' lies ahead of '{ahead}'."
        : $"'{ahead}' and '{behind}' are not neighbours.";

    private static void Held(JointDesign joint, List<Problem> problems)
    {
        if (joint.Kind == JointWord.Pinned && joint.Pins is null) problems.Add(new(joint.At, "A pinned joint needs its pins.", "Add pins: {screw: \"#2-56 nylon\", count: 2}"));
        if (joint.Kind == JointWord.Screwed && joint.Screws is null) problems.Add(new(joint.At, "A screwed joint needs its screws.", "Add screws: {thread: 6-32, count: 3}"));
        if (joint.Kind != JointWord.Pinned && joint.Pins is not null) problems.Add(new($"{joint.At}.pins", $"A {Word(joint.Kind)} joint has no pins.", "Remove them, or write kind: pinned"));
        if (joint.Kind != JointWord.Screwed && joint.Screws is not null) problems.Add(new($"{joint.At}.screws", $"A {Word(joint.Kind)} joint has no screws.", "Remove them, or write kind: screwed"));
        if (joint.Kind != JointWord.Bonded && joint.Bond is not null) problems.Add(new($"{joint.At}.bond", $"A {Word(joint.Kind)} joint has no bond.", "Remove it, or write kind: bonded"));
        if (joint.Pins is { } pins) Row(pins.Count, pins.Clock, pins.FromEdge.Count, pins.At, "pins", problems);
        if (joint.Screws is { } screws) Row(screws.Count, screws.Clock, screws.FromEdge.Count, screws.At, "screws", problems);
    }

    private static void Row(int count, ValueList<ClockPattern> clock, int edges, string at, string what, List<Problem> problems)
    {
        PartChecks.Clocks(count, clock, at, what, problems);
        if (edges > 1 && edges != count) problems.Add(new($"{at}.from edge", $"{edges} distances are given for {count} {what}.", "Give one for all, or one each."));
    }

    private static string Word(JointWord kind) => kind.ToString().ToLowerInvariant();
}
