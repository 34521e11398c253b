using System.Text;
using Microsoft.Playwright;
using Scribeline.Drawing.Sheets;
using Scribeline.Drawing.Templates;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;
using Scribeline.Store;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Work at the bench: things moved on a plate, templates taken away, steps ticked off and sizes measured.</summary>
public class BenchTests(Bench bench)
{
    private const string Bay = "Bay top";

    [Fact]
    public async Task Dragging_a_cup_changes_the_design_and_undo_takes_it_back()
    {
        await using var place = await bench.Open();
        var plates = await Opened(place, "plates-clear");
        await Chosen(plates);
        var before = place.Document.Reading.Text;
        var gap = Narrowest(place);

        // From 52 degrees to 75, an inch from the middle: snapped to the fifteenth degree and to a 32nd of an inch.
        await Drag(place, plates, "charge cup 1", Polar(25.4, 52), Polar(25.3, 74));
        await Expect(plates.GetByLabel("charge cup 1, clock angle")).ToHaveValueAsync("75 deg");
        await Expect(plates.GetByLabel("charge cup 1, from the middle")).ToHaveValueAsync("1 in");
        Assert.Contains("{kind: charge cup, count: 2, diameter: 5/8 in, from centre: 1 in, clock: [75 deg, 232 deg]}", place.Document.Reading.Text, StringComparison.Ordinal);
        Assert.Equal(before.Split('\n').Length, place.Document.Reading.Text.Split('\n').Length);
        await place.Answered();
        Assert.NotEqual(gap, Narrowest(place));
        await Expect(plates.Locator(".plate-gaps")).ToContainTextAsync(Shown.Text(Narrowest(place), Unit.Length, true));

        await place.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(plates.GetByLabel("charge cup 1, clock angle")).ToHaveValueAsync("52 deg");
        Assert.Equal(before, place.Document.Reading.Text);
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Fact]
    public async Task Gaps_are_shown_while_it_is_dragged()
    {
        await using var place = await bench.Open();
        var plates = await Opened(place, "plates-clear");
        await Chosen(plates);
        var from = await Point(plates, Polar(25.4, 52));
        var to = await Point(plates, Polar(25.4, 20));
        await place.Page.Mouse.MoveAsync(from.X, from.Y);
        await place.Page.Mouse.DownAsync();
        await place.Page.Mouse.MoveAsync(to.X, to.Y, new() { Steps = 6 });

        // Into the washer of the rod, which stands at 0 degrees: the reach of both is known, so is the overlap.
        await Expect(plates.Locator(".plate-said")).ToContainTextAsync("at 20°");
        await Expect(plates.Locator(".plate-gaps li").First).ToContainTextAsync("charge cup 1");
        await Expect(plates.Locator(".plate-gaps li").First).ToContainTextAsync("stop");
        var washer = (PlateCircle)Plate(place).Things.Single(t => t.Name == "washer of rod 1").Outline;
        var middles = Math.Sqrt(Math.Pow((0.0254 * Math.Cos(20 * Math.PI / 180)) - washer.X, 2) + Math.Pow(0.0254 * Math.Sin(20 * Math.PI / 180), 2));
        await Expect(plates.Locator(".plate-gaps")).ToContainTextAsync($"{Shown.Text(middles - washer.Radius - (0.0254 * 5 / 16), Unit.Length, true)} between washer of rod 1 and charge cup 1");

        // Nothing is written before it is let go.
        Assert.False(place.Document.IsChanged);
        await place.Page.Mouse.UpAsync();
        await Expect(plates.GetByLabel("charge cup 1, clock angle")).ToHaveValueAsync("20 deg");
        Assert.True(place.Document.IsChanged);
    }

