using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>What a question was answered with. Faces show it; they compute nothing.</summary>
/// <param name="Question">The question.</param>
/// <param name="Findings">Values; the first is the headline. Empty only when open.</param>
/// <param name="Basis">Weakest basis among the inputs that matter.</param>
/// <param name="Working">From the inputs to the findings.</param>
/// <param name="Plots">Pictures, possibly none.</param>
/// <param name="Notes">Remarks and cautions in plain sentences.</param>
/// <param name="Missing">Inputs that are not there: what to type, and where. Any makes the answer open.</param>
public sealed record Answer(
    Question Question,
    ValueList<Finding> Findings,
    Basis Basis,
    Working Working,
    ValueList<Plot> Plots,
    ValueList<string> Notes,
    ValueList<string> Missing)
{
    /// <summary>Schedules and lists, possibly none.</summary>
    public ValueList<AnswerTable> Tables { get; init; } = [];

    /// <summary>Maps of the ground, possibly none.</summary>
    public ValueList<GroundMap> Maps { get; init; } = [];

    /// <summary>Open when an input is missing; otherwise the gravest among the findings.</summary>
    public Verdict Verdict => Findings.Any(f => f.Verdict == Verdict.Stop) ? Verdict.Stop
        : Missing.Count > 0 || Findings.Count == 0 ? Verdict.Open
        : Findings.Max(f => f.Verdict);

    /// <summary>The first finding that decides the verdict; the headline where all is clear or an input is missing. Null where there is none.</summary>
    public Finding? Governing => Findings.FirstOrDefault(f => f.Verdict == Verdict) ?? (Findings.Count > 0 ? Findings[0] : null);

    /// <summary>Whether it waits for the record of a flight, so that whether the rocket may fly does not hang on it.</summary>
    public bool AwaitsFlight => Question.Place == Place.Log && Findings.Count == 0;

    /// <summary>An answer that cannot be given, naming the inputs to type.</summary>
    public static Answer Open(Question question, params ReadOnlySpan<string> missing) =>
        new(question, [], Basis.Estimated, new Working(), [], [], ValueList.Of(missing));
}
