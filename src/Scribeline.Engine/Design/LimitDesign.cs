namespace Scribeline.Engine.Design;

/// <summary>A limit of the builder's own.</summary>
/// <param name="Id">Id of the limit, such as <c>stable.margin</c>.</param>
/// <param name="Text">As typed; its kind of quantity is that of the limit it replaces.</param>
/// <param name="At">Path in the file.</param>
public sealed record LimitDesign(string Id, string Text, string At = "");
