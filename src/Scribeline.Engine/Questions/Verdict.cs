namespace Scribeline.Engine.Questions;

/// <summary>Words for verdicts.</summary>
public static class VerdictWords
{
    /// <summary>The word shown.</summary>
    public static string Word(this Verdict verdict) => verdict.ToString().ToLowerInvariant();
}

/// <summary>What an answer says of its limits, mildest first.</summary>
public enum Verdict
{
    /// <summary>Every limit is met with room.</summary>
    Clear,

    /// <summary>Met, but near the limit or not surely.</summary>
    Watch,

    /// <summary>An input is missing, so nothing can be said.</summary>
    Open,

    /// <summary>A limit is not met.</summary>
    Stop,
}
