using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>What a builder says of a build, checked before any of it is kept.</summary>
/// <param name="build">The steps.</param>
/// <param name="network">Their network.</param>
/// <param name="known">What can be measured.</param>
/// <param name="now">The time it is.</param>
internal sealed class BuildEntries(BuildSteps build, PrecedenceNetwork network, ValueList<PlannedMeasure> known, DateTimeOffset now)
{
    /// <summary>What can be measured.</summary>
    public ValueList<PlannedMeasure> Known => known;

    /// <summary>Keeps ticks, unless something must come first.</summary>
    public void Tick(Logbook book, IReadOnlyList<string> done, IReadOnlyList<string> undo, string note, List<Problem> problems)
    {
        if (done.Count + undo.Count == 0 || Read(book.Progress(), problems) is not { } ticks) return;
        var progress = BuildProgress.Of(build, network, ticks, now).Steps.ToDictionary(s => s.Step.Id);
        var taken = undo.SelectMany(u => Meant(u, problems)).ToValueList();
        var ticked = done.SelectMany(d => Meant(d, problems)).Where(s => progress[s.Id].State != StepState.Done || taken.Contains(s)).ToValueList();
        var ids = ticked.Select(s => s.Id).ToHashSet();
        foreach (var step in ticked)
        {
            // A wait that only misses what is ticked here, or is over, is no hindrance.
            if (Hindrance(step.Id, ids, progress) is { } first)
                problems.Add(new("", $"{step.Id} comes after {first.Before}: {first.Reason}.", progress[first.Before].State == StepState.Sets ? $"It sets; if it has set already, add --done {first.Before}" : $"Add --done {first.Before}, if that is done."));
        }

        if (problems.Count > 0) return;
        foreach (var step in taken) Read(book.Tick(step.Id, false, note, now), problems);
        foreach (var step in ticked) Read(book.Tick(step.Id, true, note, now), problems);
    }

    /// <summary>Keeps measured values, or takes them back.</summary>
    public void Measure(Logbook book, IReadOnlyList<string> typed, List<Problem> problems)
    {
        List<(PlannedMeasure What, string Value)> values = [];
        foreach (var text in typed)
        {
            var equals = text.IndexOf('=', StringComparison.Ordinal);
            var (name, value) = equals < 0 ? (text, "") : (text[..equals].Trim(), text[(equals + 1)..].Trim());
            if (equals < 0) problems.Add(new("", $"'{text}' has no = between the name and the value.", "Type for example --measured \"Booster mass = 1446 g ± 2 g\""));
            else if (DesignMeasures.Find(known, name) is not { } what) problems.Add(new("", $"Nothing here is called '{name}'.", DesignMeasures.Suggest(known, name)));
            else if (value.Length > 0 && what.Read(value) is { Good: false } reading) problems.Add(new("", $"{what.Name}: {reading.Problem.Message}", reading.Problem.Suggestion));
            else values.Add((what, value));
        }

        if (problems.Count > 0) return;
        foreach (var (what, value) in values)
            Read(book.Measure(what.Name, value, build.Steps.FirstOrDefault(s => s.Asks.Contains(what.Name))?.Id ?? "", now), problems);
    }

    /// <summary>Writes the measured values into the design, and keeps the revision.</summary>
    public void Write(Logbook book, string path, string text, List<Problem> problems)
    {
        if (Read(book.Measured(), problems) is not { } measured) return;
        foreach (var value in measured)
        {
            if (DesignMeasures.Find(known, value.What) is not { } what) continue;
            var change = DesignText.Measured(text, what.At, value.Value);
            if (change.Problem is { } problem) problems.Add(problem);
            text = change.Text;
        }

        if (problems.Count == 0 && measured.Count > 0) DesignSaving.Write(book, path, text, "Measured values written into their places", now, problems);
    }

    private Precedence? Hindrance(string id, HashSet<string> ticked, Dictionary<string, StepProgress> progress) =>
        network.Before(id).FirstOrDefault(p => p.Hard && !ticked.Contains(p.Before) && progress[p.Before].State != StepState.Done);

    // A step by its id, or all work at a place.
    private BuildStep[] Meant(string typed, List<Problem> problems)
    {
        if (build.Named(typed.Trim()) is { } step) return [step];
        var place = build.Steps.Where(s => s.Place == typed.Trim() && s.HandsOn).ToArray();
        if (place.Length == 0) problems.Add(new("", $"There is no step '{typed}'.", Suggest(typed)));
        return place;
    }

    private string Suggest(string typed) => Spelling.Nearest(typed, build.Steps.Select(s => s.Id)) is { } near
        ? $"Did you mean {near}?"
        : $"Steps are shown with --all; places are {string.Join(", ", build.Steps.Select(s => s.Place).Distinct())}.";

    private static T? Read<T>(Logged<T> logged, List<Problem> problems)
        where T : class
    {
        if (logged.Problem is { } problem) problems.Add(problem);
        return logged.Value;
    }
}
