using System.Text.RegularExpressions;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Tests.Examples;

/// <summary>
/// The example that is wrong on purpose: every fault its readme lists is found by the question named there, under the name of the thing that is
/// wrong, and no question stops that the readme does not name.
/// </summary>
public partial class PlantedFaultTests
{
    private static readonly Study Study = Example.Nominal("corn-crake");

    private static string Readme => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", "corn-crake", "README.md"));

    public static TheoryData<string, string, string> Planted()
    {
        TheoryData<string, string, string> rows = [];
        foreach (Match row in Row().Matches(Readme)) rows.Add(row.Groups["fault"].Value.Trim(), row.Groups["question"].Value, row.Groups["thing"].Value);
        return rows;
    }

    [Fact]
    public void Ten_faults_are_planted() =>
        Assert.Equal(
            [
                "cord too weak", "hole on the rail line", "hole too near an edge", "joint without a key", "main too tight to pack", "no backup", "plate too thin",
                "port behind a screw head", "screw in a coupler's path", "wing nut in the tube",
            ],
            Planted().Select(r => r.Data.Item1).Distinct().Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Planted))]
    public void Every_planted_fault_is_found_and_named(string fault, string question, string thing)
    {
        var answer = Questionnaire.Named(question)!.Ask(Study);
        Assert.True(answer.Verdict == Verdict.Stop, fault);
        Assert.Contains(Stops(answer), text => text.Contains(thing, StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_else_stops()
    {
        var named = Planted().Select(r => r.Data.Item2).Order(StringComparer.Ordinal).Distinct();
        Assert.Equal(named, Questionnaire.All.Where(q => q.Ask(Study).Verdict == Verdict.Stop).Select(q => q.Id).Order(StringComparer.Ordinal));
    }

    // The names of findings that stop, and the rows of tables that do.
    private static IEnumerable<string> Stops(Answer answer) => answer.Findings.Where(f => f.Verdict == Verdict.Stop).Select(f => f.Name)
        .Concat(answer.Tables.SelectMany(t => t.Rows.Where(r => r.Verdict == Verdict.Stop).Select(r => string.Join(", ", r.Cells.Select(c => c.Words)))));

    [GeneratedRegex(@"^\| (?<fault>[a-z][^|]*)\|[^|]*\| `(?<question>[a-z-]+)` \| `(?<thing>[^`]+)` \|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
