using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;
using Scribeline.Store.Logbooks;
using Scribeline.Tests;
using UnitsNet;

namespace Scribeline.Store.Tests;

/// <summary>What measured and weighed values under the records of a file do to its design and its answers.</summary>
public class AsBuiltTests
{
    private static readonly RocketDesign Design = Read("");

    [Fact]
    public void Every_quantity_is_found_by_its_name_and_replaced_alone()
    {
        var all = DesignMeasures.Of(Design);
        Assert.True(all.Count > 60);
        Assert.Equal(all.Count, all.Select(m => m.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        foreach (var measure in all)
        {
            Assert.Same(measure, DesignMeasures.Find(all, measure.Name.ToUpperInvariant().Replace(' ', '.')));
            var other = Measure.ReadAs(measure.Dimension, measure.Dimension.Plain ? "0.123" : $"0.123 {measure.Dimension.Si.Word}", Basis.Measured, measure.At).Value!;
            var changed = DesignMeasures.Of(DesignMeasures.With(Design, new Dictionary<string, IMeasure> { [measure.At] = other }));
            Assert.Equal([measure.Name], changed.Zip(all).Where(p => !Equals(p.First.Plan, p.Second.Plan)).Select(p => p.First.Name));
            Assert.Equal(0.123, changed.Single(m => m.Name == measure.Name).Plan!.Si, 1e-12);
        }
    }

    [Fact]
    public void Nothing_replaced_is_the_very_same_design() => Assert.Same(Design, DesignMeasures.With(Design, new Dictionary<string, IMeasure> { ["parts[9].length"] = Measure.Si<Length>(1) }));

    [Fact]
    public void A_measured_value_counts_in_place_of_its_plan_and_of_several_the_last()
    {
        var built = AsBuilt.Of(With(("booster.length", "35 in"), ("Booster length", "34.1 in ± 0.1 in")));
        var length = ((TubeDesign)built.Design.Parts[3]).Length;
        Assert.Equal(34.1 * 0.0254, length.Si, 1e-12);
        Assert.Equal((Basis.Measured, "parts[3].length"), (length.Known, length.At));
        var compared = Assert.Single(built.Compared);
        Assert.Equal(0.1 * 0.0254, compared.Difference!.Value, 1e-12);
        Assert.Null(compared.Allowed);
    }

    [Fact]
    public void A_mass_that_was_only_estimated_is_measured()
    {
        var weighed = With(("Payload mass", "333 g"));
        var study = Studies.Of(weighed).Nominal!;
        Assert.Equal(0.333, study.Masses.Parts[1].Built.Mass, 1e-12);
        Assert.Equal(Basis.Measured, study.Masses.Parts[1].Built.Basis);
        Assert.NotEqual(0.333, study.AsDrawn!.Masses.Parts[1].Built.Mass);
        Assert.Equal(Basis.Estimated, study.AsDrawn.Masses.Parts[1].Built.Basis);
        Assert.Null(study.AsDrawn.AsDrawn);
    }

    // Two standard deviations are the figure after ±.
    [Fact]
    public void Cases_are_drawn_about_the_measured_value()
    {
        var studies = Studies.Of(With(("Payload mass", "333 g ± 2 g")));
        var drawn = Enumerable.Range(0, 200).Select(i => studies.Case(i)!.Masses.Parts[1].Built.Mass).ToArray();
        Assert.Equal(0.333, drawn.Average(), 3 * 0.001 / Math.Sqrt(200));
        Assert.InRange(Math.Sqrt(drawn.Average(m => (m - 0.333) * (m - 0.333))), 0.0008, 0.0012);
    }

    [Fact]
    public void A_value_written_into_its_place_is_its_own_plan()
    {
        var text = PlainDesign.Text("Case").Replace("length: 34 in", "length: {value: 34.1 in, known: measured}", StringComparison.Ordinal);
        var reading = DesignFile.ReadText(text + "\nrecords: {measured: [{what: Booster length, value: 34.1 in}]}");
        Assert.Empty(reading.Problems);
        Assert.Empty(AsBuilt.Of(reading.Design!).Compared);
    }

    [Fact]
    public void A_logbook_adds_its_values_after_those_of_the_file_and_tells_what_it_cannot_place()
    {
        var at = new DateTimeOffset(2026, 5, 4, 18, 0, 0, TimeSpan.Zero);
        var (design, strangers) = MeasuredRecords.AddTo(
            With(("Booster length", "35 in")), [new("Booster length", "34.1 in", "", at), new("Tailcone length", "3 in", "", at), new("Nose length", "12 g", "", at)]);
        Assert.Equal(["35 in", "34.1 in"], design.Records!.Measured.Select(m => m.Value));
        Assert.Equal(34.1 * 0.0254, ((TubeDesign)AsBuilt.Of(design).Design.Parts[3]).Length.Si, 1e-12);
        Assert.Equal(["Tailcone length", "Nose length"], strangers.Select(s => s.What));
        Assert.Same(Design, MeasuredRecords.AddTo(Design, []).Design);
    }

    [Fact]
    public void A_measured_value_changes_the_fingerprint()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.Path("rocket.yaml"), PlainDesign.Text("Case"));
        string[] files = [folder.Path("rocket.yaml")];
        MeasuredValue[] values = [new("Booster length", "34.1 in", "", default), new("Booster length", "34.2 in", "", default)];
        Assert.Equal(DesignFingerprint.Of(files), DesignFingerprint.Of(files, []));
        Assert.Equal(3, new[] { DesignFingerprint.Of(files), DesignFingerprint.Of(files, values[..1]), DesignFingerprint.Of(files, values[1..]) }.Distinct().Count());
    }

