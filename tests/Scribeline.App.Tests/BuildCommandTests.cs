using System.Text.Json;
using System.Text.RegularExpressions;
using Scribeline.Store.Logbooks;
using Scribeline.Tests;

namespace Scribeline.App.Tests;

/// <summary>The build command as a process, on a design of its own.</summary>
public sealed partial class BuildCommandTests : IDisposable
{
    private readonly ScratchFolder scratch = new();

    public BuildCommandTests() => File.WriteAllText(Design, PlainDesign.Text("Grey Plover"));

    private string Design => scratch.At("rocket.yaml");

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Shows_the_next_steps_and_begins_no_logbook_by_itself()
    {
        var run = Build();
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Matches(@"0 of \d+ steps done\. Left: [\d.]+ h of hands, on \d+ evenings of 3 h;", Unwrapped(run));
        Assert.Contains("nose/measure", run.Output, StringComparison.Ordinal);
        Assert.Contains("measure Nose length, planned 12 in", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Single(Directory.GetFiles(scratch.Path));
    }

    [Fact]
    public void Ticks_stay_and_can_be_taken_back()
    {
        Assert.Equal(0, Build("--done", "nose/measure", "--done", "payload/measure", "--note", "round to 0.1 mm").Code);
        Assert.Equal(["nose/measure", "payload/measure"], Done());
        Assert.Contains("round to 0.1 mm", Unwrapped(Build("--all")), StringComparison.Ordinal);
        Assert.Equal(0, Build("--undo", "nose/measure").Code);
        Assert.Equal(["payload/measure"], Done());
    }

    [Theory]
    [InlineData("booster-rings/bond", "booster-rings/bond comes after booster-rings/clean: bond within the hour of wiping. Add --done booster-rings/clean, if that is done.")]
    [InlineData("booster-ring/bond", "There is no step 'booster-ring/bond'. Did you mean booster-rings/bond?")]
    [InlineData("fins", "There is no step 'fins'. Steps are shown with --all; places are ")]
    [InlineData("payload", "payload/weigh comes after rocket/test-fit: what is weighed is what flies. Add --done rocket/test-fit, if that is done.")]
    public void A_step_out_of_turn_or_unknown_is_refused_and_nothing_is_kept(string step, string expected)
    {
        var run = Build("--done", "nose/measure", "--done", step);
        Assert.Equal(2, run.Code);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.Empty(Done());
    }

    [Fact]
    public void A_bond_is_ticked_as_a_whole_and_then_sets()
    {
        Assert.Equal(0, Build("--done", "booster-rings").Code);
        var run = Build();
        Assert.Matches(@"booster-rings/cure\s+until \w{3} \d+ \w{3} \d\d:\d\d", run.Output);
        var refused = Build("--done", "booster-mount/dry-fit");
        Assert.Equal(2, refused.Code);
        Assert.Contains("It sets; if it has set already, add --done booster-rings/cure", refused.Error, StringComparison.Ordinal);
        Assert.Equal(0, Build("--done", "booster-mount/dry-fit", "--done", "booster-rings/cure").Code);
        Assert.Contains("booster-mount/dry-fit", Done());
    }

    [Fact]
    public void A_measured_value_counts_in_the_answers_until_it_is_taken_back()
    {
        var before = Mass();
        Assert.Equal(0, Build("--measured", "payload.mass = 700 g ± 2 g").Code);
        Assert.NotEqual(before, Mass());
        var told = Run.Of("answer", Design, "--samples", "0", "--question", "weight").Output;
        Assert.Contains("and 1 measured value of its logbook", Unwrapped(told), StringComparison.Ordinal);
        Assert.Contains("Payload mass: 700 g ± 2 g", Build().Output, StringComparison.Ordinal);
        Assert.Equal(0, Build("--measured", "Payload mass =").Code);
        Assert.Equal(before, Mass());
    }

    [Theory]
    [InlineData("Payload mass 700 g", "has no = between")]
    [InlineData("Payload mas = 700 g", "Did you mean 'Payload mass'?")]
    [InlineData("Payload mass = 700 mm", "700 mm is a length; a mass belongs here.")]
    public void A_measured_value_that_cannot_be_is_refused(string typed, string expected)
    {
        var run = Build("--measured", typed);
        Assert.Equal(2, run.Code);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_values_are_written_into_their_places_when_asked()
    {
        var text = File.ReadAllText(Design);
        Assert.Equal(0, Build("--measured", "Payload mass = 700 g ± 2 g", "--measured", "Booster length = 34.02 in", "--measured", "Main packed length = 7 in").Code);
        Assert.Equal(text, File.ReadAllText(Design));
        var mass = Mass();
        Assert.Equal(0, Build("--write").Code);
        var written = File.ReadAllText(Design);
        Assert.Contains("    length: {value: 34.02 in, known: measured}\n", written, StringComparison.Ordinal);
        Assert.Contains("    mass: {value: 700 g ± 2 g, known: measured}\n", written, StringComparison.Ordinal);
        Assert.Contains("mass: 240 g, packed length: {value: 7 in, known: measured}}}\n", written, StringComparison.Ordinal);
        Assert.Equal(text.Split('\n').Length + 1, written.Split('\n').Length);
        Assert.Equal(mass, Mass());
        using var book = Logbook.OpenExisting(Design).Value!;
        var revisions = book.Revisions().Value!;
        Assert.Equal(["Measured values written into their places", Revision.Replaced], revisions.Select(r => r.Words));
        Assert.Equal([written, text], revisions.Select(r => book.TextOf(r).Value));
    }

    [Fact]
    public void A_logbook_that_cannot_be_read_is_no_reason_to_answer_without_it()
    {
        File.WriteAllText(scratch.At(Logbook.FileName), "no database, but long enough to be one: " + new string('x', 500));
        foreach (var run in (Run[])[Build(), Run.Of("answer", Design, "--samples", "0")])
        {
            Assert.Equal(2, run.Code);
            Assert.Contains("logbook.sqlite: logbook.sqlite is damaged, or is not a logbook.", run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void All_is_done_in_the_end()
    {
        var steps = Steps().Select(s => s.GetProperty("id").GetString()!).ToArray();
        Assert.Equal(0, Build([.. steps.SelectMany(s => (string[])["--done", s])]).Code);
        Assert.Contains("All ", Build().Output, StringComparison.Ordinal);
        Assert.Equal(steps, Done());
    }

    private Run Build(params string[] typed) => Run.Of(["build", Design, .. typed]);

    private JsonElement[] Steps() => [.. JsonDocument.Parse(Build("--json").Output).RootElement.GetProperty("steps").EnumerateArray()];

    private string[] Done() => [.. Steps().Where(s => s.GetProperty("state").GetString() == "done").Select(s => s.GetProperty("id").GetString()!)];

    private double Mass() => JsonDocument.Parse(Run.Of("answer", Design, "--samples", "0", "--question", "stack", "-q", "weight", "--json").Output)
        .RootElement.GetProperty("answers")[0].GetProperty("findings")[0].GetProperty("value").GetDouble();

    private static string Unwrapped(Run run) => Unwrapped(run.Output);

    private static string Unwrapped(string text) => Spaces().Replace(text, " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
