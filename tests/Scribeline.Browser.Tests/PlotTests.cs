using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using Scribeline.Drawing;
using Scribeline.Engine.Questions;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>Plots are read with keys and pointer, stand in a table, and can be taken away.</summary>
public class PlotTests(Bench bench)
{
    [Fact]
    public async Task Arrow_keys_read_the_values_of_the_answer()
    {
        await using var place = await bench.Open();
        var (figure, plot) = await Opened(place, "how-high");
        var pad = figure.Locator(".plot-pad");
        await Expect(pad).ToHaveAttributeAsync("aria-valuetext", new System.Text.RegularExpressions.Regex("height"));
        await pad.FocusAsync();
        await pad.PressAsync("End");
        var series = plot.Series[0];
        await Expect(pad).ToHaveAttributeAsync("aria-valuetext", $"{Shown.Text(series.X[^1], Unit.Time, true)} · {series.Name} {Shown.Text(series.Y[^1], Unit.Height, true)} · apogee");
        await pad.PressAsync("ArrowLeft");
        var before = int.Parse((await pad.GetAttributeAsync("aria-valuenow"))!, CultureInfo.InvariantCulture);
        Assert.Equal(int.Parse((await pad.GetAttributeAsync("aria-valuemax"))!, CultureInfo.InvariantCulture) - 1, before);
        await pad.PressAsync("Home");
        await Expect(figure.Locator(".plot-words")).ToContainTextAsync(Shown.Text(series.X[0], Unit.Time, true));
        Assert.Empty(place.Foreign);
        Assert.Empty(place.Complaints);
    }

    [Theory]
    [InlineData(1500)]
    [InlineData(390)]
    public async Task A_pointer_reads_the_place_it_points_at(int width)
    {
        await using var place = await bench.Open(width: width);
        var (figure, plot) = await Opened(place, "how-high");
        var pad = figure.Locator(".plot-pad");
        await Expect(pad).ToHaveAttributeAsync("aria-valuetext", new System.Text.RegularExpressions.Regex("height"));
        var box = (await pad.BoundingBoxAsync())!;
        var room = width > 1000 ? new PlotStyle(Inch: true, Width: 640, Height: 400) : new PlotStyle(Inch: true, Width: 360, Height: 340);
        var frame = PlotDrawing.Frame(plot, room)!;
        var x = (frame.Left + frame.Right) / 2;
        await pad.HoverAsync(new() { Position = new() { X = (float)(x / frame.Width * box.Width), Y = (float)(box.Height / 2) } });
        var dot = figure.Locator(".plot-dot");
        Assert.InRange(double.Parse((await dot.GetAttributeAsync("cx"))!, CultureInfo.InvariantCulture), x - 2, x + 2);

        // Half way through the climb; the shown number is that of the line there.
        var (first, last) = (plot.Series[0].X[0], plot.Series[0].X[^1]);
        var index = Enumerable.Range(0, plot.Series[0].X.Count).MinBy(i => Math.Abs(plot.Series[0].X[i] - ((first + last) / 2)));
        Assert.Equal(frame.Bottom - (frame.Up(plot.Series[0].Y[index]) * (frame.Bottom - frame.Top)), double.Parse((await dot.GetAttributeAsync("cy"))!, CultureInfo.InvariantCulture), 1.5);
    }

    [Fact]
    public async Task Every_moment_stands_in_the_table_of_values()
    {
        await using var place = await bench.Open();
        var (figure, plot) = await Opened(place, "stable");
        await figure.GetByRole(AriaRole.Button, new() { Name = "Values in a table" }).ClickAsync();
        var table = figure.GetByRole(AriaRole.Table);
        await Expect(table).ToContainTextAsync("limit");
        foreach (var mark in plot.Marks) await Expect(table.GetByRole(AriaRole.Row).Filter(new() { HasText = mark.Name })).ToContainTextAsync(Shown.Text(mark.X, Unit.Time, true));
        await Expect(table).ToContainTextAsync(Shown.Text(plot.Series[0].Y.Where(double.IsFinite).Min(), Unit.Calibre, true));
    }

    [Fact]
    public async Task A_plot_is_taken_away_as_it_is_drawn_everywhere()
    {
        await using var place = await bench.Open();
        var (figure, plot) = await Opened(place, "stable");
        Assert.Equal(PlotDrawing.Svg(plot, new(Inch: true)), await Taken("SVG", "night-heron-stable-1.svg", Encoding.UTF8.GetString));
        Assert.Equal(PlotDrawing.Png(plot, new(Inch: true)), await Taken("PNG", "night-heron-stable-1.png", b => b));
        var rows = (await Taken("CSV", "night-heron-stable-1.csv", Encoding.UTF8.GetString)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("static margin: time [s],static margin", rows[0]);
        Assert.Equal(plot.Series[0].X.Count, rows.Length - 1);
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"{plot.Series[0].X[0]:R},{plot.Series[0].Y[0]:R}"), rows[1]);

        async Task<T> Taken<T>(string link, string name, Func<byte[], T> read)
        {
            var download = await place.Page.RunAndWaitForDownloadAsync(() => figure.GetByRole(AriaRole.Link, new() { Name = link }).ClickAsync());
            Assert.Equal(name, download.SuggestedFilename);
            return read(await File.ReadAllBytesAsync(await download.PathAsync(), TestContext.Current.CancellationToken));
        }
    }

    private static async Task<(ILocator Figure, Plot Plot)> Opened(Workplace place, string question)
    {
        await place.Page.Locator($"#q-{question} .question-text").ClickAsync();
        return (place.Page.Locator($"#q-{question} .plot").First, place.Document.Answers.Of(question)!.Plots[0]);
    }
}
