using System.Text.RegularExpressions;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Tests;

/// <summary>The log command as a process, on a copy of an example.</summary>
public sealed partial class LogCommandTests : IDisposable
{
    private readonly ScratchFolder scratch = ScratchFolder.WithExamples();

    private string Design => Path.Combine(scratch.At("night-heron"), "rocket.yaml");

    private string Record => Path.Combine(scratch.At("night-heron"), "flight.csv");

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Without_a_flight_it_says_how_to_add_one_and_begins_no_logbook()
    {
        var run = Log();
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains("Add one: scribeline log FILE --add flight.csv", run.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(scratch.At("night-heron"), Logbook.FileName)));
        var asked = Run.Of("answer", Design, "--samples", "0", "-q", "what-happened");
        Assert.Equal(1, asked.Code);
        Assert.Contains("scribeline log FILE --add flight.csv", Unwrapped(asked.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_flight_is_added_answered_accepted_taken_back_and_removed()
    {
        var before = File.ReadAllText(Design);
        var added = Log("--add", Record, "--flown", "4 October", "--note", "first", "--weather", Path.Combine(scratch.At("weather"), "cool-morning.yaml"));
        Assert.Equal((0, ""), (added.Code, added.Error));
        Assert.Contains("Kept as flight 1.", added.Output, StringComparison.Ordinal);
        Assert.Contains("flight 1: 4 October; flight.csv; first (asked about)", added.Output, StringComparison.Ordinal);
        Assert.Matches(@"apogee above the pad\s+629\d ft", added.Output);
        Assert.All(added.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));

        Assert.Equal(0, Log("--accept", "drag-scale", "--accept", "canopy-main").Code);
        var taught = File.ReadAllText(Design);
        Assert.Matches(@"(?m)^drag scale: \{value: 1\.1\d* ± 0\.\d+, known: flown\}$", taught);
        Assert.Matches(@"drag area: \{value: 2\.\d+ m² ± 0\.\d+ m², known: flown\}", taught);
        using (var book = Logbook.OpenExisting(Design).Value!)
        {
            var newest = book.Revisions().Value![0];
            Assert.Equal("accepted from flights: drag-scale; accepted from flights: canopy-main", newest.Words);
            Assert.Contains("../motors/k521.yaml", book.FilesOf(newest).Value!.Select(f => f.Name));
        }

        Assert.Contains("1.10, flown", Unwrapped(Log().Output), StringComparison.Ordinal);

        Assert.Equal(0, Log("--take-back", "drag-scale", "--take-back", "canopy-main").Code);
        Assert.Equal(before, File.ReadAllText(Design));

        var asked = Log("--remove", "1");
        Assert.Equal(2, asked.Code);
        Assert.Contains("--remove 1 --sure", asked.Error, StringComparison.Ordinal);
        Assert.Contains("No flight is recorded", Log("--remove", "1", "--sure").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no flight 3", "--ask", "3")]
    [InlineData("No flight teaches 'drag'", "--accept", "drag")]
    [InlineData("The design holds no 'drag-scale' from flights.", "--take-back", "drag-scale")]
    [InlineData("cannot be read", "--add", "nowhere.csv")]
    public void What_cannot_be_says_so_and_changes_nothing(string message, params string[] typed)
    {
        var before = File.ReadAllText(Design);
        var run = Log(typed);
        Assert.Equal(2, run.Code);
        Assert.Contains(message, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Design));
    }

    [Fact]
    public void A_record_that_is_unclear_is_asked_about_with_its_line()
    {
        File.WriteAllText(Record, File.ReadAllText(Record).Replace("pressure_Pa", "Q", StringComparison.Ordinal));
        var run = Log("--add", Record);
        Assert.Equal(2, run.Code);
        Assert.Contains("flight.csv, line 6: No column is known to hold pressure or height.", run.Error, StringComparison.Ordinal);
        Assert.Contains("pressure = Q in Pa", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, Log("--add", Record, "--column", "pressure = Q in Pa").Code);
    }

    private Run Log(params string[] typed) => Run.Of(["log", Design, .. typed]);

    private static string Unwrapped(string text) => Spaces().Replace(text, " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
