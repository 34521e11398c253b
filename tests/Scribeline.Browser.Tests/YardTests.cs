using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Work in the yard: shots typed, taken out and let count.</summary>
public class YardTests(Bench bench)
{
    [Fact]
    public async Task A_shot_is_typed_with_the_keyboard_taken_out_put_back_and_let_count()
    {
        await using var place = await bench.Open();
        await place.Go("yard");
        var text = place.Document.Reading.Text;
        var own = place.Document.Answers.Study!.Rocket.Shots.Count;
        await place.Page.GetByLabel("Powder as weighed").FocusAsync();
        await place.Page.Keyboard.TypeAsync("0.5 mm");
        await place.Page.GetByLabel("Charge whose place it took").SelectOptionAsync("Drogue A");
        await place.Page.GetByLabel("What happened").SelectOptionAsync("parted");
        await place.Page.GetByLabel("What happened").FocusAsync();
        await place.Page.Keyboard.PressAsync("Tab");
        await place.Page.Keyboard.TypeAsync("26 ft/s ± 3 ft/s");
        await place.Page.Keyboard.PressAsync("Enter");
        await Expect(place.Page.Locator(".shots .refusal")).ToContainTextAsync("0.5 mm is a length");

        await place.Page.GetByLabel("Powder as weighed").FillAsync("0.5 g");
        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Keep this shot" }).PressAsync("Enter");
        await Expect(place.Page.Locator(".shots .told")).ToContainTextAsync("Kept as shot 1.");
        var row = place.Page.Locator(".shot-list > li");
        await Expect(row).ToContainTextAsync("0.5 g for Drogue A, parted, 26 ft/s ± 3 ft/s");
        await Counted(place, own + 1);

        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Take out shot 1" }).PressAsync("Enter");
        await Expect(row).ToContainTextAsync("Taken out");
        await Counted(place, own);
        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Put back shot 1" }).PressAsync("Enter");
        await Counted(place, own + 1);
        await place.Answered();

        await place.Page.ClickAsync("#let-count");
        await Expect(place.Page.Locator("#let-count")).ToHaveTextAsync("Set the shots aside");
        Assert.Contains("shots count: yes", place.Document.Reading.Text, StringComparison.Ordinal);
        await place.Answered();
        Assert.Contains(place.Document.Answers.Of("lets-go")!.Findings, f => f.Name.StartsWith("Drogue A: lets go, by ", StringComparison.Ordinal));
        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(place.Page.Locator("#let-count")).ToHaveTextAsync("Let the shots count");
        Assert.Equal(text, place.Document.Reading.Text);
        var csv = await place.Page.APIRequest.GetAsync(new Uri(place.Address, $"{place.Document.Id}/shots.csv").ToString());
        Assert.Equal(own + 2, (await csv.TextAsync()).TrimEnd().Split('\n').Length);
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Theory]
    [InlineData(1280, 900, false)]
    [InlineData(390, 844, true)]
    public async Task The_yard_is_reachable_for_all_with_everything_open(int width, int height, bool dark)
    {
        await using var place = await bench.Open(width: width, height: height, dark: dark);
        await place.Go("yard");
        foreach (var id in (string[])["test-plan", "test-says"]) await place.Turn(id);
        await place.Page.Locator(".shot-more > summary").PressAsync("Enter");
        await Expect(place.Page.Locator("#q-test-says .plot")).ToHaveCountAsync(3);
        await Expect(place.Page.Locator("#q-test-plan table caption").Last).ToHaveTextAsync("What to set up, and what counts as a pass");
        await place.Page.IsNotWiderThanItsWindow("the yard");
        await place.Page.HasNoSeriousFault("the yard");
        if (Environment.GetEnvironmentVariable("SCRIBELINE_LOOK") is { Length: > 0 } folder) await place.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"yard-{width}.png"), FullPage = true });
        Assert.Empty(place.Complaints);
    }

    private static async Task Counted(Workplace place, int shots)
    {
        var look = TimeSpan.FromMilliseconds(50);
        for (var left = Bench.Patience / look; left > 0 && place.Document.Answers.Study!.Rocket.Shots.Count != shots; left--) await Task.Delay(look, TestContext.Current.CancellationToken);
        Assert.Equal(shots, place.Document.Answers.Study!.Rocket.Shots.Count);
    }
}
