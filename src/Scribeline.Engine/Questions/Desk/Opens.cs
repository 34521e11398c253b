using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Does the canopy survive opening? Opening force by the handbook and by integration, where and as fast as it opens, against its lines and cloth.</summary>
public sealed class Opens() : Question("opens", "Does the canopy survive opening?", Place.Desk)
{
    private const string Knacke = "Knacke (1991) 5.4, from memory";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(study.CanopyBasis);
        foreach (var missing in study.Rocket.RecoveryMissing) draft.Miss(missing);
        if (study.Rocket.RecoveryMissing.Count > 0) return draft.Done();
        if (study.CanopyLoads.Count == 0) draft.Miss("stowed: a canopy, and firing: what frees it");
        for (var i = 0; i < study.CanopyLoads.Count; i++) Canopy(draft, study, study.CanopyLoads[i], i + 1);
        draft.Draw(() => Pulls(study));
        draft.Note("The worst is the greatest of the handbook's force, the integrated one, the same if only the last charge at apogee works, that of the piece it is tied to thrown out alone by the hardest charge, the jerk of the lines, and the weight.");
        draft.Note("Meant is a canopy drawn out lines first: one that is dumped out in a heap can open harder.");
        draft.Note("A drop test of your own canopy rules over every figure here: type fill constant and drag area from it.");
        ChargeNotes.OfStrength(draft);
        return draft.Done();
    }

    private static void Canopy(Draft draft, Study study, CanopyLoad load, int n)
    {
        var name = load.Canopy.Name;
        Handbook(draft, study, load, n);
        var w = draft.Working;
        var I = w.Simulated($"I_{n}", load.Integrated.Peak, "N", $"greatest pull of {name}, its drag area growing as it fills, with weight and path", "Ludtke, AIAA 73-477 (1973), from memory; integrated, see method recovery");
        var D = w.Simulated($"D_{n}", load.Late ?? 0, "N", "the greater of both if only its last charge at apogee works; 0 where that is not later", "see method recovery");
        var H = w.Simulated($"H_{n}", load.Thrown?.Force ?? 0, "N", $"the greater of both if it opens before the harness is taut, with {load.Thrown?.Mass:F2} kg thrown at {load.Thrown?.Speed:F1} m/s more", "see method recovery");
        var G = w.Simulated($"G_{n}", load.Bare ?? 0, "N", "the greater of both if nothing slows the fall before and the pieces have the least drag they may; 0 where a canopy does", "see method recovery");
        var J = w.Simulated($"J_{n}", load.Snatch ?? 0, "N", "jerk as its lines run taut; 0 where lines, their stretch or its mass are not typed", "energy of a spring between two masses");
        (string, string)[] names = [("F", $"F_{n}"), ("I", $"I_{n}"), ("D", $"D_{n}"), ("H", $"H_{n}"), ("J", $"J_{n}"), ("G", $"G_{n}"), ("m", $"m_{n}"), ("g", $"g_{n}")];
        var (F, m) = (load.Handbook.Peak, load.Mass);
        var g = w.Given($"g_{n}", study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)");
        var worst = w.StepOf($"O_{n}", Max(Max(Max(F, I), Max(D, H)), Max(Max(J, G), m * g)), "N", $"worst opening force of {name}: the greatest of these and the weight", "definition", names);
        draft.Find($"{name}: worst opening force", worst, Unit.Force);
        draft.Find($"{name}: by the handbook", F, Unit.Force);
        draft.Find($"{name}: by integration", I, Unit.Force);
        if (load.Late is not null) draft.Find($"{name}: if only its last charge works", D, Unit.Force);
        if (load.Bare is not null) draft.Find($"{name}: out of a fall without a canopy, at its fastest", G, Unit.Force);
        if (load.Thrown is not null) draft.Find($"{name}: if it opens before the harness is taut", H, Unit.Force);
        if (load.Snatch is not null) draft.Find($"{name}: jerk of its lines", J, Unit.Force);
        draft.Find($"{name}: speed at line stretch", load.Speed, Unit.Speed);
        draft.Find($"{name}: time to fill", load.Integrated.FillTime, Unit.Time);
        draft.Find($"{name}: height lost while it fills", load.Integrated.HeightWhenFull, Unit.Height);
        if (load.Canopy.Kind is { } kind) draft.Note($"{name}: a canopy of this kind swings {double.RadiansToDegrees(kind.SwingLow):F0} to {double.RadiansToDegrees(kind.SwingHigh):F0}° to either side once open (Knacke 1991, tables 5-1 and 5-2, from memory).");
        Strength(draft, load, worst, n);
    }

    private static void Handbook(Draft draft, Study study, CanopyLoad load, int n)
    {
        var w = draft.Working;
        var hand = load.Handbook;
        (string, string)[] names = [("S", $"S_{n}"), ("v", $"v_{n}"), ("rho", $"rho_{n}"), ("m", $"m_{n}"), ("t", $"t_{n}"), ("x", $"x_{n}"), ("n", $"n_{n}"), ("q", $"q_{n}"), ("A", $"A_{n}"), ("X", $"X_{n}")];
        var name = load.Canopy.Name;
        var S = w.Given($"S_{n}", hand.DragArea, "m²", $"drag area of {name}", "design, or the canopy table");
        var v = w.Simulated($"v_{n}", load.Speed, "m/s", $"speed through the air as its lines are stretched, {load.Flown.LineStretch.Height:F0} m above the pad", "flown");
        var rho = w.Simulated($"rho_{n}", hand.Density, "kg/m³", "air density there", "U.S. Standard Atmosphere 1976 on the day given");
        var m = w.Given($"m_{n}", hand.Mass, "kg", "mass that hangs on it", "question weight");
        var t = w.Simulated($"t_{n}", hand.FillTime, "s", "time to fill: fill constant times nominal diameter over speed, or a free fall through that distance", "Knacke (1991) 5.4 and table 5-6, from memory");
        var x = w.Given($"x_{n}", hand.Coefficient, "", "opening-force coefficient", "Knacke (1991) tables 5-1 and 5-2, from memory");
        var growth = w.Given($"n_{n}", hand.Growth, "", "growth of its drag area with time", "Knacke (1991) 5.4, from memory");
        var q = w.StepOf($"q_{n}", 0.5 * rho * v * v, "Pa", "dynamic pressure", "definition", names);
        var A = w.StepOf($"A_{n}", 2 * m / (S * rho * v * t), "", "ballistic parameter", Knacke, names);
        var X = Reduction(w, A, growth, n, [("A", $"A_{n}"), ("growth", $"n_{n}")]);
        w.StepOf($"F_{n}", S * q * x * X, "N", "opening force by the handbook", Knacke, names);
        if (hand.GravityNumber(study.Gravity) > 0.1) draft.Note($"{name}: gravity counts while it fills, which the handbook's force leaves out; the integrated one has it.");
    }

    private static double Reduction(Working w, double A, double growth, int n, (string, string)[] names) => A < OpeningForce.TurningPoint(growth)
        ? w.StepOf($"X_{n}", Pow((growth + 2) / (2 * (growth + 1)), 2) * Pow(growth * (growth + 1) * A / (growth + 2), growth / (growth + 1)), "", "force over that at infinite mass", "closed solution, peak before it is full (Doherr, AIAA 2003-2173)", names)
        : w.StepOf($"X_{n}", 1 / Pow(1 + (1 / (A * (growth + 1))), 2), "", "force over that at infinite mass", "closed solution, peak when it is full (Doherr, AIAA 2003-2173)", names);

    // The same capacities as in the load path, canopy and lines alone.
    private static void Strength(Draft draft, CanopyLoad load, double worst, int n)
    {
        var w = draft.Working;
        var canopy = load.Canopy;
        (string, string)[] names = [("O", $"O_{n}"), ("N", $"N_{n}"), ("B", $"B_{n}"), ("p", $"p_{n}"), ("l", $"l_{n}"), ("C", $"C_{n}"), ("K", $"K_{n}")];
        var O = worst;
        if (canopy.Lines is { Strength: { } strength } lines)
        {
            var N = w.Given($"N_{n}", lines.Count, "", $"lines of {canopy.Name}", "design");
            var B = w.Given($"B_{n}", strength, "N", "breaking load of one", lines.Source);
            var p = w.Given($"p_{n}", canopy.ProjectedDiameter, "m", "inflated diameter", "Knacke (1991) tables 5-1 and 5-2, from memory");
            var l = w.Given($"l_{n}", LineLength(canopy), "m", "length of a line, or the nominal diameter where that is not typed", "design");
            var C = w.StepOf($"C_{n}", N * B * 0.80 * Cos(Asin(p / (2 * l))) / 1.05, "N", "capacity of the lines, sewn to 0.80, drawn together, a twentieth more on some", "Knacke (1991) ch. 6, from memory", names);
            draft.Find($"{canopy.Name}: strength of its lines over the worst opening", w.StepOf($"R_{n}", C / O, "", "capacity of the lines over the worst opening", "definition", names), Unit.Ratio, "opens.strength");
        }

        if (canopy.Strength is { } whole)
        {
            var K = w.Given($"K_{n}", whole, "N", "strength of canopy and seams", "design");
            draft.Find($"{canopy.Name}: strength of canopy and seams over the worst opening", w.StepOf($"Q_{n}", K / O, "", "strength over the worst opening", "definition", names), Unit.Ratio, "opens.strength");
        }

        if (canopy.Strength is null && canopy.Lines?.Strength is null) draft.Miss($"stowed: {canopy.Name}: lines, with count and strength, or the strength of the whole");
    }

    /// <summary>Length of a line, m; the nominal diameter where it is not typed.</summary>
    internal static double LineLength(Canopy canopy) => canopy.Lines?.Length is { } length && length > canopy.ProjectedDiameter / 2 ? length : canopy.NominalDiameter;

    private static Plot Pulls(Study study)
    {
        var lines = study.CanopyLoads.Select(l =>
        {
            var pull = l.Integrated.Inputs.Pull();
            return new Series(l.Canopy.Name, pull.Select(p => p.Time).ToValueList(), pull.Select(p => p.Force).ToValueList());
        });
        return new("Pull of each canopy as it fills", new Axis("time since line stretch", Unit.Time), new Axis("pull", Unit.Force), lines.ToValueList(), []);
    }
}
