using Scribeline.App.Web;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Tests.Web;

/// <summary>A plot is read as it is drawn.</summary>
public class PlotReadingsTests
{
    [Fact]
    public void Every_line_is_read_at_every_place_on_the_straight_between_its_points()
    {
        var readings = PlotReadings.Of(Plot(new Series("a", [0, 2, 4], [0, 10, 0]), new Series("b", [1, 3], [5, 7])), 100);
        Assert.Equal([0.0, 1, 2, 3, 4], readings.Select(r => r.X));
        Assert.Equal([0.0, 5, 10, 5, 0], readings.Select(r => r.Y[0]));
        Assert.Equal([double.NaN, 5, 6, 7, double.NaN], readings.Select(r => r.Y[1]));
    }

    [Fact]
    public void A_gap_stays_a_gap_and_after_a_step_the_later_value_holds()
    {
        var readings = PlotReadings.Of(Plot(new Series("a", [0, 1, 2, 3, 3, 4], [1, double.NaN, 3, 4, 9, 9]), new Series("b", [0.5, 2.5], [0, 0])), 100);
        Assert.Equal([1.0, double.NaN, double.NaN, 3, 3.5, 9, 9], readings.Select(r => r.Y[0]));
    }

    [Fact]
    public void However_few_places_are_read_moments_and_the_highest_and_lowest_are_among_them()
    {
        double[] x = [.. Enumerable.Range(0, 1001).Select(i => i / 1000.0)];
        double[] y = [.. x.Select(t => t == 0.357 ? 50 : t == 0.642 ? -50 : t)];
        var readings = PlotReadings.Of(new Plot("p", new Axis("time", Unit.Time), new Axis("y", Unit.Length), [new Series("a", [.. x], [.. y])], [new Mark("burnout", 0.123), new Mark("never", 7)]), 11);
        Assert.InRange(readings.Count, 11, 14);
        Assert.Equal(50, readings.Max(r => r.Y[0]));
        Assert.Equal(-50, readings.Min(r => r.Y[0]));
        Assert.Equal(["burnout"], readings.Single(r => r.X == 0.123).Marks);
        Assert.DoesNotContain(readings, r => r.Marks.Contains("never"));
    }

    [Fact]
    public void Without_points_there_is_nothing_to_read() => Assert.Empty(PlotReadings.Of(Plot(new Series("a", [], [])), 10));

    private static Plot Plot(params Series[] series) => new("p", new Axis("time", Unit.Time), new Axis("y", Unit.Length), [.. series], []);
}
