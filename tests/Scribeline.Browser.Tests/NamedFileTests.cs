using System.Text.RegularExpressions;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Motor, field and weather edited at the Desk, in a real browser.</summary>
public class NamedFileTests(Bench bench)
{
    private static readonly string? Into = Environment.GetEnvironmentVariable("SCRIBELINE_SCREENS");

    [Fact]
    public async Task A_thrust_point_a_height_and_a_wind_are_answered_undone_and_there_after_loading_again()
    {
        await using var place = await bench.Open();
        var height = place.Page.Locator("#q-how-high .figure");
        var before = await height.InnerTextAsync();

        await place.Pick("motor");
        await Expect(place.Page.Locator(".shared")).ToContainTextAsync("other designs may use it");
        var point = place.Page.Locator("#thrust-3-thrust");
        await point.FillAsync("900");
        await Expect(height).Not.ToHaveTextAsync(before);
        await point.FillAsync("200 lbf");
        await point.BlurAsync();
        await Expect(point).ToHaveValueAsync("889.644323"); // 200 x 4.4482216152605

        await place.Answered();
        var low = place.Document.Answers.Of("flutter")!.Findings;

        await place.Page.ClickAsync("text=All things");
        await place.Pick("site");
        var elevation = place.Page.Locator("[data-path='site.elevation'] input");
        await elevation.FillAsync("6000 ft"); // where no air presses as the weather file says
        await Expect(place.Page.Locator("#problems")).ToContainTextAsync("not a station pressure at 1829 m");
        await elevation.FillAsync("1500 ft");
        await Expect(place.Page.Locator("[data-path='site.elevation'] .other")).ToHaveTextAsync("= 457.2 m");
        await Expect(place.Page.Locator("#problems")).ToHaveCountAsync(0);
        await place.Answered();
        Assert.NotEqual(low, place.Document.Answers.Of("flutter")!.Findings);

        await place.Page.ClickAsync("text=All things");
        await place.Pick("weather");
        var wind = place.Page.Locator("[data-path='weather.wind speed'] input");
        await wind.FillAsync("12 mph ± 3 mph");
        await place.Answered();
        await place.Page.ClickAsync("#undo");
        await Expect(wind).ToHaveValueAsync("9 mph ± 3 mph");
        await place.Page.ClickAsync("#redo");
        await Expect(wind).ToHaveValueAsync("12 mph ± 3 mph");
        await place.Answered();
        var after = await height.InnerTextAsync();

        await place.Page.Keyboard.PressAsync("Control+s");
        await Expect(place.Page.Locator("#save")).ToHaveTextAsync("Saved");
        foreach (var (file, held) in new[] { ("motors/k521.csv", "0.15,889.644323"), ("sites/kettle-flats.yaml", "elevation: 1500 ft"), ("weather/fair-afternoon.yaml", "wind speed: 12 mph ± 3 mph") })
            Assert.Contains(held, await File.ReadAllTextAsync(Path.Combine(place.Folder, file), Xunit.TestContext.Current.CancellationToken), StringComparison.Ordinal);

        await place.Page.ReloadAsync();
        await place.Live();
        await Expect(height).ToHaveTextAsync(after);
        while (place.Document.CanUndo)
        {
            var shown = place.Document.Version;
            await place.Page.ClickAsync("#undo");
            while (place.Document.Version == shown) await Task.Delay(10, Xunit.TestContext.Current.CancellationToken);
        }

        await Expect(height).ToHaveTextAsync(before);
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Fact]
    public async Task Points_of_thrust_are_added_taken_out_and_pasted()
    {
        await using var place = await bench.Open();
        await place.Pick("motor");
        var rows = place.Page.Locator(".thrust-rows tbody tr");
        await rows.First.WaitForAsync();
        var many = await rows.CountAsync();
        await place.Page.ClickAsync("[aria-label='add after point 2']");
        await Expect(rows).ToHaveCountAsync(many + 1);
        await place.Page.ClickAsync("[aria-label='take out point 3']");
        await Expect(rows).ToHaveCountAsync(many);
        await place.Page.Locator("#thrust-3-time").FillAsync("7");
        await Expect(place.Page.Locator("#thrust-wrong")).ToContainTextAsync("must rise");
        await Expect(place.Page.Locator("#thrust-3-time")).ToHaveAttributeAsync("aria-invalid", "true");
        await place.Page.ClickAsync("text=Put another table in place");
        await place.Page.FillAsync(".paste textarea", "time\tthrust\n0\t0\n0.1\tx\n2\t0\n");
        await place.Page.ClickAsync("text=Take these points");
        await Expect(place.Page.Locator(".thrust details .refusal")).ToContainTextAsync("line 3");
        await place.Page.FillAsync(".paste textarea", "time\tthrust\n0\t0\n0.1\t600\n2\t500\n2.4\t0\n");
        await place.Page.ClickAsync("text=Take these points");
        await Expect(rows).ToHaveCountAsync(4);

        // 600 x 0.1/2 + 1.9 x (600 + 500)/2 + 0.4 x 500/2 = 1175 N s; class J ends at 1280 N s.
        await Expect(place.Page.Locator(".thrust-plot figcaption")).ToContainTextAsync("total impulse 1175 N·s, class J");
    }

