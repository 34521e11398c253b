namespace Scribeline.Engine.Resolving;

/// <summary>A builder's own bound in place of the table's.</summary>
/// <param name="Id">Id of the limit.</param>
/// <param name="Value">The bound, SI.</param>
public sealed record OwnLimit(string Id, double Value);
