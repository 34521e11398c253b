using Microsoft.Playwright;
using Scribeline.App.Terminal;
using Scribeline.App.Web;
using Scribeline.Engine.Questions;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>What a builder does at the Desk, in a real browser.</summary>
public class WorkbenchTests(Bench bench)
{
    [Fact]
    public async Task An_edit_is_answered_undone_saved_and_there_after_loading_again()
    {
        await using var place = await bench.Open();
        var mass = place.Page.Locator("#q-weight .figure");
        var before = await mass.InnerTextAsync();

        await place.Pick("parts[1]");
        var length = place.Page.Locator("[data-path='parts[1].length'] input");
        var typed = await length.InputValueAsync();
        await length.FillAsync("40 in");
        await Expect(mass).Not.ToHaveTextAsync(before);
        await Expect(place.Page.Locator("[data-path='parts[1].length'] .other")).ToHaveTextAsync("= 1016 mm");

        await place.Page.ClickAsync("#undo");
        await Expect(mass).ToHaveTextAsync(before);
        await Expect(length).ToHaveValueAsync(typed);
        await place.Page.ClickAsync("#redo");
        await Expect(mass).Not.ToHaveTextAsync(before);
        var after = await mass.InnerTextAsync();

        await place.Page.Keyboard.PressAsync("Control+s");
        await Expect(place.Page.Locator("#save")).ToHaveTextAsync("Saved");
        Assert.Contains("length: 40 in", await File.ReadAllTextAsync(place.Document.Path, Xunit.TestContext.Current.CancellationToken), StringComparison.Ordinal);

        await place.Page.ReloadAsync();
        await place.Live();
        await Expect(mass).ToHaveTextAsync(after);
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Fact]
    public async Task What_cannot_be_read_is_told_beside_the_field_and_not_taken_over()
    {
        await using var place = await bench.Open();
        await place.Pick("parts[1]");
        var field = place.Page.Locator("[data-path='parts[1].length']");
        await field.Locator("input").FillAsync("20 inchs");
        await Expect(field.Locator(".refusal")).ToContainTextAsync("in");
        await Expect(field.Locator("input")).ToHaveAttributeAsync("aria-invalid", "true");
        Assert.False(place.Document.IsChanged);
        await field.Locator("input").FillAsync("21 in");
        await Expect(field.Locator(".refusal")).ToHaveCountAsync(0);
        Assert.True(place.Document.IsChanged);
    }

    [Fact]
    public async Task The_text_and_the_forms_stay_in_step()
    {
        await using var place = await bench.Open();
        await place.Page.ClickAsync("text=Text of the file beside");
        await place.Pick("parts[1]");
        var text = place.Page.Locator("#design-text");
        var length = place.Page.Locator("[data-path='parts[1].length'] input");
        await length.FillAsync("33 in");
        await Expect(text).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("length: 33 in"));
        await text.FillAsync((await text.InputValueAsync()).Replace("length: 33 in", "length: 34 in", StringComparison.Ordinal));
        await Expect(length).ToHaveValueAsync("34 in");

