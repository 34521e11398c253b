using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.App.Terminal;

/// <summary>Problems as a person, and an editor, reads them: file:line:column first, what is wrong, what to type instead.</summary>
/// <param name="to">What is written to.</param>
/// <param name="file">The design file as the person named it.</param>
internal sealed class ProblemPage(TextWriter to, string file)
{
    /// <summary>Writes every problem. Lines are not wrapped, so that editors can jump to the place.</summary>
    public void Write(IReadOnlyCollection<Problem> problems)
    {
        foreach (var problem in problems)
        {
            to.WriteLine($"{Place(problem)}: {problem.Message}");
            if (problem.Suggestion.Length > 0) to.WriteLine($"    {problem.Suggestion}");
        }
    }

    /// <summary>Where a problem is, as compilers write it.</summary>
    public string Place(Problem problem)
    {
        var place = problem.File ?? file;
        if (problem.Line is { } line) place += string.Create(CultureInfo.InvariantCulture, $":{line}");
        if (problem.Line is not null && problem.Column is { } column) place += string.Create(CultureInfo.InvariantCulture, $":{column}");
        return problem.Line is null && problem.At.Length > 0 ? $"{place}: {problem.At}" : place;
    }
}
