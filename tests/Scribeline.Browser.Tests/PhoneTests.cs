using System.Globalization;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Little room: a phone upright and on its side, a tablet, a small laptop, a page enlarged twice over.</summary>
public class PhoneTests(Bench bench)
{
    // Apple and Google both ask for about this much of what a finger must hit; WCAG 2.2, 2.5.5, asks for 44 CSS pixels.
    private const int Finger = 44;

    [Fact]
    public async Task Counts_and_questions_come_first_and_the_rocket_is_a_tap_away()
    {
        await using var place = await bench.Open(width: 390, height: 844);
        foreach (var to in new[] { "desk", "bench" })
        {
            await place.Go(to);
            await Expect(place.Page.Locator(".rocket-drawing")).ToBeHiddenAsync();
            await Expect(place.Page.Locator(".things")).ToBeHiddenAsync();
            Assert.True(await Bottom(place, ".verdict-count") < 844, "the counts are below the first screen");
            Assert.True(await Bottom(place, ".question >> nth=1") < 844, "the second question is below the first screen");
            await ForFingers(place, ".frame-places a, .actions button, .more > summary, .rocket-strip, #turn-things, .question-face");
        }

        // Slim and upright, nose up: the topmost point lies on the axis, the widest ones, the fins' tips, in the aft fifth.
        var slim = await place.Page.EvalOnSelectorAsync<double[]>(".rocket-strip svg", """
            s => {
              const box = s.getBoundingClientRect(), points = [...s.querySelectorAll("polygon")].flatMap((p) => [...p.points]), view = s.viewBox.baseVal;
              const top = points.reduce((a, b) => b.y < a.y ? b : a), wide = points.reduce((a, b) => Math.abs(b.x) > Math.abs(a.x) ? b : a);
              return [box.height / box.width, Math.abs(top.x), (wide.y - view.y) / view.height];
            }
            """);
        Assert.InRange(slim[0], 3, 40);
        Assert.Equal(0, slim[1], 1.0);
        Assert.InRange(slim[2], 0.8, 1);

        await place.Page.ClickAsync(".rocket-strip");
        await Expect(place.Page.Locator(".rocket-drawing")).ToBeVisibleAsync();
        var drawing = (await place.Page.Locator(".rocket-drawing").BoundingBoxAsync())!;
        Assert.True(drawing.Height > drawing.Width, "the drawing does not stand upright");
        await place.Page.Locator(".rocket .word-joint").First.ClickAsync();
        await Expect(place.Page.Locator("#thing-head h2")).ToHaveTextAsync("Nose to Payload");
        await place.Page.ClickAsync(".rocket-strip");
        await Expect(place.Page.Locator(".rocket-drawing")).ToBeHiddenAsync();
    }

    [Theory]
    [InlineData("night-heron", 844, 390)]
    [InlineData("mute-swan", 820, 1180)]
    [InlineData("sand-martin", 1280, 800)]
    [InlineData("corn-crake", 720, 450)]
    public async Task Nothing_runs_out_of_the_window_and_an_answer_is_on_the_first_screen(string example, int width, int height)
    {
        await using var place = await bench.Open(example, width: width, height: height);
        foreach (var to in new[] { "desk", "bench", "yard", "field", "log" })
        {
            await place.Go(to);
            await place.Page.IsNotWiderThanItsWindow(to);
            if (height < 500) Assert.Equal("static", await place.Page.EvalOnSelectorAsync<string>(".frame", "f => getComputedStyle(f).position"));
            if (to is not ("desk" or "bench")) continue;
            Assert.True(await Bottom(place, ".verdict-count") < height, $"{to}: the counts are below the first screen");
            Assert.True(await Bottom(place, ".question .figure >> nth=0") < height, $"{to}: the first answer is below the first screen");
        }

        Assert.Empty(place.Complaints);
    }

