using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Back home: a record chosen, looked at, its lessons accepted and taken back, the flight taken out.</summary>
public class LogTests(Bench bench)
{
    [Fact]
    public async Task A_record_is_added_accepted_taken_back_and_taken_out()
    {
        await using var place = await bench.Open();
        await place.Go("log");
        var flights = place.Page.Locator(".flights");
        await Expect(flights).ToContainTextAsync("None yet.");
        await Expect(place.Page.Locator("#q-what-happened")).ToContainTextAsync("a recorded flight");

        // A file without a column that may be pressure is asked about.
        await flights.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "odd.csv", MimeType = "text/csv", Buffer = "time_s,Q\n0,1\n1,2\n2,3\n"u8.ToArray() });
        await flights.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(flights.GetByRole(AriaRole.Alert)).ToContainTextAsync("No column is known to hold pressure or height");

        await flights.Locator("input[type=file]").SetInputFilesAsync(Path.Combine(place.Folder, "night-heron", "flight.csv"));
        await flights.GetByLabel("When it was flown").FillAsync("4 October");
        await flights.GetByLabel("Weather of that day").SelectOptionAsync("../weather/cool-morning.yaml");
        await flights.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(flights).ToContainTextAsync("flight 1, 4 October");
        await place.Answered();
        await Expect(place.Page.Locator("#q-what-happened .headline")).ToContainTextAsync("apogee above the pad");

        await Expect((await place.Turn("as-predicted")).Locator("figure.plot")).ToHaveCountAsync(3);
        await place.Turn("teaches");
        var lessons = place.Page.Locator(".lessons");
        await lessons.GetByRole(AriaRole.Button, new() { Name = "Accept drag over that predicted" }).ClickAsync();
        await Expect(lessons.GetByRole(AriaRole.Status)).ToContainTextAsync("Undo takes it back");
        await place.Answered();
        Assert.Matches(@"\ndrag scale: \{value: 1\.1\d* ± 0\.\d+, known: flown\}", place.Document.Reading.Text);
        await lessons.GetByRole(AriaRole.Button, new() { Name = "Take back drag over that predicted" }).ClickAsync();
        await Expect(lessons.GetByRole(AriaRole.Button, new() { Name = "Take back drag over that predicted" })).ToHaveCountAsync(0);
        Assert.DoesNotContain("drag scale", place.Document.Reading.Text, StringComparison.Ordinal);
        await place.Answered();

        // It asks before a record is gone.
        await flights.GetByRole(AriaRole.Button, new() { Name = "Take out flight 1" }).ClickAsync();
        await flights.GetByRole(AriaRole.Button, new() { Name = "Take it out" }).ClickAsync();
        await Expect(flights).ToContainTextAsync("None yet.");
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Theory]
    [InlineData(1500, false)]
    [InlineData(390, true)]
    public async Task The_log_is_for_everybody(int width, bool dark)
    {
        await using var place = await bench.Open(width: width, dark: dark);
        await place.Go("log");
        var flights = place.Page.Locator(".flights");
        await flights.GetByLabel("or one in the design's folder").SelectOptionAsync("flight.csv");
        await flights.GetByLabel("Weather of that day").SelectOptionAsync("../weather/cool-morning.yaml");
        await flights.GetByRole(AriaRole.Button, new() { Name = "Add it" }).FocusAsync();
        await place.Page.Keyboard.PressAsync("Enter");
        await Expect(flights).ToContainTextAsync("flight 1");
        await place.Answered();
        foreach (var question in (string[])["what-happened", "as-predicted", "teaches"]) await place.Turn(question);
        await place.Page.Locator(".lessons").WaitForAsync();
        await place.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        await place.Page.IsNotWiderThanItsWindow("the log");
        if (Environment.GetEnvironmentVariable("SCRIBELINE_LOG_PICTURES") is { } into)
            await place.Page.ScreenshotAsync(new() { Path = Path.Combine(into, $"flown-{width}.png"), FullPage = true });
        await place.Page.HasNoSeriousFault("the log");
    }
}
