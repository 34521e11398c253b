namespace Scribeline.Engine.Questions;

/// <summary>One rocket on one day with its records; its results are computed once, when first asked for.</summary>
public sealed class Study;
