using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Scribeline.Engine.Questions;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>The flight of a failure, chosen at the replay or from its row in the table of failures.</summary>
public class FailureReplayTests(Bench bench)
{
    [Fact]
    public async Task A_row_of_the_table_shows_its_flight_and_takes_the_person_there()
    {
        await using var place = await bench.Open();
        await place.Page.GetByRole(AriaRole.Button, new() { Name = "What if something fails?" }).ClickAsync();
        var watch = place.Page.GetByRole(AriaRole.Button, new() { Name = "Watch the flight: No drogue charge" });
        await watch.FocusAsync();
        await watch.PressAsync("Enter");
        var choice = place.Page.GetByLabel("Flight", new() { Exact = true });
        await Expect(choice).ToHaveValueAsync("No drogue charge");
        await Expect(choice).ToBeFocusedAsync();

        // What is said, what is drawn and what the answer tells are one flight.
        var outcome = place.Document.Answers.Study!.FailureOutcomes.Single(o => o.Failure.Name == "No drogue charge");
        var words = place.Page.Locator(".replay-words");
        await Expect(words).ToContainTextAsync("Main opens and tears; it is taken as lost");
        await Expect(words).ToContainTextAsync("Primary: Drogue A");
        var ground = place.Page.Locator(".replay table", new() { HasText = "What reaches the ground" });
        await Expect(ground.Locator("tbody tr")).ToHaveCountAsync(outcome.Pieces.Count);
        await Expect(ground).ToContainTextAsync(Shown.Text(outcome.Hardest!.Energy, Unit.Energy, true));
        await Expect(place.Page.Locator(".replay-events .absent").First).ToContainTextAsync("planned here, does not happen");
        await Expect(place.Page.Locator(".replay-events .follows").First).ToContainTextAsync("follows from the failure");
        await Expect(place.Page.Locator(".replay-marks .replay-absent").First).ToBeAttachedAsync();

        // It holds together until the main's charge, long after apogee.
        var study = place.Document.Answers.Study!;
        await To(place, study.Flight.Apogee!.Time + 6);
        await Expect(place.Page.Locator(".replay-state")).ToContainTextAsync("falling whole");
        await Expect(place.Page.Locator(".replay-body > path.replay-cord")).ToHaveCountAsync(0);
        await To(place, 1e6);
        await Expect(place.Page.Locator(".replay-state")).ToContainTextAsync(Shown.Text(outcome.Pieces[0].Landing.Speed, Unit.Speed, true));

        // The plot that goes along is of this flight: it ends where this flight ends.
        var pad = place.Page.Locator(".replay-plots .plot-pad").First;
        await Expect(pad).ToHaveAttributeAsync("aria-busy", "false");
        await pad.FocusAsync();
        await pad.PressAsync("End");
        await Expect(pad).ToHaveAttributeAsync("aria-valuetext", new Regex("^" + Regex.Escape(Shown.Text(outcome.Pieces.Max(p => p.Landing.At.Time), Unit.Time, true))));
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Fact]
    public async Task The_choice_keeps_through_an_edit_and_goes_back_to_the_plan()
    {
        await using var place = await bench.Open();
        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Watch the flight" }).ClickAsync();
        var choice = place.Page.GetByLabel("Flight", new() { Exact = true });
        await Expect(choice).ToHaveValueAsync("As planned");
        await choice.SelectOptionAsync("Backup dead");
        await Expect(place.Page.Locator(".replay-words")).ToContainTextAsync("Backup fires nothing.");
        Assert.Null(place.Document.Change("firing[0].descending through.height", "1500 ft"));
        await place.Answered();
        await Expect(choice).ToHaveValueAsync("Backup dead");
        var outcome = place.Document.Answers.Study!.FailureOutcomes.Single(o => o.Failure.Name == "Backup dead");
        await Expect(place.Page.Locator(".replay table", new() { HasText = "What reaches the ground" })).ToContainTextAsync(Shown.Text(outcome.Pieces[0].Landing.At.Time, Unit.Time, true));
        await choice.SelectOptionAsync("As planned");
        await Expect(place.Page.Locator(".replay-words")).ToHaveCountAsync(0);
        await Expect(place.Page.Locator(".replay-events .differs")).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData(1500, false)]
    [InlineData(390, true)]
    public async Task It_is_for_everybody(int width, bool dark)
    {
        await using var place = await bench.Open(width: width, dark: dark);
        await place.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Watch the flight" }).ClickAsync();
        await place.Page.GetByLabel("Flight", new() { Exact = true }).SelectOptionAsync("No drogue charge");
        await place.Page.Locator(".replay-events .differs").First.WaitForAsync();
        await Expect(place.Page.GetByRole(AriaRole.Button, new() { Name = "Play" })).ToBeHiddenAsync();
        await place.Page.IsNotWiderThanItsWindow("the replay of a failure");
        await place.Page.Locator(".replay").HasNoSeriousFault("the replay of a failure");
    }

    private static Task To(Workplace place, double time) => place.Page.EvaluateAsync("t => document.dispatchEvent(new CustomEvent('scribeline:go', { detail: t }))", time);
}