    [Fact]
    public void Without_records_the_question_is_open()
    {
        var answer = Ask(Design);
        Assert.Equal(Verdict.Open, answer.Verdict);
        Assert.Null(Studies.Of(Design).Nominal!.AsDrawn);
    }

    // 120 g ± 10 g as planned.
    [Theory]
    [InlineData("129 g", 0.9, Verdict.Clear)]
    [InlineData("132 g", 1.2, Verdict.Stop)]
    [InlineData("108 g", 1.2, Verdict.Stop)]
    public void Beyond_its_tolerance_a_value_stops(string measured, double tolerances, Verdict verdict)
    {
        var answer = Ask(With(("Altimeters and batteries mass", measured)));
        var finding = answer.Findings.Single(f => f.Name == "Altimeters and batteries mass: off its plan, in tolerances");
        Assert.Equal(tolerances, finding.Value, 1e-9);
        Assert.Equal(verdict, finding.Verdict);
    }

    // Nose 318 g and Payload 400 g, each to 1 g (one standard deviation), make 718 ± 1.41 g: 30 g more is more than uncertainty explains.
    [Theory]
    [InlineData(719, true)]
    [InlineData(748, false)]
    public void A_gap_that_uncertainty_does_not_explain_is_told(int whole, bool explained)
    {
        var answer = Ask(Read($$"""
              measured: [{what: Nose mass, value: 318 g ± 2 g}, {what: Payload mass, value: 400 g ± 2 g}]
              weighed: [{parts: [Nose, Payload], mass: {{whole}} g ± 2 g, stowed: no, motor: no}]
            """));
        Assert.Equal((whole - 718) / 1000.0, answer.Findings.Single(f => f.Name.EndsWith("less the sum of its parts", StringComparison.Ordinal)).Value, 1e-9);
        Assert.Equal(explained ? Verdict.Clear : Verdict.Stop, answer.Findings.Single(f => f.Name.Contains("chance", StringComparison.Ordinal)).Verdict);
        Assert.Equal(explained, !answer.Notes.Any(n => n.Contains("not accounted for", StringComparison.Ordinal)));

        // (1 g)² over three variances of 1 g², by hand: 1/3, of which chance gives more in 56 of 100; (30 g)² gives 300.
        var sums = answer.Working.Steps.Single(s => s.Meaning.StartsWith("chi squared", StringComparison.Ordinal)).Value;
        Assert.Equal(explained ? 1.0 / 3 : 300, sums, 1e-6);
    }

    // 2 kg on lines 0.5 m apart, 1 m long, 2 s: m g d² T²/(16 π² L) by hand with g = 9.80665 m/s² is 0.12420 kg m².
    [Fact]
    public void A_swing_gives_the_inertia()
    {
        var answer = Ask(Read("  swung: [{parts: [Booster], apart: 0.5 m, lines: 1 m, period: 2 s, mass: 2 kg, stowed: no, motor: no}]"));
        Assert.Equal(0.12420, answer.Findings.Single(f => f.Name == "Booster: inertia across the axis, from the swing").Value, 5e-6);
    }

    [Fact]
    public void Every_answer_of_the_desk_is_told_before_and_after()
    {
        var effects = Ask(With(("Payload mass", "800 g"))).Tables.Single(t => t.Title == "What it does to the answers");
        var weight = effects.Rows.Single(r => r.Cells[0].Words == "weight");
        var drawn = Studies.Of(Design).Nominal!;
        var built = Studies.Of(With(("Payload mass", "800 g"))).Nominal!;
        Assert.Equal(Shown.Text(drawn.LoadedMass, Unit.Mass, drawn.Rocket.Inch), weight.Cells[2].Words);
        Assert.Equal(Shown.Text(built.LoadedMass, Unit.Mass, built.Rocket.Inch), weight.Cells[3].Words);
        Assert.NotEqual(weight.Cells[2].Words, weight.Cells[3].Words);
    }

    private static RocketDesign With(params (string What, string Value)[] measured) =>
        Read("  measured:\n" + string.Concat(measured.Select(m => $"    - {{what: {m.What}, value: {m.Value}}}\n")));

    private static RocketDesign Read(string records)
    {
        var reading = DesignFile.ReadText(PlainDesign.Text("Case") + (records.Length == 0 ? "" : $"\nrecords:\n{records}"));
        Assert.Empty(reading.Problems);
        return reading.Design!;
    }

    private static Answer Ask(RocketDesign design) => Questionnaire.Named("as-built")!.Ask(Studies.Of(design).Nominal!);
}
