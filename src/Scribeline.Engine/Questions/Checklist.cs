using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>A short list for one place and phase of launch day, read aloud by one person and answered by another.</summary>
/// <param name="Phase">When and where.</param>
/// <param name="Items">In the order of the walk round the rocket; what kills stands early.</param>
/// <param name="Closing">What is said when the list is done.</param>
public sealed record Checklist(string Phase, ValueList<CheckItem> Items, string Closing);

/// <summary>An item of a list.</summary>
/// <param name="Challenge">What is read.</param>
/// <param name="Response">What is seen and said, never just "checked".</param>
/// <param name="Hold">Whether everything stops here until it is so.</param>
public sealed record CheckItem(string Challenge, string Response, bool Hold = false);
