namespace Scribeline.Engine.Quantities;

/// <summary>Something wrong with what was typed: where, what, and what to type instead.</summary>
/// <param name="At">Path in the file, such as <c>parts[2].fins.root</c>; empty for the file as a whole.</param>
/// <param name="Message">What is wrong, a whole sentence.</param>
/// <param name="Suggestion">What to type or do instead; empty where nothing can be suggested.</param>
/// <param name="Line">Line in the file, from 1; null where not known.</param>
/// <param name="Column">Column in the line, from 1; null where not known.</param>
public sealed record Problem(string At, string Message, string Suggestion = "", int? Line = null, int? Column = null)
{
    /// <summary>One line: place, message, suggestion.</summary>
    public override string ToString()
    {
        var place = Line is null ? At : Column is null ? $"line {Line}" : $"line {Line}, column {Column}";
        var path = Line is not null && At.Length > 0 ? $" ({At})" : "";
        var text = place.Length + path.Length > 0 ? $"{place}{path}: {Message}" : Message;
        return Suggestion.Length > 0 ? $"{text} {Suggestion}" : text;
    }
}
