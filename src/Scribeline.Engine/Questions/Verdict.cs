namespace Scribeline.Engine.Questions;

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
