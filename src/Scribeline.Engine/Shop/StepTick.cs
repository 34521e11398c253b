namespace Scribeline.Engine.Shop;

/// <summary>A step of the build, ticked off or taken back.</summary>
/// <param name="Step">Id of the step.</param>
/// <param name="Done">Whether it is done.</param>
/// <param name="Note">The builder's words; may be empty.</param>
/// <param name="At">When it was said.</param>
public sealed record StepTick(string Step, bool Done, string Note, DateTimeOffset At);
