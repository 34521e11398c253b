using System.Globalization;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using static System.Math;

namespace Scribeline.Engine.Questions.Bench;

/// <summary>What do I print? Strips, plates, rings and fins at true size, with arc lengths to check by tape, and a list of what to cut.</summary>
public sealed class Templates() : Question("templates", "What do I print?", Place.Bench)
{
    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        foreach (var missing in study.HoleSchedule.Missing.Where(m => m.Contains("clock", StringComparison.Ordinal) || m.Contains("from edge", StringComparison.Ordinal))) draft.Miss(missing);
        var strips = study.WrapTemplates;
        if (strips.Count == 0) draft.Miss("parts: tubes that meet, with holes or fins");
        draft.Find("strips to wrap", strips.Count, Unit.Count);
        draft.Find("plates and rings", study.Plates.Count, Unit.Count);
        draft.Find("sheets of A4 for strips and plates, each by itself", Sheets(study, Sheet.A4), Unit.Count);
        draft.Find("sheets of US Letter for strips and plates, each by itself", Sheets(study, Sheet.Letter), Unit.Count);
        Circumferences(draft, study, strips);
        draft.List(() => Strips(strips));
        draft.List(() => Arcs(strips));
        draft.List(() => CutList.Of(study));
        draft.Note("Print at 100 %, not fitted to the page, and measure the bar on every sheet both ways. Fitting usually shrinks to 93 to 97 %.");
        draft.Note("Check each strip with a tape before it is cut: its length must just close round the tube. A tube that measures otherwise: type the measured outside.");
        if (strips.Count > 0)
        {
            var scale = DrillWander.Scale(0.1e-3, 0.15);
            draft.Note(string.Create(CultureInfo.InvariantCulture, $"A bar of 150 mm read to 0.1 mm at each end leaves {100 * scale:F2} %: {1000 * scale * strips.Max(s => s.Length):F2} mm round the widest tube."));
        }

        if (study.Plates.Count > 0)
            draft.Note(string.Create(CultureInfo.InvariantCulture, $"A circle cutter wants {60 * DrillWander.CutterTurns(study.Plates.Max(p => p.Diameter)):F0} rev/min or less for the widest plate, from both faces on one pilot hole; plan a use for that hole or plug it."));
        draft.Note("Paper grows with damp, most across its grain: measure the bar again when the sheet is used.");
        return draft.Done();
    }

    private static int Sheets(Study study, Sheet sheet) =>
        study.WrapTemplates.Sum(s => sheet.Pages(s.Length + WrapTemplate.Tab, s.Height)) + study.Plates.Sum(p => sheet.Pages(p.Diameter, p.Diameter));

    // One step for each diameter: strips of like tubes are of one length.
    private static void Circumferences(Draft draft, Study study, ValueList<WrapTemplate> strips)
    {
        var w = draft.Working;
        var t = w.Given("t", study.Rocket.Shop.Practice.Paper, "m", "thickness of the paper", "design, or common practice for 80 g/m² office paper");
        foreach (var (group, i) in strips.GroupBy(s => s.Diameter).Select((g, i) => (g, i + 1)))
        {
            (string, string)[] names = [("D", $"D_{i}"), ("C", $"C_{i}"), ("e", $"e_{i}")];
            var who = string.Join(", ", group.Select(s => s.PartName).Distinct());
            var D = w.Given($"D_{i}", group.Key, "m", $"outside where the strip lies: {who}", "design");
            var C = w.StepOf($"C_{i}", PI * (D + t), "m", "length that just closes", "the paper bends about its own middle", names);
            draft.Find($"length of strip round {Shown.Text(group.Key, Unit.Length, study.Rocket.Inch)}: {who}", C, Unit.Length);
            w.StepOf($"e_{i}", 0.005 * C, "m", "gap or lap at the seam if the print is out by half a per cent", "definition", names);
        }
    }

    private static AnswerTable Strips(ValueList<WrapTemplate> strips) => new(
        "Strips",
        [
            new("strip"), new("length", Unit.Length), new("height", Unit.Length), new("third", Unit.Length), new("quarter", Unit.Length), new("10 degrees", Unit.Length),
            new("lay against"), new("A4", Unit.Count), new("US Letter", Unit.Count),
        ],
        strips.Select(s => TableRow.Of(
            null, s.Name, s.Length, s.Height, s.Length / 3, s.Length / 4, s.Length / 36, s.Register.Name, Sheet.A4.Pages(s.Length + WrapTemplate.Tab, s.Height),
            Sheet.Letter.Pages(s.Length + WrapTemplate.Tab, s.Height))).ToValueList());

    private static AnswerTable Arcs(ValueList<WrapTemplate> strips) => new(
        "Arc lengths to check with a tape, from the scribe line to the right with the nose up",
        [new("strip"), new("mark"), new("arc", Unit.Length), new("from its forward edge", Unit.Length)],
        strips.SelectMany(s =>
            s.Lines.Where(l => l.Kind == WrapLineKind.Fin && s.Kind == WrapKind.Fins).Select(l => TableRow.Of(null, s.Name, l.Name, l.Along, ""))
                .Concat(s.Marks.Select(m => TableRow.Of(null, s.Name, m.Hole.Mark, m.Along, m.Down)))).ToValueList());
}
