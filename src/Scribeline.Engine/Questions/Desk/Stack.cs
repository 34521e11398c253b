using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Does it all go together? Lengths along the stack, the motor in its mount, things end to end in each bay.</summary>
public sealed class Stack() : Question("stack", "Does it all go together?", Place.Desk)
{
    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var w = draft.Working;
        var vehicle = study.Vehicle;
        List<string> lengths = [];
        foreach (var part in vehicle.Parts)
        {
            lengths.Add($"l_{lengths.Count + 1}");
            w.Given(lengths[^1], part.Length, "m", $"length that {part.Name} adds", "design");
        }

        var length = w.Sum("L", lengths, "m", "length, tip to tail", "sum: what slides into a neighbour adds nothing");
        draft.Find("length, tip to tail", length, Unit.Length);
        if (study.HasMotor) Motor(draft, study);
        else draft.Miss("motor: a motor file, or its data");
        Joints(draft, study);
        Bays(draft, study);
        return draft.Done();
    }

    private static void Motor(Draft draft, Study study)
    {
        var w = draft.Working;
        var mount = study.Vehicle.Parts.SelectMany(p => p.Fittings.OfType<MotorMount>()).FirstOrDefault();
        if (mount is null)
        {
            draft.Miss("parts: a motor mount");
            return;
        }

        var D = w.Given("D_i", mount.InnerDiameter, "m", "inside of the motor mount", "design");
        var d = w.Given("d_m", study.Motor.Diameter, "m", "diameter of the motor", "motor file");
        var c = w.StepOf("c_m", D - d, "m", "room round the motor", "difference", [("D", "D_i"), ("d", "d_m")]);
        draft.Find("motor in its mount: room round it", c, Unit.Length, "stack.gap");

        // The bay ahead ends where the mount begins; a motor longer than its mount reaches into it.
        var front = w.Given("x_m", study.MotorFront, "m", "front of the motor aft of the tip", "motor file and mount");
        var ahead = study.Bays.LastOrDefault(b => b.Forward.Rear <= study.MotorFront + 1e-9);
        if (ahead is null) return;
        var plate = w.Given("x_p", ahead.Forward.Rear, "m", $"rear face of {ahead.Forward.Name} ahead of it", "design");
        var gap = w.StepOf("g_m", front - plate, "m", "room between them", "difference", [("front", "x_m"), ("plate", "x_p")]);
        draft.Find($"motor to {ahead.Forward.Name}: room", gap, Unit.Length, "stack.gap");
    }

    private static void Joints(Draft draft, Study study)
    {
        var w = draft.Working;
        foreach (var joint in study.Vehicle.Joints.Where(j => j.Engagement > 0))
        {
            var n = joint.Forward + 1;
            var name = $"{study.Vehicle.Parts[joint.Forward].Name} to {study.Vehicle.Parts[joint.Aft].Name}";
            var D = w.Given($"D_{n}", joint.BoreDiameter, "m", $"{name}: bore", "design");
            var d = w.Given($"d_{n}", joint.ShoulderDiameter, "m", "what slides into it", "design");
            var c = w.StepOf($"c_{n}", D - d, "m", "room on the diameter", "difference", [("D", $"D_{n}"), ("d", $"d_{n}")]);
            draft.Find($"{name}: room on the diameter", c, Unit.Length, "stack.gap");
        }
    }

    private static void Bays(Draft draft, Study study)
    {
        var w = draft.Working;
        var k = 0;
        foreach (var bay in study.Bays)
        {
            var things = study.StowedIn(bay).ToArray();
            if (things.Length == 0) continue;
            k++;
            var unknown = things.Where(t => t.PackedLength <= 0).ToArray();
            if (unknown.Length > 0)
            {
                draft.Note($"{bay.Name}: no packed length for {string.Join(", ", unknown.Select(t => t.Name))}; {(unknown.Length == 1 ? "it is" : "they are")} left out of the count.");
            }

            List<string> terms = [];
            foreach (var thing in things.Where(t => t.PackedLength > 0))
            {
                terms.Add($"p_{k}_{terms.Count + 1}");
                w.Given(terms[^1], thing.PackedLength, "m", $"packed length of {thing.Name}", "design");
            }

            if (terms.Count == 0) continue;
            var reach = study.HasMotor && study.MotorFront > bay.Front ? System.Math.Max(0, bay.Rear - study.MotorFront) : 0;
            var room = w.Given($"b_{k}", bay.Length - reach, "m", $"{bay.Name}: length between its closures, less the motor's reach into it", "design");
            var packed = w.Sum($"p_{k}", terms, "m", "packed end to end", "sum");
            var gap = w.StepOf($"g_{k}", room - packed, "m", "room left", "difference", [("room", $"b_{k}"), ("packed", $"p_{k}")]);
            draft.Find($"{bay.Name}: room left along it", gap, Unit.Length, "stack.gap");
        }
    }
}
