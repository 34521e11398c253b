using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Json;

/// <summary>The document of the build command. docs/json.md describes it.</summary>
internal sealed record BuildJson(int Format, string Kind, string Design, string File, IReadOnlyList<BuildStepJson> Steps, IReadOnlyList<MeasuredJson> Measured)
{
    /// <summary>The document for a build.</summary>
    public static BuildJson Of(string design, string file, BuildProgress progress, ValueList<MeasuredValue> measured) => new(
        JsonText.Format,
        "build",
        design,
        file,
        [.. progress.Steps.Select(s => new BuildStepJson(
            s.Step.Id, s.State.ToString().ToLowerInvariant(), s.At, s.Note, s.Step.Says, s.Step.Duration, s.Step.HandsOn, [.. s.Waits.Where(w => w.Hard).Select(w => w.Before)], s.Step.Asks))],
        [.. measured.Select(m => new MeasuredJson(m.What, m.Value, m.Step, m.At))]);
}

/// <summary>A step: its state (done, sets, next, later), when it was done or will have set, and its time, s.</summary>
internal sealed record BuildStepJson(
    string Id, string State, DateTimeOffset? At, string Note, string Says, double Time, bool Hands, IReadOnlyList<string> WaitsFor, IReadOnlyList<string> Asks);

/// <summary>A measured value as typed.</summary>
internal sealed record MeasuredJson(string What, string Value, string Step, DateTimeOffset At);