    [Fact]
    public async Task Long_names_stay_whole_in_the_list_and_within_the_drawing()
    {
        await using var place = await bench.Open();
        var text = place.Document.Reading.Text;
        const string Long = "Payload section carrying the main parachute and a tracker";
        await place.Page.ClickAsync("text=Text of the file beside");
        await place.Page.Locator("#design-text").FillAsync(text.Replace("Payload", Long, StringComparison.Ordinal));
        await Expect(place.Page.Locator("#problems")).ToHaveCountAsync(0);
        await place.Document.Settled;
        await Expect(place.Page.Locator("[id='pick-parts[1]']")).ToContainTextAsync(Long);
        await Expect(place.Page.Locator(".rocket .word-joint title").First).ToContainTextAsync(Long);
        var beyond = await place.Page.EvaluateAsync<int>("[...document.querySelectorAll('.rocket-drawing .word')].filter(w => { const a = w.getBoundingClientRect(), b = w.ownerSVGElement.getBoundingClientRect(); return a.right > b.right + 1 || a.left < b.left - 1; }).length");
        Assert.Equal(0, beyond);
    }

    [Fact]
    public async Task Brought_nearer_and_farther_what_stands_in_the_middle_stays_there()
    {
        await using var place = await bench.Open("mute-swan");
        var nearer = place.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Nearer" });
        var farther = place.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Farther" });
        for (var i = 0; i < 3; i++) await nearer.ClickAsync();
        await Expect(place.Page.Locator(".near-3")).ToBeVisibleAsync();
        await InTheMiddle(0.5);

        // By hand to three tenths from the nose, and then quickly nearer and farther.
        await place.Page.EvalOnSelectorAsync(".rocket-window", "w => w.scrollTop = 0.3 * w.scrollHeight - w.clientHeight / 2");
        await place.Painted();
        await nearer.ClickAsync();
        for (var i = 0; i < 3; i++) await farther.ClickAsync();
        await nearer.ClickAsync();
        await Expect(place.Page.Locator(".near-2")).ToBeVisibleAsync();
        await InTheMiddle(0.3);

        // How far along the drawing the middle of the window lies, and whether the axis of the rocket is within the window. Waits, for a window follows its drawing.
        Task InTheMiddle(double along) => place.Page.WaitForFunctionAsync(
            """
            (along) => {
              const box = (of) => document.querySelector(of).getBoundingClientRect();
              const view = box(".rocket-window"), drawing = box(".rocket-drawing"), axis = box(".scribe");
              const middle = (view.top + view.height / 2 - drawing.top) / drawing.height;
              return Math.abs(middle - along) < 0.01 && view.left < axis.left && axis.right < view.right;
            }
            """,
            along);
    }

    [Fact]
    public async Task Brought_nearer_words_stand_beside_what_they_name()
    {
        await using var place = await bench.Open();
        for (var near = 1; near <= 2; near++)
        {
            await place.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Nearer" }).ClickAsync();
            await Expect(place.Page.Locator($".near-{near}")).ToBeVisibleAsync();

            // Waits, for the window follows its drawing. All words at its height stand within it.
            await place.Page.WaitForFunctionAsync("""
                () => {
                  const view = document.querySelector(".rocket-window").getBoundingClientRect();
                  const beside = [...document.querySelectorAll(".rocket-drawing .word")].map((word) => word.getBoundingClientRect()).filter((box) => box.top > view.top && box.bottom < view.bottom);
                  return beside.length > 2 && beside.every((box) => box.left >= view.left && box.right <= view.right);
                }
                """);
        }
    }

    private static async Task<double> Bottom(Workplace place, string selector)
    {
        var box = (await place.Page.Locator(selector).First.BoundingBoxAsync())!;
        return box.Y + box.Height;
    }

    private static async Task ForFingers(Workplace place, string selector)
    {
        var small = await place.Page.EvaluateAsync<string[]>(
            $"[...document.querySelectorAll('{selector}')].filter(e => e.offsetParent && e.getBoundingClientRect().height < {Finger.ToString(CultureInfo.InvariantCulture)}).map(e => e.className + ' ' + e.innerText)");
        Assert.Empty(small);
    }
}
