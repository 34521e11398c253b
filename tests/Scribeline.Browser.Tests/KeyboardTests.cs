using Scribeline.Engine.Questions;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Hands on the keys alone: every place walked from end to end, closed again, and what changed told in words.</summary>
public class KeyboardTests(Bench bench)
{
    // Who has the focus: a name unlike any other on the page, and what is wrong with how it shows.
    private const string Focused = """
        () => {
          const e = document.activeElement;
          if (!e || e === document.body) return null;
          e.walked ??= String(window.walked = (window.walked ?? 0) + 1);
          const style = getComputedStyle(e), box = e.getBoundingClientRect();
          const thing = e.querySelector?.(".plate-thing");
          const ring = (style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2) || (thing && parseFloat(getComputedStyle(thing).strokeWidth) >= 3);
          const x = Math.min(Math.max(box.left + box.width / 2, 1), innerWidth - 2), y = Math.min(Math.max(box.top + Math.min(box.height / 2, 20), 1), innerHeight - 2);
          const top = document.elementFromPoint(x, y);
          const faults = [];
          if (!ring) faults.push("no ring");
          if (box.bottom < 1 || box.top > innerHeight - 1) faults.push("out of sight");
          else if (top && !thing && top !== e && !e.contains(top) && !top.contains(e) && !top.closest(".question-face")) faults.push(`under ${top.className}`);
          return [e.walked, `${e.tagName} ${e.id} ${e.className} ${(e.getAttribute("aria-label") ?? e.innerText ?? "").slice(0, 40)}`, faults.join(", ")];
        }
        """;

    [Theory]
    [InlineData("desk", "stable", 1500, 1000)]
    [InlineData("bench", "plates-clear", 1500, 1000)]
    [InlineData("bench", "build-order", 390, 844)]
    public async Task A_place_is_walked_from_end_to_end(string to, string question, int width, int height)
    {
        await using var place = await bench.Open(width: width, height: height);
        await place.Go(to);
        if (to == "desk")
        {
            await place.Page.ClickAsync("text=Watch the flight");
            await place.Page.Locator(".replay-events li").First.WaitForAsync();
        }

        await place.Turn(question);
        if (to == "desk") await place.Page.Locator("#a-stable plot-reading [role='slider']").First.WaitForAsync();
        if (question == "plates-clear") await place.Page.Locator(".plate-group").First.WaitForAsync();
        await place.Page.EvaluateAsync("() => { document.activeElement.blur(); scrollTo(0, 0); document.querySelector('.skip').focus(); }");
        await place.Page.Keyboard.PressAsync("Tab");

        List<string> walked = [];
        for (var steps = 0; steps < 400; steps++)
        {
            var at = await place.Page.EvaluateAsync<string[]?>(Focused);
            if (at is null) break;
            Assert.False(walked.Contains(at[0]), $"back at {at[1]} before the end");
            Assert.True(at[2].Length == 0, $"{at[1]}: {at[2]}");
            walked.Add(at[0]);
            await place.Page.Keyboard.PressAsync("Tab");
        }

        var last = await place.Page.EvaluateAsync<string>("() => [...document.querySelectorAll('.question-text')].at(-1).walked ?? ''");
        Assert.Contains(last, walked);

        // The same way back.
        await place.Page.Locator(".question-text").Last.FocusAsync();
        for (var back = walked.IndexOf(last); back > walked.IndexOf(last) - 5; back--)
        {
            Assert.Equal(walked[back], (await place.Page.EvaluateAsync<string[]?>(Focused))![0]);
            await place.Page.Keyboard.PressAsync("Shift+Tab");
        }
    }

    [Fact]
    public async Task Escape_closes_what_was_opened_and_goes_back_to_what_opened_it()
    {
        await using var place = await bench.Open();
        await place.Page.Locator(".more > summary").FocusAsync();
        await place.Page.Keyboard.PressAsync("Enter");
        await Expect(place.Page.Locator(".more-sheet")).ToBeVisibleAsync();
        await place.Page.Keyboard.PressAsync("Escape");
        await Expect(place.Page.Locator(".more-sheet")).ToBeHiddenAsync();
        await Expect(place.Page.Locator(".more > summary")).ToBeFocusedAsync();

        await place.Page.Locator("#t-stable").FocusAsync();
        await place.Page.Keyboard.PressAsync("Enter");
        await place.Page.Locator("#a-stable .scroll").First.FocusAsync();
        await place.Page.Keyboard.PressAsync("Escape");
        await Expect(place.Page.Locator("#a-stable")).ToHaveCountAsync(0);
        await Expect(place.Page.Locator("#t-stable")).ToBeFocusedAsync();

        await place.Page.Locator("[id='pick-parts[1]']").FocusAsync();
        await place.Page.Keyboard.PressAsync("Enter");
        await Expect(place.Page.Locator("#thing-head")).ToBeFocusedAsync();
        await place.Page.Keyboard.PressAsync("Escape");
        await Expect(place.Page.Locator("[id='pick-parts[1]']")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Who_types_already_is_not_called_to_the_head_of_what_was_picked()
    {
        await using var place = await bench.Open();
        await place.Pick("parts[1]");
        await Expect(place.Page.Locator("#thing-head")).ToBeFocusedAsync();
        var length = place.Page.Locator(".things [data-path='parts[1].length'] input");
        await length.FocusAsync();
        await place.Page.EvaluateAsync("scribeline.focus('thing-head')");
        await Expect(length).ToBeFocusedAsync();
        await place.Page.EvaluateAsync("document.activeElement.blur(); scribeline.focus('thing-head')");
        await Expect(place.Page.Locator("#thing-head")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task A_changed_verdict_is_told_once_and_nothing_else()
    {
        await using var place = await bench.Open();
        var news = place.Page.Locator("#verdict-news");
        await Expect(news).ToHaveTextAsync("");
        var before = place.Document.Answers.Answers.ToDictionary(a => a.Question.Id, a => a.Verdict);

        // Far smaller fins: less stable, whatever else.
        Assert.Null(place.Document.Change("parts[3].fins[0].span", "1-1/4 in"));
        await place.Answered();
        var changed = place.Document.Answers.Answers.Where(a => before[a.Question.Id] != a.Verdict).ToList();
        Assert.Contains(changed, a => a.Question.Id == "stable" && a.Verdict == Verdict.Stop);
        await Expect(news).ToContainTextAsync("Now stop.");
        Assert.Equal(Math.Min(3, changed.Count), (await news.InnerTextAsync()).Split("Now ").Length - 1);

        // A change that changes no verdict is not told.
        Assert.Null(place.Document.Change("name", "Night Heron II"));
        await place.Answered();
        await Expect(news).ToHaveTextAsync("");
    }
}
