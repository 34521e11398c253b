namespace Scribeline.Engine.Quantities;

/// <summary>Something wrong with what was typed: where, what, and what to type instead.</summary>
/// <param name="At">Path in the file, such as <c>parts[2].fins.root</c>; empty for the file as a whole.</param>
/// <param name="Message">What is wrong, a whole sentence.</param>
/// <param name="Suggestion">What to type or do instead; empty where nothing can be suggested.</param>
/// <param name="Line">Line in the file, from 1; null where not known.</param>
/// <param name="Column">Column in the line, from 1; null where not known.</param>
/// <param name="File">File the line belongs to, where it is not the design file itself; null otherwise.</param>
public sealed record Problem(string At, string Message, string Suggestion = "", int? Line = null, int? Column = null, string? File = null)
{
    /// <summary>One line: place, message, suggestion.</summary>
    public override string ToString()
    {
        var line = Line is null ? "" : Column is null ? $"line {Line}" : $"line {Line}, column {Column}";
        var place = File is null ? line.Length > 0 ? line : At : line.Length > 0 ? $"{File}, {line}" : File;
        var path = Line is not null && At.Length > 0 ? $" ({At})" : "";
        var text = place.Length + path.Length > 0 ? $"{place}{path}: {Message}" : Message;
        return Suggestion.Length > 0 ? $"{text} {Suggestion}" : text;
    }
}