    [Fact]
    public async Task The_text_of_every_file_stands_beside_and_stays_in_step()
    {
        await using var place = await bench.Open();
        await place.Pick("weather");
        await place.Page.ClickAsync("text=Text of the file beside");
        await place.Page.ClickAsync(".text-files >> text=../weather/fair-afternoon.yaml");
        var text = place.Page.Locator("#design-text");
        await Expect(text).ToHaveValueAsync(new Regex("gust: 14 mph"));
        await place.Page.Locator(".things [data-path='weather.gust'] input").FillAsync("17 mph");
        await Expect(text).ToHaveValueAsync(new Regex("# Invented weather(.|\n)*gust: 17 mph"));
        await text.FillAsync((await text.InputValueAsync()).Replace("gust: 17 mph", "gust: 18 mph", StringComparison.Ordinal));
        await Expect(place.Page.Locator(".things [data-path='weather.gust'] input")).ToHaveValueAsync("18 mph");
        await text.FillAsync("wind speed: 9 mph\nground r");
        await Expect(place.Page.Locator("#completion button").First).ToContainTextAsync("ground roughness");
        await place.Page.ClickAsync(".text-files >> text=rocket.yaml");
        await Expect(text).ToHaveValueAsync(new Regex("name: Night Heron"));
    }

    [Fact]
    public async Task A_malformed_motor_file_shows_its_problems_and_where()
    {
        await using var place = await bench.Open("");
        var file = Path.Combine(place.Folder, "motors", "k521.yaml");
        var whole = await File.ReadAllTextAsync(file, Xunit.TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(file, whole.Replace("54 mm", "54 mn", StringComparison.Ordinal) + "colour: red\n", Xunit.TestContext.Current.CancellationToken);
        await place.Page.GotoAsync(place.Address.ToString());
        await place.Live();
        await place.Page.Locator(".choice", new() { HasText = "Night Heron" }).First.ClickAsync();
        await Expect(place.Page.Locator("#problems li")).ToHaveCountAsync(2);
        await place.Pick("motor");
        await Expect(place.Page.Locator("[data-path='motor.diameter'] .refusal")).ToContainTextAsync("is not a unit");
        await place.Page.Locator("#problems button").First.ClickAsync();
        await Expect(place.Page.Locator("#design-text")).ToBeFocusedAsync();
        await Expect(place.Page.Locator("#design-text")).ToHaveValueAsync(new Regex("colour: red"));
        await place.Page.Locator("#design-text").FillAsync(whole);
        await Expect(place.Page.Locator("#problems")).ToHaveCountAsync(0);
        await Expect(place.Page.Locator(".verdict-count")).ToContainTextAsync("clear");
    }

    [Fact]
    public async Task A_missing_motor_is_told_and_another_is_begun_or_a_copy_taken()
    {
        await using var place = await bench.Open("");
        File.Delete(Path.Combine(place.Folder, "motors", "k521.yaml"));
        await place.Page.GotoAsync(place.Address.ToString());
        await place.Live();
        await place.Page.Locator(".choice", new() { HasText = "Night Heron" }).First.ClickAsync();
        await Expect(place.Page.Locator("#pick-motor")).ToContainTextAsync("is missing");
        await place.Pick("motor");
        await Expect(place.Page.Locator(".day-file .notice")).ToContainTextAsync("There is no file");
        await place.Page.FillAsync("#own-motor", "Mine");
        await place.Page.ClickAsync(".day-file form button");
        await Expect(place.Page.Locator("[data-path='motor.diameter'] input")).ToHaveValueAsync("54 mm");
        await Expect(place.Page.Locator("#problems")).ToHaveCountAsync(0);
        await place.Page.FillAsync("[data-path='motor'] input", "../motors/l1053.yaml");
        await Expect(place.Page.Locator(".day-file h2")).ToHaveTextAsync("L1053");
        await place.Page.FillAsync("#own-motor", "My L1053");
        await place.Page.ClickAsync(".day-file form button");
        await Expect(place.Page.Locator(".day-file")).ToContainTextAsync("my-l1053.yaml");
        await Expect(place.Page.Locator(".shared")).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData("desktop", 1440, 900, false)]
    [InlineData("phone", 390, 844, false)]
    [InlineData("dark", 1440, 900, true)]
    public async Task The_forms_have_no_serious_fault_and_fit_their_window(string name, int width, int height, bool dark)
    {
        await using var place = await bench.Open(width: width, height: height, dark: dark);
        foreach (var key in new[] { "motor", "site", "weather", "limits", "failures" })
        {
            if (key is "limits" or "failures") await place.Page.ClickAsync($"[data-add='{key}'] .add-button");
            else await place.Pick(key);
            await place.Page.Locator("#thing-head").WaitForAsync();
            if (key == "motor") await place.Page.ClickAsync("text=Put another table in place");
            if (key == "failures") await place.Page.ClickAsync(".left-out > summary");
            if (key == "limits") await Expect(place.Page.Locator("[data-path='limits.weight.agreement'] .says")).ToContainTextAsync("At most this; usually 0.05 (common practice)");
            await place.Answered();
            await Expect(place.Page.Locator("#problems")).ToHaveCountAsync(0);

            await place.Page.HasNoSeriousFault(key);
            await place.Page.IsNotWiderThanItsWindow(key);
            var cut = await place.Page.EvaluateAsync<string[]>("[...document.querySelectorAll('.things *')].filter(e => e.getBoundingClientRect().right > document.querySelector('.things').getBoundingClientRect().right + 1 && !e.closest('.sr')).map(e => e.outerHTML.slice(0, 120))");
            Assert.Empty(cut);
            if (Into is not null)
            {
                await place.Page.ScreenshotAsync(new() { Path = Path.Combine(Into, $"{key}-{name}.png") });
                await place.Page.Locator(".things").ScreenshotAsync(new() { Path = Path.Combine(Into, $"{key}-{name}-whole.png"), Style = ".things { max-height: none !important; position: static !important; }" });
            }

            await place.Page.ClickAsync("text=All things");
        }
    }
}
