using Scribeline.App.Commands;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Documents;

/// <content>What is built of it, and what was measured, in the logbook beside it.</content>
public sealed partial class DesignDocument
{
    private ValueList<MeasuredValue>? measured;
    private (int Version, Study? Study) drawn = (-1, null);

    /// <summary>A study of the text as it is this moment, of which nothing is asked yet; null where the text cannot be read or resolved.</summary>
    public Study? Drawn
    {
        get
        {
            lock (gate)
            {
                if (drawn.Version != history.Version) drawn = (history.Version, reading.Good ? Studies.Of(AsBuilt(reading.Design!), LiveAnswers.Seed) is { Problems.Count: 0 } studies ? studies.Nominal : null : null);
                return drawn.Study;
            }
        }
    }

    /// <summary>The latest value of everything measured.</summary>
    public ValueList<MeasuredValue> Measured => measured ??= journal.Measured.Value ?? [];

    /// <summary>Those of them that count in the answers: what the design no longer has is left out.</summary>
    public ValueList<MeasuredValue> Counted => Reading.Design is { } design ? Measured.Except(MeasuredRecords.AddTo(design, Measured).Strangers).ToValueList() : [];

    /// <summary>How far the build of a study of it has come; null where its steps wait for each other.</summary>
    /// <param name="study">A study of the design.</param>
    /// <param name="now">The time it is.</param>
    public BuildProgress? Progress(Study study, DateTimeOffset now) =>
        study.BuildOrder.Network is { } network ? BuildProgress.Of(study.Rocket.Build, network, journal.Ticks.Value ?? [], now) : null;

    /// <summary>Ticks off a step, or takes that back.</summary>
    /// <returns>Why not; empty where it was kept.</returns>
    public ValueList<Problem> Tick(Study study, string step, bool done, string note, DateTimeOffset now) =>
        Enter(study, now, (entries, book, problems) => entries.Tick(book, done ? [step] : [], done ? [] : [step], note, problems));

    /// <summary>Keeps a measured value, which every answer uses from then on; nothing takes it back.</summary>
    /// <returns>Why not; empty where it was kept.</returns>
    public ValueList<Problem> Measure(Study study, string what, string value, DateTimeOffset now)
    {
        var problems = Enter(study, now, (entries, book, found) => entries.Measure(book, [$"{what} = {value}"], found));
        if (problems.Count > 0) return problems;
        lock (gate)
        {
            measured = null;
            drawn = (-1, null);
            Ask();
        }

        return problems;
    }

    // Another program, such as the terminal, may tick steps off, confirm, note shots and keep what was measured.
    private bool LookIntoLogbook()
    {
        if (!journal.IsWrittenByOthers()) return false;
        (measured, shots, drawn) = (null, null, (-1, null));
        Ask();
        return true;
    }

    private RocketDesign AsBuilt(RocketDesign design) => ShotRecords.AddTo(MeasuredRecords.AddTo(design, Measured).Design, Shots);

    private ValueList<Problem> Enter(Study study, DateTimeOffset now, Action<BuildEntries, Logbook, List<Problem>> what)
    {
        if (study.BuildOrder.Network is not { } network || Reading.Design is not { } design) return [];
        BuildEntries entries = new(study.Rocket.Build, network, DesignMeasures.Of(design), now);
        var problems = journal.Enter((book, found) => what(entries, book, found));
        Changed?.Invoke();
        return problems;
    }
}
