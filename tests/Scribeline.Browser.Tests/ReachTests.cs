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
        await place.Page.Locator("#a-stable plot-reading [role='slider']").First.WaitForAsync();
        await place.Pick("parts[3]");
        await place.Page.Locator("#thing-head").WaitForAsync();
        await place.Page.HasNoSeriousFault("desk");
        foreach (var to in new[] { "bench", "yard", "field", "log" })
        {
            await place.Go(to);
            await place.Page.HasNoSeriousFault(to);
        }

        await place.Page.GotoAsync(place.Address.ToString());
        await place.Live();
        await place.Page.HasNoSeriousFault("start");
    }

    // The example that stops at many questions, in the dark: every mark there is.
    [Fact]
    public async Task No_question_has_a_serious_fault_when_opened()
    {
        await using var place = await bench.Open("corn-crake", dark: true);
        foreach (var to in new[] { "desk", "bench", "yard", "field", "log" })
        {
            await place.Go(to);
            var questions = place.Document.Answers.Answers.Where(a => a.Question.Place.ToString().Equals(to, StringComparison.OrdinalIgnoreCase)).Select(a => a.Question.Id).ToList();
            await Expect(place.Page.Locator(".question-text")).ToHaveCountAsync(questions.Count);
            Assert.NotEmpty(questions);
            foreach (var question in questions) await place.Turn(question);

            await place.Page.HasNoSeriousFault(to);
        }

        Assert.Empty(place.Complaints);
    }

    [Fact]
    public async Task Broken_text_has_no_serious_fault_on_screen()
    {
        await using var place = await bench.Open();
        await place.Page.ClickAsync("text=Text of the file beside");
        await place.Page.Locator("#design-text").FillAsync("parts: [");
        await Expect(place.Page.Locator("#problems")).ToBeVisibleAsync();
        await place.Page.HasNoSeriousFault("desk with problems");
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
        await place.Page.IsNotWiderThanItsWindow("a long name");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Small_text_is_legible_in_the_sun(bool dark)
    {
        await using var place = await bench.Open(dark: dark);
        await place.Page.Locator("#q-stable .question-text").ClickAsync();
        await place.Page.Locator("#a-stable .source").First.WaitForAsync();

        // WCAG 2.2, success criterion 1.4.6: seven to one. The same formula of relative luminance.
        var faint = await place.Page.EvaluateAsync<string[]>("""
            () => {
              const light = (c) => c.map((v) => v / 255).map((v) => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4).reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
              const shade = (words) => words.match(/[\d.]+/g).slice(0, 3).map(Number);
              const ground = light(shade(getComputedStyle(document.body).backgroundColor));
              return [".quiet", ".basis", ".headline-name", ".margin-words", ".source", ".note", ".limit-sources", "thead th", ".frame-motor", ".verdict-clear"]
                .map((name) => [name, document.querySelector(name)]).filter(([, e]) => e)
                .map(([name, e]) => { const text = light(shade(getComputedStyle(e).color)); return [name, (Math.max(text, ground) + 0.05) / (Math.min(text, ground) + 0.05)]; })
                .filter(([, ratio]) => ratio < 7).map(([name, ratio]) => `${name} ${ratio.toFixed(1)}`);
            }
            """);
        Assert.Empty(faint);
    }

    [Fact]
    public async Task Shades_the_machine_sets_reach_the_drawing()
    {
        await using var place = await bench.Open();
        await place.Page.EmulateMediaAsync(new() { ForcedColors = Microsoft.Playwright.ForcedColors.Active });
        Assert.Equal("CanvasText", await place.Page.EvaluateAsync<string>("getComputedStyle(document.documentElement).getPropertyValue('--ink').trim()"));
        Assert.Equal(
            await place.Page.EvaluateAsync<string>("getComputedStyle(document.body).color"),
            await place.Page.EvalOnSelectorAsync<string>(".side-body", "e => getComputedStyle(e).stroke"));
        var pressed = await place.Page.EvaluateAsync<string[]>("['true', 'false'].map(p => { const b = document.querySelector('.rocket-tools button'); b.setAttribute('aria-pressed', p); return getComputedStyle(b).backgroundColor; })");
        Assert.NotEqual(pressed[0], pressed[1]);
    }
}
