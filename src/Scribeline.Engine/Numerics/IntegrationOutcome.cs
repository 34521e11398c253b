namespace Scribeline.Engine.Numerics;

/// <summary>Why a run ended.</summary>
public enum IntegrationOutcome
{
    /// <summary>The end time was reached.</summary>
    Reached,

    /// <summary>A terminal event happened.</summary>
    Event,

    /// <summary>Failure: more steps than allowed.</summary>
    TooManySteps,

    /// <summary>Failure: the step fell to the rounding of the time (a jump no stop was set at, or a singularity).</summary>
    StepTooSmall,

    /// <summary>Failure: the state or its derivative is not finite at the start.</summary>
    NotFinite,
}
