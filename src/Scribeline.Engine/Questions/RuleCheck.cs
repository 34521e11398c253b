namespace Scribeline.Engine.Questions;

/// <summary>A condition as it stands for one rocket on one day.</summary>
/// <param name="Id">Short and unique, such as N06c; O1, O2 ... for the site's own conditions.</param>
/// <param name="Set">Rules it belongs to.</param>
/// <param name="Number">Its number in them.</param>
/// <param name="Text">In plain words.</param>
/// <param name="Source">Publication, edition and number.</param>
/// <param name="State">How it stands.</param>
/// <param name="Compared">What was compared, or what helps a person to judge.</param>
public sealed record RuleCheck(string Id, string Set, string Number, string Text, string Source, RuleState State, string Compared)
{
    /// <summary>The value compared and its bound; null where a person judges, or something is missing.</summary>
    public Finding? Finding { get; init; }

    /// <summary>What to type so that it can be compared; empty where nothing is missing.</summary>
    public string Missing { get; init; } = "";

    /// <summary>When a person confirmed it; null where nobody did.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>Whether a confirmation holds whatever the weather turns to.</summary>
    public bool Ahead { get; init; }

    /// <summary>Whether a person judges it, and nobody else can.</summary>
    public bool ByPerson => State is RuleState.ToConfirm or RuleState.Confirmed;

    /// <summary>How it stands, in words.</summary>
    public string Word => State switch
    {
        RuleState.Met => "met",
        RuleState.NotMet => "not met",
        RuleState.ToConfirm => "to be confirmed",
        RuleState.Confirmed => "confirmed by a person",
        RuleState.Missing => "not known",
        RuleState.Told => "told",
        _ => "does not apply",
    };

    /// <summary>How it stands as a verdict; null where there is nothing to meet. A person's word is never more than a person's word.</summary>
    public Verdict? Verdict => State switch
    {
        RuleState.Met or RuleState.Confirmed => Questions.Verdict.Clear,
        RuleState.NotMet => Questions.Verdict.Stop,
        RuleState.ToConfirm or RuleState.Missing => Questions.Verdict.Open,
        _ => null,
    };
}

/// <summary>How a condition stands.</summary>
public enum RuleState
{
    /// <summary>Compared, and met.</summary>
    Met,

    /// <summary>Compared, and not met.</summary>
    NotMet,

    /// <summary>Only a person can say, and nobody has yet.</summary>
    ToConfirm,

    /// <summary>A person has confirmed it for this day, design and motor.</summary>
    Confirmed,

    /// <summary>What would be compared was not typed.</summary>
    Missing,

    /// <summary>It does not hold for this rocket on this day.</summary>
    NotApplying,

    /// <summary>Nothing is to be met.</summary>
    Told,
}

/// <summary>That a person confirmed a condition. It holds for the day, design and motor it was given for; who keeps it sees to that.</summary>
/// <param name="Rule">Id of the condition.</param>
/// <param name="At">When.</param>
public sealed record Confirmation(string Rule, DateTimeOffset At);
