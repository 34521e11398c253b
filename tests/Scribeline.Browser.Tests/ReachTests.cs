using Deque.AxeCore.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>For everybody: keyboard alone, screen reader, little sight, a phone, the dark.</summary>
public class ReachTests(Bench bench)
{
    [Theory]
    [InlineData(1500, false)]
    [InlineData(390, false)]
    [InlineData(1500, true)]
    public async Task No_place_has_a_serious_fault(int width, bool dark)
    {
        await using var place = await bench.Open(width: width, dark: dark);
        await place.Page.Locator("#q-stable .question-text").ClickAsync();
        await place.Pick("parts[3]");
        await Faultless(place, "desk");
        foreach (var to in new[] { "bench", "yard", "field", "log" })
        {
            await place.Go(to);
            await Faultless(place, to);
        }

        await place.Page.GotoAsync(place.Address.ToString());
        await place.Live();
        await Faultless(place, "start");
    }

    [Fact]
    public async Task Broken_text_has_no_serious_fault_on_screen()
    {
        await using var place = await bench.Open();
        await place.Page.ClickAsync("text=Text of the file beside");
        await place.Page.Locator("#design-text").FillAsync("parts: [");
        await Expect(place.Page.Locator("#problems")).ToBeVisibleAsync();
        await Faultless(place, "desk with problems");
    }

    [Fact]
    public async Task A_question_is_opened_and_a_quantity_changed_with_the_keyboard_alone()
    {
        await using var place = await bench.Open();
        await place.Page.Locator("#q-stable .question-text").FocusAsync();
        await place.Page.Keyboard.PressAsync("Enter");
        await Expect(place.Page.Locator("#a-stable")).ToBeVisibleAsync();

        await place.Page.Locator("[id='pick-parts[1]']").FocusAsync();
        await place.Page.Keyboard.PressAsync("Enter");
        await Expect(place.Page.Locator("#thing-head")).ToBeFocusedAsync();
        var length = place.Page.Locator(".things [data-path='parts[1].length'] input");
        for (var i = 0; i < 40 && !await length.EvaluateAsync<bool>("e => e === document.activeElement"); i++) await place.Page.Keyboard.PressAsync("Tab");
        await Expect(length).ToBeFocusedAsync();
        await place.Page.Keyboard.PressAsync("Control+a");
        await place.Page.Keyboard.TypeAsync("25 in");
        await Expect(place.Page.Locator("#save")).ToBeEnabledAsync();
        await place.Page.Keyboard.PressAsync("Control+z");
        await Expect(place.Page.Locator("#save")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task Metric_and_inch_can_be_chosen()
    {
        await using var place = await bench.Open();
        await Expect(place.Page.Locator("#q-weight .unit")).ToHaveTextAsync("lb");
        await place.Page.ClickAsync(".more > summary");
        await place.Page.ClickAsync("label:has-text('metric')");
        await Expect(place.Page.Locator("#q-weight .unit")).ToHaveTextAsync("kg");
    }

    [Fact]
    public async Task A_long_name_stays_within_its_window()
    {
        await using var place = await bench.Open(width: 390);
        Assert.Null(place.Document.Change("name", string.Concat(Enumerable.Repeat("Verylongname", 12))));
        await place.Answered();
        var over = await place.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(over <= 0, $"{over} pixels too wide");
    }

    private static async Task Faultless(Workplace place, string where)
    {
        var result = await place.Page.RunAxe();
        var faults = result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{where}: {v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Take(4).Select(n => n.Html))}");
        Assert.Empty(faults);
    }
}
