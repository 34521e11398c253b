using System.Globalization;
using System.Text.Json;
using Scribeline.Engine.Questions;
using Scribeline.Tests;

namespace Scribeline.App.Tests;

/// <summary>The commands as processes: exit codes, what is written where, what a wrong input gets.</summary>
public class CommandTests
{
    private const string NightHeron = "examples/night-heron";

    public static TheoryData<string> Examples => [.. Run.ExampleNames];

    [Theory, MemberData(nameof(Examples))]
    public void Answers_of_an_example_read_as_approved(string example)
    {
        var run = Run.Of("answer", $"examples/{example}", "--samples", "0");
        Assert.Equal("", run.Error);
        Assert.DoesNotContain('\u001b', run.Output);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Approved.Check(run.Output, $"tests/Scribeline.App.Tests/Approved/answer-{example}.txt");
    }

    [Fact]
    public void Working_of_an_example_reads_as_approved() => Approved.Check(
        Run.Of("answer", NightHeron, "--samples", "0", "--question", "weight", "--working").Output,
        "tests/Scribeline.App.Tests/Approved/working-night-heron.txt");

    [Theory, MemberData(nameof(Examples))]
    public void Exit_code_follows_the_gravest_verdict(string example)
    {
        var run = Run.Of("answer", $"examples/{example}", "--samples", "0", "--json");
        var verdict = JsonDocument.Parse(run.Output).RootElement.GetProperty("verdict").GetString();
        Assert.Equal(verdict is "clear" or "watch" ? 0 : 1, run.Code);
    }

    [Fact]
    public void Flight_of_an_example_reads_as_approved() =>
        Approved.Check(Run.Of("fly", NightHeron).Output, "tests/Scribeline.App.Tests/Approved/fly-night-heron.txt");

    [Fact]
    public void Every_question_can_be_asked_alone()
    {
        var all = JsonDocument.Parse(Run.Of("answer", NightHeron, "--samples", "0", "--json").Output).RootElement.GetProperty("answers");
        Assert.Equal(Questionnaire.All.Select(q => q.Id), all.EnumerateArray().Select(a => a.GetProperty("id").GetString()));
        var two = Run.Of("answer", NightHeron, "--samples", "0", "--json", "--question", "stable", "-q", "weight");
        var ids = JsonDocument.Parse(two.Output).RootElement.GetProperty("answers").EnumerateArray().Select(a => a.GetProperty("id").GetString());
        Assert.Equal(["weight", "stable"], ids);
    }

    [Fact]
    public void Same_seed_gives_the_same_spread()
    {
        string[] typed = ["answer", NightHeron, "--question", "how-high", "--samples", "8", "--json", "--seed"];
        var first = Run.Of([.. typed, "5"]).Output;
        Assert.Equal(first, Run.Of([.. typed, "5"]).Output);
        Assert.NotEqual(first, Run.Of([.. typed, "6"]).Output);
    }

