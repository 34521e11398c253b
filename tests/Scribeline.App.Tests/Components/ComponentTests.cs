using System.Globalization;
using System.Text.RegularExpressions;
using Bunit;
using Microsoft.AspNetCore.Components;
using Scribeline.App.Components;
using Scribeline.App.Components.Rocket;
using Scribeline.App.Terminal;
using Scribeline.Engine.Questions;
using Scribeline.Tests;

namespace Scribeline.App.Tests.Components;

/// <summary>Components without a browser: what they put on the page.</summary>
public sealed class ComponentTests : IDisposable
{
    private static readonly Limit AtLeast = new("a.b", 2, Sense.AtLeast, 0.1, true, "common practice");
    private static readonly Limit AtMost = AtLeast with { Sense = Sense.AtMost };

    private readonly BunitContext page = new();

    // The bar is 240 wide, the limit in its middle, the good side to the right, the whole limit from middle to end (118).
    [Theory]
    [InlineData(true, 2, 120)]
    [InlineData(true, 3, 179)]
    [InlineData(true, 1, 61)]
    [InlineData(true, 9, 238)]
    [InlineData(true, -9, 2)]
    [InlineData(false, 1, 179)]
    [InlineData(false, 3, 61)]
    public void The_margin_bar_sets_the_value_against_the_limit(bool least, double value, double middle)
    {
        var bar = page.Render<MarginBar>(p => p.Add(b => b.Finding, Finding.Of("ratio", value, Unit.Ratio, least ? AtLeast : AtMost)));
        var mark = bar.Find(".margin-value");
        Assert.Equal(middle - 2, double.Parse(mark.GetAttribute("x")!, CultureInfo.InvariantCulture), 0.01);
        Assert.Contains("limit", bar.Find("svg").GetAttribute("aria-label")!, StringComparison.Ordinal);
    }

    [Fact]
    public void The_spread_of_the_cases_lies_round_the_value()
    {
        var finding = Finding.Of("ratio", 3, Unit.Ratio, AtLeast).With(new Spread(3, 2.5, 3.5, 1, 10));
        var band = page.Render<MarginBar>(p => p.Add(b => b.Finding, finding)).Find(".margin-spread");
        var x = double.Parse(band.GetAttribute("x")!, CultureInfo.InvariantCulture);
        Assert.Equal(149.5, x, 0.01);
        Assert.Equal(208.5, x + double.Parse(band.GetAttribute("width")!, CultureInfo.InvariantCulture), 0.01);
    }

    [Theory]
    [InlineData(Verdict.Clear)]
    [InlineData(Verdict.Watch)]
    [InlineData(Verdict.Open)]
    [InlineData(Verdict.Stop)]
    public void A_verdict_is_told_by_word_and_shape(Verdict verdict)
    {
        var sign = page.Render<VerdictSign>(p => p.Add(s => s.Verdict, verdict));
        Assert.Contains(VerdictMark.Word(verdict), sign.Find(".verdict").TextContent, StringComparison.Ordinal);
        Assert.Equal(VerdictMark.Shape(verdict), sign.Find("[aria-hidden]").TextContent);
    }

    [Fact]
    public void The_working_is_that_of_the_terminal()
    {
        var working = ExampleAnswers.All[0].Working;
        var steps = page.Render<WorkingSteps>(p => p.Add(w => w.Working, working));
        Assert.Equal(working.Steps.Select(WorkingText.Equation), steps.FindAll(".equation").Select(e => e.TextContent));
        Assert.Equal(working.Steps.Select(s => s.Source), steps.FindAll(".source").Select(e => e.TextContent));
    }

    [Fact]
    public void A_table_shows_every_cell()
    {
        var table = new AnswerTable("Rows", [new("what"), new("how far", Unit.Length)], [TableRow.Of(Verdict.Watch, "one", 0.0254), TableRow.Of(null, "two", (double?)null)]);
        var cells = page.Render<AnswerTableView>(p => p.Add(t => t.Table, table).Add(t => t.Inch, true)).FindAll("tbody td").Select(c => c.TextContent.Trim()).ToList();
        Assert.Equal(["▲ watch", "one", "1.00 in", "", "two", ""], cells);
    }

    [Theory]
    [InlineData(31.2, Unit.Speed, "31.2", "m/s")]
    [InlineData(0.5, Unit.Share, "50.0", "%")]
    [InlineData(double.NaN, Unit.Speed, "not known", "")]
    [InlineData(1.5, Unit.Ratio, "1.50", "")]
    public void A_figure_is_set_apart_from_its_unit(double value, Unit unit, string number, string symbol) =>
        Assert.Equal((number, symbol), FigureText.Split(value, unit, inch: false));

    [Theory]
    [InlineData(1)]
    [InlineData(0.3)]
    public void Words_beside_the_rocket_never_cover_each_other(double size)
    {
        var words = Enumerable.Range(0, 30).Select(i => new RocketWord($"{i}", i % 3 == 0 ? "more" : "", 480 + i, 0, null, "joint"));
        var placed = RocketWord.Spread(words, RocketScale.Height, size);
        Assert.All(placed.Zip(placed.Skip(1)), pair => Assert.True(pair.Second.Y - pair.First.Y >= (pair.First.More.Length > 0 ? 34 : 20) * size));
        Assert.All(placed, w => Assert.InRange(w.Y, 0, RocketScale.Height));
    }

    // A component told of something by a plain delegate is not drawn again when it changes by it.
    [Fact]
    public void Components_tell_each_other_by_event_callbacks()
    {
        var parameters = typeof(ThrustPoints).Assembly.GetTypes().Where(typeof(IComponent).IsAssignableFrom)
            .SelectMany(t => t.GetProperties()).Where(p => p.IsDefined(typeof(ParameterAttribute), inherit: true)).ToList();
        Assert.True(parameters.Count > 50, $"only {parameters.Count} parameters were found");
        Assert.DoesNotContain(parameters, p => typeof(Delegate).IsAssignableFrom(p.PropertyType) && p.PropertyType.Name.Split('`')[0] != nameof(RenderFragment));
    }

    // Answers come from another thread: a component that asks for them itself may show others than its neighbour.
    [Fact]
    public void What_is_drawn_together_shows_the_same_answers()
    {
        var components = Directory.GetFiles(Path.Combine(Approved.Root, "src", "Scribeline.App", "Components"), "*.razor", SearchOption.AllDirectories);
        var asking = components.Where(c => Regex.IsMatch(File.ReadAllText(c), @"\b[Dd]ocument\??\.Answers\b")).Select(c => Path.GetFileName(c));
        Assert.Equal(["PlaceFrame.razor"], asking);
    }

    public void Dispose() => page.Dispose();
}
