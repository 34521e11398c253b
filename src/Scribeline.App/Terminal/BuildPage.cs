using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Shop;
using Scribeline.Store.Logbooks;
using Spectre.Console;

namespace Scribeline.App.Terminal;

/// <summary>A build as a person reads it at a terminal: how far it is, what sets, what comes next.</summary>
/// <param name="page">Where it is written.</param>
/// <param name="rocket">What is built.</param>
/// <param name="known">What can be measured on it.</param>
/// <param name="clock">For times of day.</param>
internal sealed class BuildPage(Page page, Rocket rocket, ValueList<PlannedMeasure> known, TimeProvider clock)
{
    private const int MostNext = 5;
    private const int Indent = 3;

    /// <summary>Writes the state of a build.</summary>
    public void Write(string file, BuildProgress progress, ValueList<MeasuredValue> measured, bool all)
    {
        page.Paragraph(rocket.Name, style: Page.Bold);
        page.Paragraph(file, style: Page.Quiet);
        page.Gap();
        page.Paragraph(Summary(progress));
        foreach (var stranger in progress.Strangers) page.Paragraph($"{stranger} was ticked, but is no step of this design any more.", style: Page.Quiet);
        if (all) All(progress);
        else Next(progress);
        if (measured.Count > 0) Measured(measured);
    }

    private string Summary(BuildProgress progress)
    {
        var hands = progress.Steps.Where(s => s.Step.HandsOn).ToArray();
        var done = hands.Count(s => s.State == StepState.Done);
        var plan = EveningPlan.Of(progress.Left, rocket.Shop.Practice.Evening);
        return done == hands.Length && plan.Turns.Count == 0
            ? $"All {hands.Length} steps are done."
            : string.Create(CultureInfo.InvariantCulture, $"{done} of {hands.Length} steps done. Left: {Time(progress.Left.HandsOn)} of hands, on {plan.Evenings} evenings of {rocket.Shop.Practice.Evening / 3600:0.##} h; {Time(plan.Elapsed)} until the last of it has set.");
    }

    private void Next(BuildProgress progress)
    {
        var setting = progress.Setting.ToArray();
        if (setting.Length > 0)
        {
            Heading("Sets meanwhile");
            foreach (var wait in setting) page.Paragraph($"{wait.Step.Id}  until {Day(wait.At!.Value)}", Indent);
        }

        var next = progress.Next.ToArray();
        if (next.Length == 0) return;
        Heading(next.Length > MostNext ? $"Next, and {next.Length - MostNext} more that could be taken up" : "Next");
        foreach (var step in next.Take(MostNext)) Write(step, progress);
    }

    private void Write(StepProgress progress, BuildProgress whole)
    {
        var step = progress.Step;
        var wait = whole.Left.Times.First(t => t.Activity.Id == step.Id).Float;
        page.Paragraph(step.Id, Indent, Page.Bold);
        page.Paragraph(step.Says, 2 * Indent);
        page.Paragraph($"{Time(step.Duration)}; {(wait > 1 ? $"may wait {Time(wait)}" : "the end waits for it")}", 2 * Indent, Page.Quiet);
        foreach (var rather in progress.Rather) page.Paragraph($"{rather.Before}: {rather.Reason}", 2 * Indent, Page.Quiet, "better after ");
        foreach (var ask in step.Asks) page.Paragraph(known.FirstOrDefault(k => k.Name == ask)?.Plan is { } plan ? $"{ask}, planned {plan.Text}" : ask, 2 * Indent, Page.Quiet, "measure ");
        if (progress.Note.Length > 0) page.Paragraph(progress.Note, 2 * Indent, Page.Quiet, "note: ");
    }

    private void All(BuildProgress progress)
    {
        Heading("Every step");
        var table = new Table { Border = TableBorder.None, ShowHeaders = false, Expand = false };
        for (var i = 0; i < 4; i++) table.AddColumn(new Spectre.Console.TableColumn("") { Padding = new Padding(0, 0, i < 3 ? 2 : 0, 0) });
        foreach (var step in progress.Steps)
        {
            table.AddRow(
                new Text(step.State.ToString().ToLowerInvariant(), step.State is StepState.Next or StepState.Sets ? Page.Bold : Page.Quiet),
                new Text(step.Step.Id),
                new Text(Time(step.Step.Duration)),
                new Text(string.Join(" ", new[] { step.At is { } at ? (step.State == StepState.Sets ? "until " : "") + Day(at) : "", step.Note }.Where(t => t.Length > 0)), Page.Quiet));
        }

        page.Write(table);
    }

    private void Measured(ValueList<MeasuredValue> measured)
    {
        Heading("Measured, and used in every answer");
        foreach (var value in measured)
        {
            var planned = DesignMeasures.Find(known, value.What);
            page.Paragraph($"{value.What}: {value.Value}{(planned is null ? ", which is nothing in this design any more" : planned.Plan is { } plan ? $", planned {plan.Text}" : "")}", Indent);
        }
    }

    private void Heading(string words)
    {
        page.Gap();
        page.Paragraph(words, style: Page.Bold);
    }

    private static string Time(double seconds) => Shown.Text(seconds, Unit.WorkTime, inch: false);

    private string Day(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, clock.LocalTimeZone).ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);
}
