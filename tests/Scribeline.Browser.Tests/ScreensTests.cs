using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Pictures of every place for docs/screens, made anew when SCRIBELINE_SCREENS names a folder.</summary>
public class ScreensTests(Bench bench)
{
    private static readonly string? Into = Environment.GetEnvironmentVariable("SCRIBELINE_SCREENS");

    [Theory]
    [InlineData("desktop", 1500, 1000, false)]
    [InlineData("phone", 390, 844, false)]
    [InlineData("dark", 1500, 1000, true)]
    public async Task Every_place_fits_its_window(string name, int width, int height, bool dark)
    {
        await using var place = await bench.Open(width: width, height: height, dark: dark);
        foreach (var to in new[] { "desk", "bench", "yard", "field", "log" })
        {
            await place.Go(to);
            await place.Page.IsNotWiderThanItsWindow(to);
            if (Into is not null) await place.Page.ScreenshotAsync(new() { Path = Path.Combine(Into, $"{to}-{name}.png") });
        }

        if (Into is not null)
        {
            await place.Go("desk");
            await place.Pick("parts[3]");
            await place.Turn("stable");
            await place.Page.Locator("#q-stable").ScrollIntoViewIfNeededAsync();
            await place.Page.EvaluateAsync("document.getElementById('q-stable').scrollIntoView()");
            await place.Page.WaitForLoadStateAsync(Microsoft.Playwright.LoadState.NetworkIdle);
            await Expect(place.Page.Locator("#a-stable img >> visible=true").First).ToHaveJSPropertyAsync("complete", true);
            await place.Page.ScreenshotAsync(new() { Path = Path.Combine(Into, $"question-{name}.png") });
            await place.Page.GotoAsync(place.Address.ToString());
            await place.Live();
            await place.Page.ScreenshotAsync(new() { Path = Path.Combine(Into, $"start-{name}.png") });
        }

        Assert.Empty(place.Complaints);
    }
}
