using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Bench;

/// <summary>Does what I built match what I planned? Measured values against plan, parts against the whole, and what it does to every answer.</summary>
public sealed class AsBuilt() : Question("as-built", "Does what I built match what I planned?", Place.Bench)
{
    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Measured);
        var rocket = study.Rocket;
        if (rocket.Compared.Count == 0 && rocket.Weighings.Wholes.Count == 0 && rocket.Swung.Count == 0)
        {
            draft.Miss("records: what was measured and weighed, at the steps that ask for it");
            return draft.Done();
        }

        Measured(draft, rocket.Compared, rocket.Inch);
        Weighed(draft, rocket.Weighings);
        foreach (var swung in rocket.Swung) Swung(draft, study, swung);
        if (study.AsDrawn is { } drawn) Effects(draft, study, drawn);
        return draft.Done();
    }

    private static void Measured(Draft draft, ValueList<Compared> compared, bool inch)
    {
        if (compared.Count == 0) return;
        var w = draft.Working;
        draft.Find("values measured", compared.Count, Unit.Count);
        var n = 0;
        foreach (var value in compared.Where(c => c.Planned.Plan is not null))
        {
            n++;
            var (name, si) = (value.Planned.Name, value.Measured.Dimension.Si.Word);
            var p = w.Given($"p_{n}", value.Planned.Plan!.Si, si, $"{name}, as planned", "design");
            var q = w.Given($"q_{n}", value.Measured.Si, si, $"{name}, as measured", "records");
            var d = w.StepOf($"d_{n}", q - p, si, "measured less planned", "difference", [("q", $"q_{n}"), ("p", $"p_{n}")]);
            if (value.Allowed is not { } allowed) continue;
            var a = w.Given($"a_{n}", allowed, si, "what the plan allows either way", "design: the figure after ±");
            draft.Find($"{name}: off its plan, in tolerances", w.StepOf($"r_{n}", Abs(d) / a, "", "off its plan, in tolerances", "ratio", [("d", $"d_{n}"), ("a", $"a_{n}")]), Unit.Ratio, "as-built.tolerance");
        }

        draft.List(() => new(
            "Measured against plan",
            [new("what"), new("planned"), new("measured"), new("difference"), new("allowed")],
            compared.Select(c => TableRow.Of(
                c.Allowed is not { } allowed ? null : Abs(c.Difference!.Value) > allowed ? Verdict.Stop : Verdict.Clear,
                c.Planned.Name,
                c.Planned.Plan?.Text ?? "not planned",
                c.Measured.Text,
                c.Difference is { } off ? Signed(off, c.Measured.Dimension, inch) : "",
                c.Allowed is { } either ? $"± {MeasureText.Show(either, In(c.Measured.Dimension, inch), 3)}" : "")).ToValueList()));
    }

    private static void Weighed(Draft draft, Weighings weighings)
    {
        if (weighings.Wholes.Count == 0) return;
        var w = draft.Working;
        var n = 0;
        foreach (var whole in weighings.Wholes.Where(x => !double.IsNaN(x.Reading.Mass)))
        {
            n++;
            var name = whole.Reading.Name;
            var sum = w.Given($"S_{n}", whole.ExpectedMass, "kg", $"{name}: sum of its parts, each as known by itself, without motor", "design and records");
            var M = w.Given($"M_{n}", whole.Reading.Mass, "kg", "on the scale, motor taken off", "records");
            var gap = w.StepOf($"D_{n}", M - sum, "kg", "gap", "difference", [("M", $"M_{n}"), ("sum", $"S_{n}")]);
            var u = w.Given($"u_{n}", Sqrt(whole.Parts.Sum(p => weighings.Parts[p].MassSigma * weighings.Parts[p].MassSigma)), "kg", "standard uncertainty of that sum", "root of the sum of squares");
            var v = w.Given($"v_{n}", whole.Reading.MassSigma, "kg", "standard uncertainty of the weighing", "half the figure after ±, or 0.1 % and at least 0.5 g");
            w.StepOf($"X_{n}", gap * gap / ((u * u) + (v * v)), "", "chi squared of the gap", "one degree of freedom", [("gap", $"D_{n}"), ("u", $"u_{n}"), ("v", $"v_{n}")]);
            draft.Find($"{name}: on the scale less the sum of its parts", gap, Unit.Mass);
            var chance = w.Simulated($"P_{n}", weighings.Alone(whole).Chance, "", "chance of a gap as great, mass and balance together", "chi squared of weighted least squares");
            draft.Find($"{name}: chance of a gap as great by uncertainty alone", chance, Unit.Share, "as-built.chance");
            if (chance < 0.05) draft.Note($"{name}: something is not accounted for. Look for adhesive, paint, wiring, or a part counted twice, and list it; until then it lies on what is only estimated.");
        }

        var together = weighings.Together();
        draft.List(() => new(
            "Masses and balance points, parts and wholes reconciled",
            [new("what"), new("mass by itself", Unit.Mass), new("mass reconciled", Unit.Mass), new("give or take", Unit.Mass), new("balance by itself", Unit.Length), new("balance reconciled", Unit.Length)],
            weighings.Parts.Zip(together.Parts).Where(p => p.First.Mass > 0).Select(p => TableRow.Of(
                null, p.First.Name, p.First.Mass, p.Second.Mass, 2 * p.Second.MassSigma, p.First.Station, p.Second.Station)).ToValueList()));
    }

    private static void Swung(Draft draft, Study study, SwungPiece swung)
    {
        var w = draft.Working;
        var n = study.Rocket.Swung.ToList().IndexOf(swung) + 1;
        var name = study.Vehicle.NameOf(swung.Piece);
        if (swung.Motor && !study.HasMotor)
        {
            draft.Miss("motor: the motor that was aboard when it swung");
            return;
        }

        var parts = study.Masses.Of(swung.Piece, swung.Stowed);
        var hung = swung.Motor ? Airframe.MassProperties.Sum(parts, study.LoadedMotor) : parts;
        var computed = w.Given($"J_{n}", swung.Along ? hung.Inertia.Xx : hung.Inertia.Yy, "kg·m²", $"{name}: moment of inertia {(swung.Along ? "along" : "across")} the axis, computed", "solids of the design, as weighed");
        var m = w.Given($"m_{n}", swung.Mass ?? hung.Mass, "kg", "mass of what hung", swung.Mass is null ? "design and records" : "records");
        var g = w.Given($"g_{n}", study.Missing.Count == 0 ? study.Gravity : 9.80665, "m/s²", "gravity", study.Missing.Count == 0 ? "site" : "standard gravity");
        var d = w.Given($"e_{n}", swung.Apart, "m", "between the lines", "records");
        var L = w.Given($"L_{n}", swung.Lines, "m", "length of each line", "records");
        var T = w.Given($"T_{n}", swung.Period, "s", "one swing there and back", "records");
        var I = w.StepOf(
            $"I_{n}", m * g * d * d * T * T / (16 * PI * PI * L), "kg·m²", "moment of inertia from the swing", "bifilar pendulum (Jardin and Mueller, AIAA 2007-6822)",
            [("m", $"m_{n}"), ("g", $"g_{n}"), ("d", $"e_{n}"), ("T", $"T_{n}"), ("L", $"L_{n}")]);
        var off = w.StepOf($"o_{n}", Abs(I - computed) / I, "", "computed off the swing", "ratio", [("I", $"I_{n}"), ("computed", $"J_{n}")]);
        draft.Find($"{name}: inertia {(swung.Along ? "along" : "across")} the axis, from the swing", I, Unit.Inertia);
        draft.Find($"{name}: that computed is off by", off, Unit.Share, "as-built.inertia");
        var share = new Swing(m, d / 2, d / 2, L, T, g).Uncertainty(swung.MassSigma, swung.ApartSigma, swung.LinesSigma, swung.PeriodSigma);
        if (share > 0) draft.Find($"{name}: that swing is good to about", 2 * share, Unit.Share);
    }

    private static void Effects(Draft draft, Study study, Study drawn)
    {
        var w = draft.Working;
        List<(Question Question, Answer Then, Answer Now)> asked = [];
        foreach (var question in Questionnaire.All.Where(q => q.HasSpread && q.Place == Place.Desk))
        {
            var (now, then) = (question.Ask(study), question.Ask(drawn));
            if (now.Findings.Count > 0 || then.Findings.Count > 0) asked.Add((question, then, now));
        }

        List<TableRow> rows = [];
        var changed = 0;
        foreach (var (question, then, now) in asked)
        {
            var head = now.Findings.Count > 0 ? now.Findings[0] : then.Findings[0];
            double after = now.Findings.FirstOrDefault(f => f.Name == head.Name)?.Value ?? double.NaN, before = then.Findings.FirstOrDefault(f => f.Name == head.Name)?.Value ?? double.NaN;
            if (double.IsFinite(after) && double.IsFinite(before))
            {
                w.Simulated($"x_{rows.Count + 1}", before, "", $"{question.Id}: {head.Name}, as drawn", $"question {question.Id}");
                w.Simulated($"y_{rows.Count + 1}", after, "", $"{question.Id}: {head.Name}, as built", $"question {question.Id}");
            }

            rows.Add(TableRow.Of(
                now.Verdict,
                question.Id,
                head.Name,
                Shown.Text(before, head.Unit, study.Rocket.Inch),
                Shown.Text(after, head.Unit, study.Rocket.Inch),
                then.Verdict == now.Verdict ? now.Verdict.Word() : $"{then.Verdict.Word()}, now {now.Verdict.Word()}"));
            if (then.Verdict == now.Verdict) continue;
            changed++;
            draft.Note($"{question.Text} {Capital(then.Verdict.Word())} as drawn, {now.Verdict.Word()} as built.");
        }

        draft.Find("verdicts that change", changed, Unit.Count);
        if (changed == 0) draft.Note("No verdict changes.");
        draft.List(() => new("What it does to the answers", [new("question"), new("value"), new("as drawn"), new("as built"), new("verdict")], rows.ToValueList()));
    }

    private static string Capital(string word) => $"{char.ToUpperInvariant(word[0])}{word[1..]}";

    private static string Signed(double si, Dimension dimension, bool inch) => $"{(si < 0 ? "−" : "+")}{MeasureText.Show(Abs(si), In(dimension, inch), 3)}";

    private static UnitOfMeasure In(Dimension dimension, bool inch) => inch ? dimension.Inch : dimension.Metric;
}
