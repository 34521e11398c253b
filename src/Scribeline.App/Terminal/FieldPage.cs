using System.Globalization;
using Scribeline.Engine.Questions;
using Spectre.Console;

namespace Scribeline.App.Terminal;

/// <summary>A day at the field as a person reads it at a terminal: what the rules ask, how far the lists are, what comes next.</summary>
/// <param name="page">Where it is written.</param>
/// <param name="study">The rocket on its day.</param>
/// <param name="clock">For times of day.</param>
internal sealed class FieldPage(Page page, Study study, TimeProvider clock)
{
    private const int Indent = 3;

    /// <summary>Writes the state of a day.</summary>
    public void Write(string file, DayProgress progress, bool all)
    {
        page.Paragraph(study.Rocket.Name, style: Page.Bold);
        page.Paragraph(file, style: Page.Quiet);
        if (study.Missing.Count == 0) Rules(all);
        foreach (var missing in study.Missing) page.Paragraph(missing, Indent, Page.Quiet, "missing: ");
        if (all) All(progress);
        else Next(progress);
        page.Gap();
        page.Paragraph(Cautions.Pad, style: Page.Quiet);
        page.Paragraph(Cautions.Everything, style: Page.Quiet);
    }

    private void Rules(bool all)
    {
        var checks = study.RuleChecks;
        Heading("Conditions of the rules");
        if (checks.Count == 0) page.Paragraph("The site names no rules. Type them in the site file, such as rules: [14 CFR 101, NAR high power 2012]", Indent);
        var counts = checks.GroupBy(c => c.Word).Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Count()} {g.Key}"));
        if (checks.Count > 0) page.Paragraph(string.Join(", ", counts), Indent);
        foreach (var check in checks.Where(c => all || c.State is RuleState.NotMet or RuleState.Missing or RuleState.ToConfirm))
        {
            page.Paragraph($"{check.Text} [{check.Number}]", Indent, all ? Page.Quiet : Style.Plain, $"{(check.Verdict is { } verdict ? VerdictMark.Shape(verdict) : " ")} {check.Id,-4} ");
            if (check.Compared.Length > 0) page.Paragraph(check.Compared, Indent + 7, Page.Quiet);
            if (check.Missing.Length > 0) page.Paragraph(check.Missing, Indent + 7, Page.Quiet, "missing: ");
            if (all || check.State != RuleState.ToConfirm) page.Paragraph(check.At is { } at ? $"{check.Word}, {Clock(at)}" : check.Word, Indent + 7, Page.Quiet);
        }
    }

    private void Next(DayProgress progress)
    {
        Heading("Lists");
        foreach (var list in progress.Items.GroupBy(i => i.List))
        {
            var done = list.Count(i => i.At is not null);
            page.Paragraph(string.Create(CultureInfo.InvariantCulture, $"{list.Key.Phase}: {(done == list.Count() ? "all" : done)} of {list.Count()} done"), Indent);
        }

        if (progress.Next is not { } next)
        {
            page.Paragraph("Every list of the day is done.", Indent, Page.Bold);
            return;
        }

        Heading($"Next: {next.List.Phase}");
        foreach (var item in progress.In(next.List).SkipWhile(i => i.Id != next.Id)) Write(item);
        page.Paragraph(next.List.Closing, Indent, Page.Quiet);
    }

    private void All(DayProgress progress)
    {
        foreach (var list in progress.Items.GroupBy(i => i.List))
        {
            Heading(list.Key.Phase);
            foreach (var item in list) Write(item);
            page.Paragraph(list.Key.Closing, Indent, Page.Quiet);
        }
    }

    private void Write(DayItemState item)
    {
        page.Paragraph($"{item.Item.Challenge}: {item.Item.Response}", 2 * Indent, item.Item.Hold ? Page.Bold : Style.Plain, $"{(item.At is null ? "[ ]" : "[x]")} {(item.Item.Hold ? "HOLD " : "")}");
        page.Paragraph(string.Join("; ", new[] { item.Id, item.At is { } at ? $"ticked {Clock(at)}" : "", item.Item.Source }.Where(t => t.Length > 0)), 2 * Indent, Page.Quiet);
    }

    private void Heading(string words)
    {
        page.Gap();
        page.Paragraph(words, style: Page.Bold);
    }

    private string Clock(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, clock.LocalTimeZone).ToString("HH:mm:ss", CultureInfo.InvariantCulture);
}
