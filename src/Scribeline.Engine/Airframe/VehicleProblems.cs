using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;
using static Scribeline.Engine.Airframe.Findings;

namespace Scribeline.Engine.Airframe;

/// <summary>What cannot be built, or does not go together, all at once. Paths follow the design file: parts and joints in order.</summary>
public static class VehicleProblems
{
    /// <summary>
    /// Greatest diametral play of a joint before it is called loose, m: 0.5 mm or a hundredth of the bore, whichever is more. Slip fits of
    /// 0.1 to 0.3 mm are common practice.
    /// </summary>
    /// <param name="bore">m.</param>
    public static double LoosePlay(double bore) => Math.Max(0.0005, bore / 100);

    /// <summary>Every problem of a vehicle's geometry and weighings; empty when it can be built.</summary>
    public static ValueList<Problem> In(Vehicle vehicle)
    {
        Findings found = new();
        if (!found.Require(vehicle.Parts.Count > 0, "parts", $"A rocket needs parts.")) return found.All;
        found.Require(vehicle.Parts[0] is NoseCone, "parts[0]", $"The first part is {vehicle.Parts[0].Name}, not a nose cone.", $"List parts from the nose down.");
        found.Require(
            vehicle.Joints.Count == vehicle.Parts.Count - 1, "joints",
            $"{vehicle.Parts.Count} parts need {vehicle.Parts.Count - 1} joints, not {vehicle.Joints.Count}.", $"Name a joint for each pair of neighbours.");
        for (int i = 0; i < vehicle.Parts.Count; i++) PartProblems.Look(vehicle.Parts[i], $"parts[{i}]", found);

        // Fits between parts mean nothing while the parts themselves make no sense.
        if (found.All.Count > 0) return found.All;
        for (int i = 0; i < vehicle.Joints.Count; i++) JointProblems.Look(vehicle, vehicle.Joints[i], $"joints[{i}]", found);
        for (int i = 0; i < vehicle.Parts.Count; i++) FittingProblems.Look(vehicle, i, found);
        Stowing(vehicle, found);
        Weighings(vehicle, found);
        return found.All;
    }

    /// <summary>Every problem of a motor in the vehicle's mount; empty when it goes in.</summary>
    /// <param name="vehicle">Without problems of its own.</param>
    /// <param name="motor">The motor of the day.</param>
    public static ValueList<Problem> In(Vehicle vehicle, Motor motor)
    {
        Findings found = new();
        int index = vehicle.MotorPart;
        if (!found.Require(index >= 0, "parts", $"No part has a motor mount for {motor.Name}.", $"Give the booster a motor mount.")) return found.All;
        string at = $"parts[{index}].motor mount";
        MotorMount mount = vehicle.Parts[index].Fittings.OfType<MotorMount>().First();
        found.Require(
            motor.Diameter <= mount.InnerDiameter, at, $"{motor.Name} is {Mm(motor.Diameter)} across; the mount takes {Mm(mount.InnerDiameter)}.");
        found.Require(
            motor.Diameter > 0.9 * mount.InnerDiameter, at,
            $"{motor.Name}, {Mm(motor.Diameter)} across, is far thinner than the mount's {Mm(mount.InnerDiameter)}.", $"Name an adapter, or check the motor.");
        double front = vehicle.Load(motor)!.Front;
        Bay? ahead = vehicle.Bays().LastOrDefault(b => b.Aft.Part == index && b.Aft.Name == mount.Name);
        double limit = ahead?.Front ?? vehicle.Parts[index].Front;
        found.Require(
            front >= limit, at, $"{motor.Name} is {Mm(motor.Length)} long and would reach {Mm(limit - front)} past {ahead?.Forward.Name ?? "the front of its part"}.");
        return found.All;
    }

    private static void Stowing(Vehicle vehicle, Findings found)
    {
        foreach (Bay bay in vehicle.Bays())
        {
            var inside = vehicle.Parts.SelectMany(p => p.Stowed.Select(s => (s.Name, s.PackedLength, s.PackedDiameter, Middle: p.Front + s.Offset + s.PackedLength / 2)))
                .Where(s => s.Middle >= bay.Front && s.Middle < bay.Rear).ToList();
            found.Require(
                bay.FreeVolume > 0, "stowed", $"What is stowed in {bay.Name} takes {bay.StowedVolume * 1e6:0} cm³; the bay holds {bay.Volume * 1e6:0} cm³.");
            double length = inside.Sum(s => s.PackedLength);
            found.Require(length <= bay.Length + 1e-9, "stowed", $"What is stowed in {bay.Name} is {Mm(length)} long end to end; the bay is {Mm(bay.Length)}.");
            foreach (var item in inside)
            {
                found.Require(
                    item.PackedDiameter <= bay.Bore + 1e-9, "stowed",
                    $"{item.Name} packs {Mm(item.PackedDiameter)} across; {bay.Name} narrows to {Mm(bay.Bore)}.");
            }
        }
    }

    private static void Weighings(Vehicle vehicle, Findings found)
    {
        foreach (WeighingDifference difference in vehicle.Masses().Differences.Where(d => !d.Applied))
        {
            found.Require(
                false, "weighings",
                $"{vehicle.NameOf(difference.Weighing.Piece)} weighed {difference.Weighing.Mass * 1000:0.#} g, less than what is known to be in it.",
                $"Check the scale's unit, and what was aboard.");
        }
    }
}
