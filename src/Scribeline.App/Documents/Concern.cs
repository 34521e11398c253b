namespace Scribeline.App.Documents;

/// <summary>That a question rests on a value.</summary>
/// <param name="Question">Id of the question.</param>
/// <param name="Pattern">Path without the numbers of its lists, such as <c>parts.fins.span</c>.</param>
/// <param name="Weight">How much.</param>
internal sealed record Concern(string Question, string Pattern, ConcernWeight Weight);