    [Fact]
    public async Task Keys_and_numbers_place_things_too()
    {
        await using var place = await bench.Open();
        var plates = await Opened(place, "plates-clear");
        await Chosen(plates);
        var cup = plates.GetByRole(AriaRole.Button, new() { Name = "charge cup 2" });
        await cup.FocusAsync();
        await cup.PressAsync("ArrowLeft");
        await Expect(plates.GetByLabel("charge cup 2, clock angle")).ToHaveValueAsync("237 deg");
        await Expect(plates.Locator("g[data-group='charge cup 2']")).ToBeFocusedAsync();

        // A number stays as it was typed, and both cups share it.
        await plates.GetByLabel("charge cup 1, from the middle").FillAsync("1-1/16 in");
        await plates.GetByLabel("charge cup 1, from the middle").PressAsync("Tab");
        await Expect(plates.GetByLabel("charge cup 2, from the middle")).ToHaveValueAsync("1-1/16 in");
        Assert.Contains("from centre: 1-1/16 in, clock: [52 deg, 237 deg]}", place.Document.Reading.Text, StringComparison.Ordinal);

        // What cannot be read is refused, with what to type instead.
        await plates.GetByLabel("wire hole, clock angle").FillAsync("towards the crane");
        await plates.GetByLabel("wire hole, clock angle").PressAsync("Tab");
        await Expect(plates.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
        Assert.DoesNotContain("crane", place.Document.Reading.Text, StringComparison.Ordinal);

        // Rods go by their spacing across the middle.
        await plates.GetByLabel("rod, spacing").FillAsync("1-7/8 in");
        await plates.GetByLabel("rod, spacing").PressAsync("Tab");
        await Expect(plates.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
        Assert.Contains("spacing: 1-7/8 in", place.Document.Reading.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Templates_are_taken_away_as_the_terminal_writes_them()
    {
        await using var place = await bench.Open();
        var templates = await Opened(place, "templates");
        var study = place.Document.Answers.Study!;
        var expected = RocketTemplates.Of(study, Paper.A4);
        await Expect(templates.Locator("figure")).ToHaveCountAsync(expected.Count);
        var plate = expected.Single(t => t.Id == "bay-top");
        var item = templates.Locator("figure").Filter(new() { HasText = plate.Title }).First;
        SheetFacts facts = new(study.Rocket.Name, typeof(Workplace).Assembly.GetName().Version!.ToString(3), DesignFingerprint.Of(place.Document.Reading.Files));
        Assert.Equal(TemplateOutput.Svg(plate, facts), Encoding.UTF8.GetString(await Taken(place, item, "SVG", "night-heron-bay-top.svg")));
        Assert.Equal(DxfText.Of(plate), Encoding.ASCII.GetString(await Taken(place, item, "DXF", "night-heron-bay-top.dxf")));
        Assert.Equal(TemplateOutput.Png(plate, facts), await Taken(place, item, "PNG", "night-heron-bay-top.png"));

        // To print: one PDF for each paper, of as many pages as it says.
        var pdf = await place.Page.APIRequest.GetAsync(new Uri(place.Address, "night-heron/templates-letter.pdf").ToString());
        Assert.Equal("application/pdf", pdf.Headers["content-type"]);
        Assert.StartsWith("%PDF", Encoding.ASCII.GetString((await pdf.BodyAsync())[..8]), StringComparison.Ordinal);
        Assert.Equal(404, (await place.Page.APIRequest.GetAsync(new Uri(place.Address, "night-heron/template/no-such.svg").ToString())).Status);
        Assert.Empty(place.Complaints);
        Assert.Empty(place.Foreign);
    }

    [Fact]
    public async Task Ticks_and_measured_values_survive_a_reload_and_count()
    {
        await using var place = await bench.Open();
        var build = await Opened(place, "build-order");
        var steps = place.Document.Answers.Study!.Rocket.Build.Steps.Count(s => s.HandsOn);
        await Expect(build.GetByRole(AriaRole.Status)).ToContainTextAsync($"0 of {steps} steps done");
        var first = build.Locator(".build-steps li").First;
        var says = await first.Locator("label span").First.TextContentAsync();
        await first.GetByRole(AriaRole.Checkbox).CheckAsync();
        await Expect(build.GetByRole(AriaRole.Status)).ToContainTextAsync($"1 of {steps} steps done");
        await build.GetByLabel("measured Nose outside").FillAsync("3.125 in ± 0.002 in");
        await build.GetByLabel("measured Nose outside").PressAsync("Tab");
        await place.Answered();
        await Expect(await Unfolded(place, "as-built")).ToContainTextAsync("Nose outside");

        await place.Go("bench");
        build = await Unfolded(place, "build-order");
        await Expect(build.GetByRole(AriaRole.Status)).ToContainTextAsync($"1 of {steps} steps done");
        await Expect(build.GetByLabel("measured Nose outside")).ToHaveValueAsync("3.125 in ± 0.002 in");
        await build.GetByRole(AriaRole.Button, new() { Name = "Every step" }).ClickAsync();
        var ticked = build.Locator(".build-all li").Filter(new() { HasText = says! }).First.GetByRole(AriaRole.Checkbox);
        await Expect(ticked).ToBeCheckedAsync();
        await ticked.UncheckAsync();
        await Expect(build.GetByRole(AriaRole.Status)).ToContainTextAsync($"0 of {steps} steps done");

        // Nonsense is refused and nothing kept.
        await build.GetByLabel("measured Nose length").FillAsync("long");
        await build.GetByLabel("measured Nose length").PressAsync("Tab");
        await Expect(build.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
        Assert.Single(place.Document.Measured);
        Assert.Empty(place.Complaints);
    }

    [Theory]
    [InlineData(1500, false)]
    [InlineData(390, false)]
    [InlineData(1500, true)]
    public async Task The_bench_is_for_everybody(int width, bool dark)
    {
        await using var place = await bench.Open(width: width, dark: dark);
        foreach (var question in new[] { "plates-clear", "templates", "build-order", "holes-clear", "bonds" }) await Opened(place, question);
        await place.Page.IsNotWiderThanItsWindow("the bench");
        await place.Page.HasNoSeriousFault("the bench");
    }

    private static async Task<ILocator> Opened(Workplace place, string question)
    {
        if (!place.Page.Url.EndsWith("/bench", StringComparison.Ordinal)) await place.Go("bench");
        return await Unfolded(place, question);
    }

    private static async Task<ILocator> Unfolded(Workplace place, string question)
    {
        var inside = await place.Turn(question);
        if (question == "plates-clear") await inside.Locator(".plate-group").First.WaitForAsync();
        return inside;
    }

    private static async Task Chosen(ILocator plates)
    {
        await plates.GetByRole(AriaRole.Button, new() { Name = Bay, Exact = true }).ClickAsync();
        await plates.Locator("g[data-group='charge cup 1']").WaitForAsync();
        await plates.Locator(".plate-drawing").ScrollIntoViewIfNeededAsync();
    }

    private static async Task Drag(Workplace place, ILocator plates, string group, (double X, double Y) from, (double X, double Y) to)
    {
        var (begin, end) = (await Point(plates, from), await Point(plates, to));
        await place.Page.Mouse.MoveAsync(begin.X, begin.Y);
        await place.Page.Mouse.DownAsync();
        await place.Page.Mouse.MoveAsync(end.X, end.Y, new() { Steps = 6 });
        await Expect(plates.Locator(".plate-said")).ToContainTextAsync(group);
        await place.Page.Mouse.UpAsync();
    }

    // The scribe line is up and clock angles run counter-clockwise: 90 degrees lies to the left.
    private static async Task<(float X, float Y)> Point(ILocator plates, (double X, double Y) at)
    {
        var box = (await plates.Locator(".plate-edge").BoundingBoxAsync())!;
        var scale = box.Width / 75.946;
        return ((float)(box.X + (box.Width / 2) - (at.Y * scale)), (float)(box.Y + (box.Height / 2) - (at.X * scale)));
    }

    private static (double X, double Y) Polar(double far, double degrees) => (far * Math.Cos(degrees * Math.PI / 180), far * Math.Sin(degrees * Math.PI / 180));

    private static PlateLayout Plate(Workplace place) => place.Document.Answers.Study!.Plates.Single(p => p.Name == Bay);

    private static double Narrowest(Workplace place) => PlateGaps.Of(Plate(place))[0].Width;

    private static async Task<byte[]> Taken(Workplace place, ILocator item, string link, string name)
    {
        var download = await place.Page.RunAndWaitForDownloadAsync(() => item.GetByRole(AriaRole.Link, new() { Name = link, Exact = true }).ClickAsync());
        Assert.Equal(name, download.SuggestedFilename);
        return await File.ReadAllBytesAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
    }
}
