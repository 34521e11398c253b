using static Scribeline.Engine.Airframe.Findings;

namespace Scribeline.Engine.Airframe;

/// <summary>Neighbours that do not go together.</summary>
internal static class JointProblems
{
    public static void Look(Vehicle vehicle, Joint joint, string at, Findings found)
    {
        (Part ahead, Part behind) = (vehicle.Parts[joint.Forward], vehicle.Parts[joint.Aft]);
        Part giver = joint.ShoulderAhead ? ahead : behind, taker = joint.ShoulderAhead ? behind : ahead;
        if (!found.Require(
            joint.Engagement > 0, at, $"Nothing of {ahead.Name} or {behind.Name} slides into the other.", $"Give one of them a shoulder, or put a coupler between them."))
        {
            return;
        }

        if (!found.Require(joint.BoreDiameter > 0, at, $"{taker.Name} is not hollow where {giver.Name} should slide in.")) return;
        found.Require(
            joint.Play >= 0, at,
            $"{giver.Name} ({Mm(joint.ShoulderDiameter)}) is {Mm(-joint.Play)} too wide for {taker.Name} ({Mm(joint.BoreDiameter)}).", $"Measure both, then sand the smaller one's shoulder.");
        double loose = VehicleProblems.LoosePlay(joint.BoreDiameter);
        found.Require(
            joint.Play <= loose, at,
            $"{giver.Name} has {Mm(joint.Play)} of play in {taker.Name}; a slip fit has 0.1 to 0.3 mm, and more than {Mm(loose)} is loose.");
        double reach = taker.RearReach - taker.FrontReach;
        found.Require(
            joint.Engagement <= reach, at, $"{giver.Name} reaches {Mm(joint.Engagement)} into {taker.Name}, which is only {Mm(reach)} long.");
        Ends(vehicle, joint, at, found);
        double step = Diameter(behind, true) - Diameter(ahead, false);
        found.Require(
            !(Math.Abs(step) > 0.001), at,
            $"The outside steps by {Mm(step)} from {ahead.Name} to {behind.Name}.", $"Check both diameters, or put a transition between them.");
    }

    /// <summary>What slides into the front and into the rear of one part must not meet inside it.</summary>
    private static void Ends(Vehicle vehicle, Joint joint, string at, Findings found)
    {
        if (joint.Aft + 1 >= vehicle.Parts.Count) return;
        Part ahead = vehicle.Parts[joint.Forward], middle = vehicle.Parts[joint.Aft], behind = vehicle.Parts[joint.Aft + 1];
        if (middle is not Tube) return;
        double overlap = ahead.RearReach - behind.FrontReach;
        found.Require(overlap <= 0, at, $"{ahead.Name} and {behind.Name} meet inside {middle.Name}: they overlap by {Mm(overlap)}.");
    }

    /// <summary>Outside diameter at an end; NaN where nothing of the part shows.</summary>
    private static double Diameter(Part part, bool front) =>
        part.Outside is not { Count: > 0 } outside ? double.NaN : front ? outside[0].FrontDiameter : outside[^1].RearDiameter;
}