        await text.FillAsync((await text.InputValueAsync()).Replace("joints:", "joints: [", StringComparison.Ordinal));
        await Expect(place.Page.Locator("#problems")).ToContainTextAsync("line");
        Assert.NotEmpty(place.Document.Answers.Answers);
        await place.Page.ClickAsync("#undo");
        await Expect(place.Page.Locator("#problems")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Two_windows_work_on_one_design()
    {
        await using var place = await bench.Open();
        var other = await place.Another();
        await place.Pick("parts[1]");
        await place.Pick("parts[3]", other);
        await place.Page.Locator("[data-path='parts[1].length'] input").FillAsync("22 in");
        await other.Locator("[data-path='parts[3].length'] input").FillAsync("37 in");
        await Expect(other.Locator("#undo")).ToBeEnabledAsync();
        await place.Answered();
        await place.Answered(other);
        Assert.Contains("length: 22 in", place.Document.Reading.Text, StringComparison.Ordinal);
        Assert.Contains("length: 37 in", place.Document.Reading.Text, StringComparison.Ordinal);
        await Expect(place.Page.Locator("#q-stack .figure")).ToHaveTextAsync(await other.Locator("#q-stack .figure").InnerTextAsync());
    }

    [Fact]
    public async Task A_silent_machine_is_not_taken_for_one_that_is_gone()
    {
        await using var place = await bench.Open();
        await place.Page.Clock.InstallAsync();
        await place.Go("desk");
        await place.Page.Clock.FastForwardAsync((long)(WorkbenchServer.Silence / 2).TotalMilliseconds);
        Assert.Null(place.Document.Change("parts[1].length", "21.6 in"));
        await place.Answered();
        await Expect(place.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();
        Assert.Empty(place.Complaints);
    }

    [Fact]
    public async Task A_workbench_that_has_ended_is_told_of()
    {
        await using var place = await bench.Open();
        await place.Page.Clock.InstallAsync();
        await place.Go("desk");
        await Expect(place.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();

        // While the page's clock stands still nothing is tried again, however long looking takes.
        await place.Page.Clock.PauseAtAsync(await place.Page.EvaluateAsync<string>("new Date(Date.now() + 60000).toISOString()"));
        await place.End();
        await Expect(place.Page.GetByText("The workbench does not answer.")).ToBeVisibleAsync();
        await place.Page.Clock.ResumeAsync();
        await Expect(place.Page.GetByText("The workbench has ended.")).ToBeVisibleAsync();
        await Expect(place.Page.GetByText("The workbench does not answer.")).ToBeHiddenAsync();
        Assert.Empty(place.Foreign);
    }

    [Fact]
    public async Task A_malformed_file_opens_and_says_what_to_mend()
    {
        await using var place = await bench.Open("");
        var file = Path.Combine(place.Folder, "night-heron", "rocket.yaml");
        var whole = await File.ReadAllTextAsync(file, Xunit.TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(file, whole.Replace("outside: 3.12 in", "outside: 3.12 inn", StringComparison.Ordinal) + "colour: red\n", Xunit.TestContext.Current.CancellationToken);
        await place.Page.GotoAsync(place.Address.ToString());
        await place.Live();
        await place.Page.Locator(".choice", new() { HasText = "Night Heron" }).First.ClickAsync();
        await Expect(place.Page.Locator("#problems")).ToContainTextAsync("colour");
        await place.Page.Locator("#problems button").First.ClickAsync();
        await Expect(place.Page.Locator("#design-text")).ToBeFocusedAsync();
        await place.Page.Locator("#design-text").FillAsync(whole);
        await Expect(place.Page.Locator("#problems")).ToHaveCountAsync(0);
        await Expect(place.Page.Locator(".verdict-count")).ToContainTextAsync("clear");
    }

    [Fact]
    public async Task A_part_is_added_picked_on_the_drawing_and_taken_out()
    {
        await using var place = await bench.Open();
        var parts = place.Document.Outline!.Maps.Count(m => m.Word == "parts");
        await place.Page.ClickAsync("text=Add part");
        await Expect(place.Page.Locator(".thing-head h2")).ToHaveTextAsync("Tube");
        Assert.Equal(parts + 1, place.Document.Outline!.Maps.Count(m => m.Word == "parts"));
        await place.Page.ClickAsync(".thing-head .take-out >> nth=0");
        await Expect(place.Page.Locator("[id^='pick-parts']")).ToHaveCountAsync(parts);
        await place.Answered();
        await place.Page.Locator(".rocket .word-joint").First.ClickAsync();
        await Expect(place.Page.Locator(".thing-head h2")).ToHaveTextAsync("Nose to Payload");
        await Expect(place.Page.Locator(".touches")).ToContainTextAsync("free its joint");
    }

    [Fact]
    public async Task Every_number_on_screen_is_that_of_the_terminal()
    {
        await using var place = await bench.Open(cases: 4);
        await Expect(place.Page.Locator("[data-cases='4']").First).ToBeAttachedAsync();
        var opened = App.Commands.OpenedDesign.Open(Path.Combine(place.Folder, "night-heron")).Studies!;
        var terminal = Enquiry.Ask(Questionnaire.All, opened.Nominal!, opened.Case, 4, cancel: Xunit.TestContext.Current.CancellationToken);
        foreach (var answer in terminal.Where(a => a.Question.Place == Place.Desk && a.Findings.Count > 0))
        {
            var card = place.Page.Locator($"#q-{answer.Question.Id}");
            await place.Turn(answer.Question.Id);
            await Expect(card.Locator(".findings tbody tr")).ToHaveCountAsync(answer.Findings.Count);
            var rows = await card.Locator(".findings tbody tr").EvaluateAllAsync<string[]>("rows => rows.map(r => [...r.children].map((c, i) => (i ? c.innerText : c.firstChild.textContent).trim()).join('|'))");
            Assert.Equal(answer.Findings.Select(f => Row(answer, f)), rows);
            await Expect(card.Locator(".verdict").First).ToContainTextAsync(VerdictMark.Word(answer.Verdict));
        }
    }

    [Fact]
    public async Task Unsaved_work_is_there_after_a_sudden_end()
    {
        await using var place = await bench.Open();
        Assert.Null(place.Document.Change("name", "Never Saved"));
        await place.Document.Settled;
        using var again = App.Documents.DesignDocument.Open("again", place.Document.Path, 0, TimeSpan.Zero).Document!;
        Assert.NotNull(again.Unsaved);
        again.TakeUp();
        Assert.Equal("Never Saved", again.Reading.Design!.Name);
    }

    [Fact]
    public async Task Revisions_are_listed_with_what_changed_since()
    {
        await using var place = await bench.Open();
        Assert.Null(place.Document.Change("name", "First"));
        Assert.Null(place.Document.Save());
        Assert.Null(place.Document.Change("name", "Second"));
        Assert.Null(place.Document.Change("weather.gust", "20 mph"));
        await place.Go("log");
        var revision = place.Page.Locator(".revisions li").First;
        await revision.GetByRole(AriaRole.Button, new() { Name = "Differences from now" }).ClickAsync();
        await Expect(revision.Locator(".difference-of")).ToHaveTextAsync(["rocket.yaml", "../weather/fair-afternoon.yaml"]);
        await Expect(revision.Locator(".line-out")).ToHaveTextAsync(["− name: First", "− gust: 14 mph"]);
        await Expect(revision.Locator(".line-in")).ToHaveTextAsync(["+ name: Second", "+ gust: 20 mph"]);
        await revision.GetByRole(AriaRole.Button, new() { Name = "Take up again" }).ClickAsync();
        await Expect(place.Page.Locator("h1")).ToHaveTextAsync("First");
        await Expect(place.Page.Locator(".revisions .told")).ToContainTextAsync("rocket.yaml, ../weather/fair-afternoon.yaml");

        // What the first saving replaced can be had back too.
        await Expect(place.Page.Locator(".revisions li")).ToHaveCountAsync(2);
        await place.Page.Locator(".revisions li").Last.GetByRole(AriaRole.Button, new() { Name = "Take up again" }).ClickAsync();
        await Expect(place.Page.Locator("h1")).ToHaveTextAsync("Night Heron");
    }

    [Fact]
    public async Task A_new_design_is_begun_from_the_start_page()
    {
        await using var place = await bench.Open("");
        await place.Page.GotoAsync(place.Address.ToString());
        await place.Live();
        await place.Page.FillAsync("#new-name", "Grey Wagtail");
        await place.Page.ClickAsync(".start button.main");
        await Expect(place.Page.Locator("h1")).ToHaveTextAsync("Grey Wagtail");
        Assert.True(File.Exists(Path.Combine(place.Folder, "grey-wagtail", "rocket.yaml")));
    }

    [Fact]
    public async Task Fast_typing_loses_no_letter()
    {
        await using var place = await bench.Open();
        var words = string.Concat(Enumerable.Range(0, 60).Select(i => (char)('a' + (i % 26))));
        await place.Pick("");
        var name = place.Page.Locator(".things [data-path='name'] input");
        await name.FocusAsync();
        await name.FillAsync("");
        await place.Page.Keyboard.TypeAsync("Heron" + words);
        await Expect(place.Page.Locator("h1")).ToHaveTextAsync("Heron" + words);
        await Expect(name).ToHaveValueAsync("Heron" + words);

        await place.Page.ClickAsync("text=Text of the file beside");
        var text = place.Page.Locator("#design-text");
        await Expect(text).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("Heron"));
        await text.EvaluateAsync("t => { t.focus(); const at = t.value.indexOf('name: Heron') + 6; t.setSelectionRange(at, at + 5); }");
        await place.Page.Keyboard.TypeAsync("Egret" + words);
        await Expect(place.Page.Locator("h1")).ToHaveTextAsync("Egret" + words + words);
        Assert.Contains($"name: Egret{words}{words}", await text.InputValueAsync(), StringComparison.Ordinal);
        await Expect(place.Page.Locator(".text-view .refusal")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Text_is_completed_at_the_caret()
    {
        await using var place = await bench.Open();
        await place.Page.ClickAsync("text=Text of the file beside");
        var text = place.Page.Locator("#design-text");
        await text.FillAsync("scribeline: 1\nname: A\ndisp");
        await Expect(place.Page.Locator("#completion")).ToBeVisibleAsync();
        await place.Page.Keyboard.PressAsync("Alt+ArrowDown");
        await Expect(place.Page.Locator("#completion button").First).ToBeFocusedAsync();
        await place.Page.Keyboard.PressAsync("Enter");
        await Expect(text).ToHaveValueAsync("scribeline: 1\nname: A\ndisplay: ");
        await Expect(text).ToBeFocusedAsync();
        await Expect(place.Page.Locator("#completion button")).ToContainTextAsync(["metric", "inch"]);
        await place.Page.Keyboard.TypeAsync("m");
        await Expect(place.Page.Locator("#completion button")).ToContainTextAsync(["metric"]);
    }

    [Fact]
    public async Task A_thrust_table_becomes_a_motor_a_design_can_name()
    {
        await using var place = await bench.Open("");
        await place.Page.GotoAsync(place.Address.ToString());
        await place.Live();
        await place.Page.ClickAsync(".motor-form summary");
        var fields = place.Page.Locator(".motor-fields input[maxlength]");
        foreach (var (value, i) in new[] { "J300", "38 mm", "370 mm", "620 g", "330 g" }.Select((v, i) => (v, i))) await fields.Nth(i).FillAsync(value);
        await place.Page.Locator(".motor-fields textarea").FillAsync("time,thrust\n0,0\n0.1,400\n2,280\n2.2,x\n");
        await place.Page.ClickAsync("text=Bring it in");
        await Expect(place.Page.Locator(".motor-form .refusal")).ToContainTextAsync("line 5");
        await place.Page.Locator(".motor-fields textarea").FillAsync("time,thrust\n0,0\n0.1,400\n2,280\n2.2,0\n");
        await place.Page.ClickAsync("text=Bring it in");
        await Expect(place.Page.Locator(".motor-form .told")).ToContainTextAsync("../motors/j300.yaml");

        var heron = Path.Combine(place.Folder, "night-heron", "rocket.yaml");
        var design = await File.ReadAllTextAsync(heron, Xunit.TestContext.Current.CancellationToken);
        var reading = Store.DesignFile.ReadText(design.Replace("k521", "j300", StringComparison.Ordinal), heron);
        Assert.Empty(reading.Problems);
        Assert.Equal(4, reading.Design!.Motor!.Value!.Thrust.Value!.Points.Count);
    }

    private static string Row(Answer answer, Finding finding)
    {
        List<string> cells = [finding.Name, Shown.Text(finding.Value, finding.Unit, inch: true)];
        if (answer.Findings.Any(f => f.Limit is not null)) cells.Add(finding.Limit is { } limit ? AnswerText.Limit(limit, finding.Unit, inch: true) : "");
        if (answer.Findings.Any(f => f.Spread is not null)) cells.Add(finding.Spread is { } spread ? AnswerText.Spread(spread, finding, inch: true) : "");
        if (answer.Findings.Any(f => f.Spread?.Meets is not null)) cells.Add(finding.Spread?.Meets is { } share ? AnswerText.Share(share) : "");
        return string.Join('|', cells);
    }
}