    [Fact]
    public void Flight_goes_to_csv_and_svg()
    {
        using var scratch = new ScratchFolder();
        var run = Run.Of("fly", NightHeron, "--csv", scratch.At("flight.csv"), "--plot", scratch.At("flight.svg"), "--json");
        Assert.Equal(0, run.Code);
        var lines = File.ReadAllLines(scratch.At("flight.csv"));
        var columns = lines[0].Split(',');
        Assert.All(lines.Skip(1), line => Assert.Equal(columns.Length, line.Split(',').Length));
        var height = Array.IndexOf(columns, "height_m");
        var highest = lines.Skip(1).Max(line => double.Parse(line.Split(',')[height], CultureInfo.InvariantCulture));
        var apogee = JsonDocument.Parse(run.Output).RootElement.GetProperty("events").EnumerateArray().Single(e => e.GetProperty("name").GetString() == "apogee");
        Assert.Equal(apogee.GetProperty("height").GetDouble(), highest, 0.1);
        Assert.StartsWith("<svg", File.ReadAllText(scratch.At("flight.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_design_has_no_problems_and_is_never_overwritten()
    {
        using var scratch = new ScratchFolder();
        var run = Run.In(scratch.Path, "new", "Grey Wagtail");
        Assert.Equal((0, ""), (run.Code, run.Error));
        var text = File.ReadAllText(scratch.At("grey-wagtail/rocket.yaml"));
        Assert.Contains("Grey Wagtail", text, StringComparison.Ordinal);
        Assert.Equal(0, Run.In(scratch.Path, "check", "grey-wagtail").Code);

        // Every question answers. Open is what a builder measures, tests on the ground, confirms at the field and records of a flight; nothing is a stop.
        var answers = JsonDocument.Parse(Run.In(scratch.Path, "answer", "grey-wagtail", "--samples", "0", "--json").Output).RootElement.GetProperty("answers").EnumerateArray().ToList();
        Assert.Equal(Questionnaire.All.Count, answers.Count);
        Assert.DoesNotContain(answers, a => a.GetProperty("verdict").GetString() == "stop");
        Assert.Equal(["as-built", "test-says", "allowed", "what-happened", "as-predicted", "teaches"], answers.Where(a => a.GetProperty("verdict").GetString() == "open").Select(a => a.GetProperty("id").GetString()));

        File.WriteAllText(scratch.At("grey-wagtail/rocket.yaml"), "mine");
        var again = Run.In(scratch.Path, "new", "Grey Wagtail");
        Assert.Equal(2, again.Code);
        Assert.Contains("is there already", again.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(scratch.At("grey-wagtail/rocket.yaml")));
    }

    [Fact]
    public void Problems_name_file_line_and_column_and_what_to_type_instead()
    {
        using var scratch = new ScratchFolder();
        Directory.CreateDirectory(scratch.At("odd"));
        File.WriteAllText(scratch.At("odd/rocket.yaml"), "scribeline: 1\nname: Odd\ncolour: red\nparts: []\njoints: []\n");
        foreach (var command in new[] { "check", "answer", "fly" })
        {
            var run = Run.In(scratch.Path, command, "odd");
            Assert.Equal(2, run.Code);
            var said = command == "check" ? run.Output : run.Error;
            Assert.Contains($"{Path.Combine("odd", "rocket.yaml")}:3:1: ", said, StringComparison.Ordinal);
            Assert.Contains("colour", said, StringComparison.Ordinal);
        }

        var json = JsonDocument.Parse(Run.In(scratch.Path, "answer", "odd", "--json").Output).RootElement;
        Assert.Equal("problems", json.GetProperty("kind").GetString());
        Assert.Equal(3, json.GetProperty("problems")[0].GetProperty("line").GetInt32());
    }

    [Theory]
    [InlineData("no-such-file.yaml", "There is no file")]
    [InlineData("examples", "holds no design file")]
    public void A_path_that_is_no_design_says_so(string path, string said)
    {
        foreach (var command in new[] { "check", "answer", "fly" })
        {
            var run = Run.Of(command, path);
            Assert.Equal(2, run.Code);
            Assert.Contains(said, run.Output + run.Error, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("Type instead: scribeline --help")]
    [InlineData("Type instead: scribeline --help", "anwser")]
    [InlineData("Type instead: scribeline answer --help", "answer")]
    [InlineData("Type instead: scribeline answer --help", "answer", NightHeron, "--jsn")]
    [InlineData("from 0 to", "answer", NightHeron, "--samples", "-1")]
    [InlineData("--samples", "answer", NightHeron, "--samples", "many")]
    [InlineData("Type instead: --question stable", "answer", NightHeron, "--question", "stabel")]
    [InlineData("The questions are: ", "answer", NightHeron, "--question", "xyzzy")]
    [InlineData("cannot be written", "fly", NightHeron, "--csv", "no/such/folder/flight.csv")]
    [InlineData("A rocket's name", "new", "...")]
    public void A_wrong_command_line_says_what_to_type_instead(string said, params string[] typed)
    {
        var run = Run.Of(typed);
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Output);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("scribeline answer examples/night-heron", "answer", "--help")]
    [InlineData("scribeline fly examples/night-heron", "fly", "--help")]
    [InlineData("scribeline check examples/night-heron", "check", "--help")]
    [InlineData("scribeline new \"Night Heron\"", "new", "--help")]
    [InlineData("scribeline new \"Night Heron\"", "--help")]
    public void Help_has_examples_and_fits_the_page(string example, params string[] typed)
    {
        var run = Run.Of(typed);
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains(example, run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Version_is_told()
    {
        var run = Run.Of("--version");
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Matches(@"^\d+\.\d+\.\d+\s*$", run.Output);
    }
}
