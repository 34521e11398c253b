using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>The flight in time: scrubbed, stepped and played, in words and in step with the plots.</summary>
public class ReplayTests(Bench bench)
{
    [Fact]
    public async Task Scrubbing_tells_the_flight_as_it_was_flown()
    {
        await using var place = await bench.Open();
        var replay = await Opened(place);
        var flight = place.Document.Answers.Study!.Flight;
        var slider = replay.GetByLabel("Time of the flight");

        // Ten tenths of a second with the arrow key: the state in words is that of the computed flight there.
        await slider.FocusAsync();
        for (var i = 0; i < 10; i++) await slider.PressAsync("ArrowRight");
        var at = flight.At(1);
        Assert.Equal(FlightPhase.Boost, at.Phase);
        await Expect(replay.Locator(".replay-state")).ToContainTextAsync("motor burning");
        await Expect(replay.Locator(".replay-state")).ToContainTextAsync($"height {Shown.Text(at.Height, Unit.Height, true)}, speed {Shown.Text(at.Speed, Unit.Speed, true)}");
        await Expect(slider).ToHaveAttributeAsync("aria-valuetext", new Regex("^1.00 s; the rocket: .*just now: aft guide leaves the rail"));
        Assert.Equal(1, await replay.Locator(".replay-body").CountAsync());
        await Expect(replay.Locator(".replay-cloth")).ToHaveCountAsync(0);

        // Under the drogue in two pieces, later under both canopies in three, at last on the ground.
        var main = flight.Openings.Single(o => o.Name == "Main").LineStretch.Time;
        await To(place, main - 10);
        await Expect(replay.Locator(".replay-state")).ToContainTextAsync("under Drogue");
        await Expect(replay.Locator(".replay-cloth")).ToHaveCountAsync(1);
        await Expect(replay.Locator(".replay-body > path.replay-cord")).ToHaveCountAsync(2);
        await To(place, main + 5);
        await Expect(replay.Locator(".replay-state")).ToContainTextAsync("under Drogue and Main");
        await Expect(replay.Locator(".replay-cloth")).ToHaveCountAsync(2);
        await Expect(replay.Locator(".replay-body > path.replay-cord")).ToHaveCountAsync(3);
        await slider.PressAsync("End");
        await To(place, flight.End);
        await Expect(replay.Locator(".replay-state")).ToContainTextAsync("on the ground");
        await Expect(replay.Locator(".replay-state")).ToContainTextAsync($"touched down at {Shown.Text(flight.Landings[0].Speed, Unit.Speed, true)}");
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Fact]
    public async Task The_plots_of_the_flight_go_along()
    {
        await using var place = await bench.Open();
        var replay = await Opened(place);
        var burnout = place.Document.Answers.Study!.Flight.Burnout!.Time;
        await replay.GetByRole(AriaRole.Button, new() { Name = "burnout" }).ClickAsync();
        await Expect(replay.Locator("[aria-current=step]")).ToContainTextAsync("burnout");
        var clock = place.Page.Locator(".replay-plots .plot-clock").Nth(1);
        await Expect(clock).ToHaveAttributeAsync("x1", new Regex("[0-9]"));
        var plot = place.Document.Answers.Of("how-fast")!.Plots[0];
        var frame = Drawing.PlotDrawing.Frame(plot, new(Inch: true, Width: 640, Height: 400))!;
        var x = double.Parse((await clock.GetAttributeAsync("x1"))!, CultureInfo.InvariantCulture);
        Assert.Equal(frame.Left + (frame.Across(burnout) * (frame.Right - frame.Left)), x, 1.0);

        // And the other way round: a place in a plot takes the replay there.
        var pad = place.Page.Locator(".replay-plots .plot-pad").Nth(1);
        await pad.FocusAsync();
        await pad.PressAsync("End");
        await Expect(replay.Locator(".replay-time")).ToHaveTextAsync(Shown.Text(place.Document.Answers.Study!.Flight.Apogee!.Time, Unit.Time, true));
    }

    [Fact]
    public async Task It_plays_and_an_edit_shows_the_new_flight()
    {
        await using var place = await bench.Open();
        var replay = await Opened(place);
        var play = replay.GetByRole(AriaRole.Button, new() { Name = "Play" });
        await play.ClickAsync();
        await Expect(replay.Locator(".replay-time")).Not.ToHaveTextAsync(Shown.Text(0, Unit.Time, true));
        await replay.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();
        await Expect(play).ToBeVisibleAsync();
        var paused = await replay.Locator(".replay-time").TextContentAsync();
        await place.Painted();
        await Expect(replay.Locator(".replay-time")).ToHaveTextAsync(paused!);
        await To(place, 1);
        await Expect(replay.Locator(".replay-state")).ToContainTextAsync("motor burning");
        var slider = replay.GetByLabel("Time of the flight");
        var before = await slider.GetAttributeAsync("max");
        Assert.Null(place.Document.Change("firing[0].descending through.height", "1500 ft"));
        await place.Answered();
        await Expect(slider).Not.ToHaveAttributeAsync("max", before!);
        Assert.Equal(place.Document.Answers.Study!.Flight.End, double.Parse((await slider.GetAttributeAsync("max"))!, CultureInfo.InvariantCulture), 0.01);
    }

    [Theory]
    [InlineData(1500, false)]
    [InlineData(390, false)]
    [InlineData(1500, true)]
    public async Task It_is_for_everybody(int width, bool dark)
    {
        await using var place = await bench.Open(width: width, dark: dark);
        await place.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        var replay = await Opened(place);

        // Who wants nothing to move by itself steps from moment to moment.
        await Expect(replay.GetByRole(AriaRole.Button, new() { Name = "Play" })).ToBeHiddenAsync();
        await replay.GetByRole(AriaRole.Button, new() { Name = "Next moment" }).ClickAsync();
        await Expect(replay.Locator("[aria-live]")).ToContainTextAsync("lift-off");
        await place.Page.IsNotWiderThanItsWindow("the replay");
        await place.Page.Locator(".replay").HasNoSeriousFault("the replay");
    }

    private static Task To(Workplace place, double time) => place.Page.EvaluateAsync("t => document.dispatchEvent(new CustomEvent('scribeline:go', { detail: t }))", time);

    private static async Task<ILocator> Opened(Workplace place)
    {
        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Watch the flight" }).ClickAsync();
        var replay = place.Page.Locator("flight-replay");
        await replay.Locator(".replay-events li").First.WaitForAsync();
        return replay;
    }
}
