using Scribeline.Engine.Quantities;

namespace Scribeline.App.Json;

/// <summary>The document of the check command, and of any other that was stopped by its input. docs/json.md describes it.</summary>
/// <param name="Format">Version of the format.</param>
/// <param name="Kind">Always "problems".</param>
/// <param name="File">Design file as given.</param>
/// <param name="Problems">By place in the file; empty when there are none.</param>
internal sealed record ProblemsJson(int Format, string Kind, string File, IReadOnlyList<ProblemJson> Problems)
{
    /// <summary>The document for a set of problems.</summary>
    public static ProblemsJson Of(string file, IEnumerable<Problem> problems) => new(
        JsonText.Format, "problems", file, [.. problems.Select(p => new ProblemJson(p.File ?? file, p.Line, p.Column, p.At, p.Message, p.Suggestion))]);
}

/// <summary>One problem.</summary>
internal sealed record ProblemJson(string File, int? Line, int? Column, string At, string Message, string Instead);
