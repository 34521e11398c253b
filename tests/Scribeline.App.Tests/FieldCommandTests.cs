using System.Text.Json;
using System.Text.RegularExpressions;

namespace Scribeline.App.Tests;

/// <summary>The field command as a process, on a copy of the examples.</summary>
public sealed partial class FieldCommandTests : IDisposable
{
    private readonly ScratchFolder scratch = ScratchFolder.WithExamples();

    public FieldCommandTests()
    {
        // Choosing charges takes most of the time of a run, and nothing here looks at it.
        Edit("night-heron/rocket.yaml", "mass: auto", "mass: 1 g");
    }

    private string Design => scratch.At("night-heron");

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Shows_what_a_person_must_confirm_and_begins_no_logbook_by_itself()
    {
        var run = Field();
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains("N06b", run.Output, StringComparison.Ordinal);
        Assert.Contains("Next: Night before", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.False(File.Exists(Path.Combine(Design, "logbook.sqlite")));
    }

    [Fact]
    public void A_word_counts_until_it_is_withdrawn_or_the_design_the_motor_or_the_sky_changes()
    {
        Assert.Equal(0, Field("--confirm", "n06b", "--confirm", "N02a", "--confirm", "O1").Code);
        Assert.Equal(["N02a", "N06b", "O1"], Confirmed());
        Assert.Equal(0, Field("--withdraw", "O1").Code);
        Assert.Equal(["N02a", "N06b"], Confirmed());

        // The sky and the people are asked again under another wind, what the rocket is made of is not.
        Edit("weather/fair-afternoon.yaml", "gust: 14 mph", "gust: 15 mph");
        Assert.Equal(["N02a"], Confirmed());
        Edit("motors/k521.yaml", "nozzle exit: 27 mm", "nozzle exit: 28 mm");
        Edit("night-heron/rocket.yaml", "mass: 310 g", "mass: 311 g");
        Assert.Empty(Confirmed());

        // The word was given for that very design: with it, it stands again.
        Edit("night-heron/rocket.yaml", "mass: 311 g", "mass: 310 g");
        Edit("motors/k521.yaml", "nozzle exit: 28 mm", "nozzle exit: 27 mm");
        Assert.Equal(["N02a"], Confirmed());
    }

    [Theory]
    [InlineData("N06c", "N06c is not for a person to confirm: met. It compares nearest people 500 ft, at least 200 ft (the table).")]
    [InlineData("N99", "There is no condition 'N99' in the rules of this site.")]
    [InlineData("F03a", "F03a is not for a person to confirm: does not apply.")]
    [InlineData("T01", "There is no condition 'T01' in the rules of this site.")]
    public void Only_what_a_person_judges_can_be_confirmed(string id, string expected)
    {
        var run = Field("--confirm", "N06b", "--confirm", id);
        Assert.Equal(2, run.Code);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.Empty(Confirmed());
    }

    [Fact]
    public void Ticks_stay_are_held_and_can_be_taken_back()
    {
        var refused = Field("--done", "night-before/motor", "--done", "arming/rocket");
        Assert.Equal(2, refused.Code);
        Assert.Contains("arming/rocket waits for a hold: night-before/main-cloth-and-lines", refused.Error, StringComparison.Ordinal);
        Assert.Empty(Ticked());
        Assert.Equal(0, Field("--done", "night-before/motor", "--done", "night-before/balance-loaded").Code);
        Assert.Equal(["night-before/motor", "night-before/balance-loaded"], Ticked());
        Assert.Equal(0, Field("--undo", "night-before/motor").Code);
        Assert.Equal(["night-before/balance-loaded"], Ticked());
        Assert.Equal(0, Field("--again", "night-before").Code);
        Assert.Empty(Ticked());
    }

    [Fact]
    public void Every_item_of_the_day_can_be_ticked_in_its_order()
    {
        var all = Items().Select(i => i.GetProperty("id").GetString()!).ToArray();
        Assert.Equal(all.Length, all.Distinct().Count());
        Assert.Equal(0, Field([.. all.SelectMany(i => (string[])["--done", i])]).Code);
        Assert.Equal(all, Ticked());
        Assert.Contains("Every list of the day is done.", Field().Output, StringComparison.Ordinal);
    }

    // What the item says is what was ticked: another charge is another item.
    [Fact]
    public void A_tick_goes_with_the_words_it_was_given_for()
    {
        var holds = Items().Where(i => i.GetProperty("hold").GetBoolean() && i.GetProperty("list").GetString() is "Night before" or "Prep: charges").Select(i => i.GetProperty("id").GetString()!);
        Assert.Equal(0, Field([.. holds.Append("prep-charges/charge-main-a").SelectMany(i => (string[])["--done", i])]).Code);
        Assert.Contains("prep-charges/charge-main-a", Ticked());
        Edit("night-heron/rocket.yaml", "{name: Main A, on: Bay top, into: Payload, powder: 4F, mass: 1 g}", "{name: Main A, on: Bay top, into: Payload, powder: 4F, mass: 1.1 g}");
        Assert.DoesNotContain("prep-charges/charge-main-a", Ticked());
        Assert.Contains("prep-charges/eyes-and-ears", Ticked());
    }

    [Fact]
    public void Times_and_distances_are_those_of_the_code_with_its_name()
    {
        var wait = Items().Single(i => i.GetProperty("id").GetString()!.EndsWith("/hands-off-interlock-out", StringComparison.Ordinal));
        Assert.Contains("60 s", wait.GetProperty("seen").GetString(), StringComparison.Ordinal);
        Assert.Equal("NAR high power 2012, 5", wait.GetProperty("source").GetString());
        Assert.Contains(Items(), i => i.GetProperty("id").GetString() == "launch/people-back" && i.GetProperty("seen").GetString()!.StartsWith("200 ft", StringComparison.Ordinal));

        // Without a code nothing stands in for it.
        Edit("sites/kettle-flats.yaml", "rules: [14 CFR 101, 27 CFR 555, NAR high power 2012]", "");
        wait = Items().Single(i => i.GetProperty("id").GetString()!.EndsWith("/hands-off-interlock-out", StringComparison.Ordinal));
        Assert.Contains("as the code in force says: ______ s", wait.GetProperty("seen").GetString(), StringComparison.Ordinal);
        foreach (var question in (string[])["allowed", "keep-back", "checklist"]) Assert.Contains("○ open", Run.Of("answer", Design, "-q", question, "--samples", "0").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_code_is_refused_with_what_was_meant()
    {
        Edit("sites/kettle-flats.yaml", "NAR high power 2012", "NAR high pwer 2012");
        var run = Field();
        Assert.Equal(2, run.Code);
        Assert.Contains("No rules are known by the name 'NAR high pwer 2012'. Did you mean NAR high power 2012?", Unwrapped(run.Error), StringComparison.Ordinal);
    }

    [Fact]
    public void People_nearer_than_the_table_stop()
    {
        Edit("sites/kettle-flats.yaml", "people: 500 ft", "people: 199 ft");
        var run = Run.Of("answer", Design, "-q", "keep-back", "-q", "allowed", "--samples", "0");
        Assert.Equal(1, run.Code);
        Assert.Equal(2, Regex.Count(run.Output, "■ stop"));
        Edit("sites/kettle-flats.yaml", "people: 199 ft", "people: 200 ft");
        Assert.Contains("● clear  How far back", Run.Of("answer", Design, "-q", "keep-back", "--samples", "0").Output, StringComparison.Ordinal);
    }

    private Run Field(params string[] typed) => Run.Of(["field", Design, .. typed]);

    private void Edit(string file, string from, string to)
    {
        var text = File.ReadAllText(scratch.At(file));
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(scratch.At(file), text.Replace(from, to, StringComparison.Ordinal));
    }

    private JsonElement Document() => JsonDocument.Parse(Field("--json").Output).RootElement;

    private JsonElement[] Items() => [.. Document().GetProperty("items").EnumerateArray()];

    private string[] Ticked() => [.. Items().Where(i => i.GetProperty("at").ValueKind != JsonValueKind.Null).Select(i => i.GetProperty("id").GetString()!)];

    private string[] Confirmed() => [.. Document().GetProperty("conditions").EnumerateArray()
        .Where(c => c.GetProperty("stands").GetString() == "confirmed by a person").Select(c => c.GetProperty("id").GetString()!).Order(StringComparer.Ordinal)];

    private static string Unwrapped(string text) => Spaces().Replace(text, " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
