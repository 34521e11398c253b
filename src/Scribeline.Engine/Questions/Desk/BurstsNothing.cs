using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Will the biggest bang break anything? All charges of a bay at once in the closed bay, against tube, plates, rods, screws and bonds.</summary>
public sealed class BurstsNothing() : Question("bursts-nothing", "Will the biggest bang break anything?", Place.Desk)
{
    private const string Roark = "Roark's Formulas for Stress and Strain, 7th ed., from memory";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        ChargeNotes.Missing(draft, study);
        var n = 0;
        foreach (var group in study.ChargeFirings.GroupBy(f => f.Bay))
        {
            n++;
            var (p, bound) = Pressure(draft, study, [.. group], n);
            var before = draft.Count;
            Tubes(draft, study, group.Key, p, n);
            Ends(draft, study, group.Key, p, n);
            Joints(draft, study, group.Key, p, n);
            AtBound(draft, group.Key, p, bound, n, before);
        }

        draft.Note("The closed bay stands for a joint that jams. The pressure is the computed one with both charges at once, or the customary one where that is more; at the outer bound all of the powder's heat stays in the gas.");
        ChargeNotes.OfStrength(draft);
        ChargeNotes.OfCharges(draft);
        return draft.Done();
    }

    private static (double Judged, double Bound) Pressure(Draft draft, Study study, ChargeFiring[] firings, int n)
    {
        var w = draft.Working;
        var name = firings[0].Bay.Name;
        var inputs = firings[0].Held.Inputs with
        {
            ChargeMass = firings.Sum(f => f.Held.Inputs.ChargeMass),
            Powder = firings[0].Held.Inputs.Powder with { GrainRadius = firings.Min(f => f.Charge.GrainRadius) },
        };
        (string, string)[] names = [("m", $"m_{n}"), ("V", $"V_{n}"), ("c", $"c_{n}"), ("h", $"h_{n}")];
        var m = w.Given($"m_{n}", inputs.ChargeMass, "kg", $"powder in {name}, all charges at once: {string.Join(" and ", firings.Select(f => f.Charge.Name))}", "question lets-go");
        var V = w.Given($"V_{n}", inputs.FreeVolume, "m³", "free volume of the bay", "design, less what is stowed");
        var c = w.StepOf($"c_{n}", m * 119.228 * 1837.22 / V, "Pa", "customary gauge pressure", "customary relation: Mobley (1997), T from memory", names);
        var h = w.Simulated($"h_{n}", study.Fire(inputs).PeakGauge, "Pa", "peak gauge pressure with the joint held", "integrated, see method separation");
        var p = w.StepOf($"p_{n}", Max(c, h), "Pa", "pressure that is judged", "definition", names);
        var bound = w.Simulated($"o_{n}", new RigidBay(inputs with { Powder = Powder.ClosedVessel }).GaugePressure, "Pa", "outer bound: all of the powder's heat stays in the gas", "Noble and Abel (1875)");
        draft.Find($"{name}: pressure over that outside", p, Unit.Pressure);
        draft.Find($"{name}: outer bound of it", bound, Unit.Pressure);
        return (p, bound);
    }

    // Every stress is in proportion to the pressure, so the weakest stays the weakest.
    private static void AtBound(Draft draft, Bay bay, double p, double o, int n, int from)
    {
        var weakest = draft.Weakest("bursts-nothing.margin", from);
        if (double.IsNaN(weakest)) return;
        var w = draft.Working.Given($"w_{n}", weakest, "", "least of the ratios above", "above");
        var b = draft.Working.StepOf($"b_{n}", w * p / o, "", "the same at the outer bound", "stress in proportion to pressure", [("w", $"w_{n}"), ("p", $"p_{n}"), ("o", $"o_{n}")]);
        draft.Find($"{bay.Name}: least of these at the outer bound", b, Unit.Ratio, "bursts-nothing.outer-bound");
    }

    private static void Tubes(Draft draft, Study study, Bay bay, double p, int n)
    {
        foreach (var (part, i) in study.Vehicle.Parts.Select((part, i) => (part, i)))
        {
            if (part is not Tube { OuterDiameter: var outside, InnerDiameter: var inside, SeamShare: var seam } || Min(part.Rear, bay.Rear) <= Max(part.Front, bay.Front)) continue;
            var w = draft.Working;
            var id = $"{n}_{i + 1}";
            (string, string)[] names = [("p", $"p_{n}"), ("D", $"D_{id}"), ("t", $"t_{id}"), ("H", $"H_{id}"), ("E", $"E_{id}"), ("s", $"s_{id}")];
            var D = w.Given($"D_{id}", inside, "m", $"bore of {part.Name}", "design");
            var t = w.Given($"t_{id}", (outside - inside) / 2, "m", "its wall", "design");
            var H = w.StepOf($"H_{id}", p * D / (2 * t), "Pa", "hoop stress; along the tube it is half", "thin tube", names);
            draft.Find($"{part.Name}: hoop stress", H, Unit.Pressure);
            if (seam < 1)
            {
                var E = w.Given($"E_{id}", seam, "", "strength of its seam over that of the wall", "design");
                w.StepOf($"K_{id}", H / E, "Pa", "hoop stress a wall without seam would feel alike", "definition", names);
            }

            Margin(draft, seam < 1 ? $"{part.Name}: strength of its seam over hoop stress" : $"{part.Name}: strength over hoop stress", H / seam, seam < 1 ? $"K_{id}" : $"H_{id}", part.Material.Strength, part.Material.Source, $"materials: strength of {part.Material.Name}, for {part.Name}", $"s_{id}");
        }
    }

    private static void Ends(Draft draft, Study study, Bay bay, double p, int n)
    {
        foreach (var (end, i) in new[] { (bay.Forward, 1), (bay.Aft, 2) })
        {
            var part = study.Vehicle.Parts[end.Part];
            if (part.Fittings.OfType<BulkPlate>().FirstOrDefault(f => f.Name == end.Name) is { } plate) Plate(draft, study, bay, end, part, plate, p, $"{n}_e{i}", n);
            else if (part.Fittings.OfType<MotorMount>().FirstOrDefault(f => f.Name == end.Name) is { } mount) Rings(draft, part, mount, p, $"{n}_e{i}", n);
        }
    }

    private static void Plate(Draft draft, Study study, Bay bay, Closure end, Part part, BulkPlate plate, double p, string id, int n)
    {
        var w = draft.Working;
        var rods = study.Rocket.Separation.Rods.FirstOrDefault(r => r.Part == end.Part);
        (string, string)[] names = [("p", $"p_{n}"), ("d", $"d_{id}"), ("t", $"t_{id}"), ("B", $"B_{id}"), ("s", $"s_{id}"), ("F", $"F_{id}"), ("A", $"A_{id}"), ("N", $"N_{id}"), ("T", $"T_{id}"), ("z", $"z_{id}"), ("h", $"h_{id}")];
        var d = w.Given($"d_{id}", plate.Diameter, "m", $"diameter of {plate.Name}", "design");
        var t = w.Given($"t_{id}", plate.Thickness, "m", "its thickness", "design");
        var B = rods is { Count: 2 }
            ? w.StepOf($"B_{id}", 2 * p * Pow(d / 2 / t, 2), "Pa", "bending stress if pushed off its rim and held by the two rods", "half the load at 4a/3π bends the section through the rods", names)
            : w.StepOf($"B_{id}", 3 * 3.2 / 8 * p * Pow(d / 2 / t, 2), "Pa", "bending stress, held at its rim, Poisson's ratio 0.2", Roark, names);
        Margin(draft, $"{plate.Name}: strength over bending stress", B, $"B_{id}", plate.Material.Strength, plate.Material.Source, $"materials: strength of {plate.Material.Name}, for {plate.Name}", $"s_{id}");
        var F = w.StepOf($"F_{id}", p * PI / 4 * d * d, "N", "load on it", "definition", names);
        if (rods is not null)
        {
            var A = w.Given($"A_{id}", rods.Thread.TensileArea, "m²", $"stress area of a rod {rods.Name}", "ASME B1.1, or ISO 965");
            var N = w.Given($"N_{id}", rods.Count, "", "rods", "design");
            var T = w.StepOf($"T_{id}", F / (N * A), "Pa", "tension in the rods if they carry it all", "definition", names);
            Margin(draft, $"{plate.Name}: strength of the rods over their tension", T, $"T_{id}", rods.Strength, rods.Source, $"materials: strength of the rods of {part.Name}", $"z_{id}");
        }
        else if (part.BoreAt(end.Front + (plate.Thickness / 2)) is { } radius && plate.Diameter <= 2 * radius + 1e-6)
        {
            Bond(draft, plate.Name, F, d, plate.Thickness, plate.Material.Name, id, names);
        }
    }

    private static void Rings(Draft draft, Part part, MotorMount mount, double p, string id, int n)
    {
        var rings = part.Fittings.OfType<CentringRing>().ToArray();
        if (rings.Length == 0) return;
        var w = draft.Working;
        (string, string)[] names = [("p", $"p_{n}"), ("d", $"d_{id}"), ("F", $"F_{id}"), ("h", $"h_{id}"), ("T", $"T_{id}"), ("z", $"z_{id}")];
        var d = w.Given($"d_{id}", rings.Max(r => r.OuterDiameter), "m", $"diameter of the rings of {mount.Name}", "design");
        var F = w.StepOf($"F_{id}", p * PI / 4 * d * d, "N", "load on mount and motor", "definition", names);
        Bond(draft, $"Rings of {mount.Name}", F, d, rings.Sum(r => r.Thickness), rings[0].Material.Name, id, names);
    }

    private static void Bond(Draft draft, string what, double F, double d, double height, string material, string id, (string, string)[] names)
    {
        var w = draft.Working;
        var h = w.Given($"h_{id}", Min(height, JointBond.LongestCounted), "m", "bonded edge that counts, 25 mm at most", "design; common practice");
        var T = w.StepOf($"T_{id}", F / (PI * d * h), "Pa", "shear of the bond round it", "definition", names);
        Margin(draft, $"{what}: strength of the bond over its shear", T, $"T_{id}", JointBond.On(material), "design shear strength of epoxy: common practice", "", $"z_{id}");
    }

    // Joints between the ends of a bay that must not let go carry the push on its end.
    private static void Joints(Draft draft, Study study, Bay bay, double p, int n)
    {
        foreach (var joint in study.Vehicle.Joints.Where(j => !j.Separable && j.Forward >= bay.Forward.Part && j.Forward < bay.Aft.Part))
        {
            var w = draft.Working;
            var label = $"{study.Vehicle.Parts[joint.Forward].Name} to {study.Vehicle.Parts[joint.Aft].Name}";
            var id = $"{n}_j{joint.Forward + 1}";
            (string, string)[] names = [("p", $"p_{n}"), ("d", $"d_{id}"), ("F", $"F_{id}"), ("h", $"h_{id}"), ("T", $"T_{id}"), ("z", $"z_{id}"), ("N", $"N_{id}"), ("a", $"a_{id}"), ("g", $"g_{id}"), ("t", $"t_{id}"), ("e", $"e_{id}"), ("S", $"S_{id}"), ("Q", $"Q_{id}"), ("X", $"X_{id}")];
            var d = w.Given($"d_{id}", joint.BoreDiameter, "m", $"bore of {label}", "design");
            var F = w.StepOf($"F_{id}", p * PI / 4 * d * d, "N", "pull on the joint", "definition", names);
            if (study.Rocket.Separation.Bonds.FirstOrDefault(b => b.Joint == joint.Forward) is { Length: > 0 } bond) Bond(draft, label, F, d, bond.Length, "", id, names);
            if (study.Rocket.Separation.Screws.FirstOrDefault(s => s.Joint == joint.Forward) is { } screws) Screwed(draft, study, joint, screws, label, F, id, names);
        }
    }

    private static void Screwed(Draft draft, Study study, Joint joint, ScrewRow screws, string label, double F, string id, (string, string)[] names)
    {
        var w = draft.Working;
        var N = w.Given($"N_{id}", screws.Count, "", $"screws {screws.Name} of {label}", "design");
        var a = w.Given($"a_{id}", screws.Thread.MinorArea, "m²", "root area of one", "ASME B1.1, or ISO 68-1");
        var S = w.StepOf($"S_{id}", F / (N * a), "Pa", "shear of the screws", "definition", names);
        Margin(draft, $"{label}: shear strength of the screws over their shear", S, $"S_{id}", Fastening.ShearShare * screws.Strength, $"0.6 of the tensile strength: {screws.Source}", $"{label}: strength of its screws", $"y_{id}");
        if (study.Vehicle.Parts[joint.ShoulderAhead ? joint.Aft : joint.Forward] is not Tube { OuterDiameter: var outside, InnerDiameter: var inside, Material: var wall }) return;
        var g = w.Given($"g_{id}", screws.Thread.MajorDiameter, "m", "diameter of one", "ASME B1.1, or ISO 261");
        var t = w.Given($"t_{id}", (outside - inside) / 2, "m", "wall they bear on", "design");
        var Q = w.StepOf($"Q_{id}", F / (N * g * t), "Pa", "bearing of the wall", "definition", names);
        Margin(draft, $"{label}: bearing strength of the wall over its bearing", Q, $"Q_{id}", Fastening.LaminateBearing, "glass laminate at three diameters from the edge: assumption", "", $"x_{id}");
        var c = w.Given($"c_{id}", PI * (outside + inside) / 2, "m", "mean circumference of the wall", "design");
        var L = w.StepOf($"L_{id}", F / ((c - (N * g)) * t), "Pa", "tension in the wall between the screws", "definition", [.. names, ("c", $"c_{id}")]);
        Margin(draft, $"{label}: strength of the wall over its tension between the screws", L, $"L_{id}", wall.Strength, wall.Source, $"materials: strength of {wall.Name}, for {label}", $"k_{id}");
        if (screws.Edge is not { } edge)
        {
            draft.Miss($"joints: {label}: screws: from edge");
            return;
        }

        var e = w.Given($"e_{id}", edge, "m", "from the edge to the middle of a screw", "design");
        draft.Find($"{label}: edge distance in diameters", w.StepOf($"E_{id}", e / g, "", "edge distance in diameters", "definition", names), Unit.Ratio, "bursts-nothing.edge");
        var X = w.StepOf($"X_{id}", F / (2 * N * e * t), "Pa", "shear of the wall out to its edge", "definition", names);
        Margin(draft, $"{label}: shear strength of the wall over its shear-out", X, $"X_{id}", Fastening.LaminateShear, "woven glass epoxy, NEMA LI 1 grade data", "", $"o_{id}");
    }

    private static void Margin(Draft draft, string what, double q, string stress, double? strength, string source, string missing, string symbol)
    {
        if (strength is not { } known)
        {
            draft.Miss(missing);
            return;
        }

        var s = draft.Working.Given(symbol, known, "Pa", "strength", source);
        draft.Find(what, draft.Working.StepOf($"r{symbol}", s / q, "", what, "definition", [("s", symbol), ("q", stress)]), Unit.Ratio, "bursts-nothing.margin");
    }
}
