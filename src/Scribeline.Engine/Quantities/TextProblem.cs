namespace Scribeline.Engine.Quantities;

/// <summary>What is wrong with one typed value.</summary>
/// <param name="Position">Index in the text where it goes wrong, from 0; the text's length if something is missing at its end.</param>
/// <param name="Message">What is wrong, a whole sentence.</param>
/// <param name="Suggestion">What to type instead, a whole sentence; may be empty.</param>
public sealed record TextProblem(int Position, string Message, string Suggestion);
