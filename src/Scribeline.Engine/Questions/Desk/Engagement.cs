using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Do the joints reach far enough? Engagement of each joint in calibres, its play and its stiffness in bending.</summary>
public sealed class Engagement() : Question("engagement", "Do the joints reach far enough?", Place.Desk)
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
        foreach (var joint in vehicle.Joints)
        {
            var n = joint.Forward + 1;
            var (ahead, behind) = (vehicle.Parts[joint.Forward], vehicle.Parts[joint.Aft]);
            var name = $"{ahead.Name} to {behind.Name}";
            if (joint.Engagement == 0)
            {
                if (joint.Separable) draft.Find($"{name}: engagement", 0, Unit.Calibre, "engagement.calibres");
                continue;
            }

            var e = w.Given($"e_{n}", joint.Engagement, "m", $"engagement of {name}", "design");
            var D = w.Given($"D_{n}", joint.BoreDiameter, "m", "bore it slides into", "design");
            var p = w.Given($"p_{n}", Max(joint.Play, 0), "m", "bore less what slides in", "design");
            var c = w.StepOf($"c_{n}", e / D, "cal", "engagement in calibres", "definition", [("e", $"e_{n}"), ("D", $"D_{n}")]);
            var a = w.StepOf($"a_{n}", Atan(p / e), "rad", "slope the play allows", "geometry", [("p", $"p_{n}"), ("e", $"e_{n}")]);
            draft.Find($"{name}: engagement", c, Unit.Calibre, joint.Separable ? "engagement.calibres" : null);
            draft.Find($"{name}: slope within its play", a, Unit.Angle);

            var shoulder = joint.ShoulderAhead ? ahead.Behind : behind.Ahead;
            var material = joint.ShoulderAhead ? ahead.Material : behind.Material;
            if (material.Modulus is not { } modulus) continue;
            var E = w.Given($"E_{n}", modulus, "Pa", $"Young's modulus of {material.Name}", material.Source);
            var d = w.Given($"d_{n}", shoulder.OuterDiameter, "m", "outside of what slides in", "design");
            var b = w.Given($"b_{n}", shoulder.InnerDiameter, "m", "inside of it", "design");
            var S = w.StepOf($"S_{n}", E * PI / 64 * (Pow(d, 4) - Pow(b, 4)), "N·m²", "bending stiffness of what slides in", "Beer & Johnston, Mechanics of Materials: EI of a tube, from memory", [("E", $"E_{n}"), ("d", $"d_{n}"), ("b", $"b_{n}")]);
            draft.Find($"{name}: bending stiffness", S, Unit.Stiffness);
        }

        if (draft.IsEmpty) draft.Miss("joints: what holds the parts together");
        return draft.Done();
    }
}
