using Scribeline.App.Json;
using Scribeline.Drawing;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Web;

/// <summary>What the script of a page needs to follow a finger over a plot, every value in words already.</summary>
/// <param name="Clock">Whether the axis across is the time of the flight.</param>
/// <param name="Wide">The drawing for much room.</param>
/// <param name="Narrow">The drawing for little.</param>
/// <param name="Series">Names of the lines.</param>
/// <param name="X">Places, SI.</param>
/// <param name="Along">How far along the axis across each place stands, 0 to 1.</param>
/// <param name="Across">Each place in words.</param>
/// <param name="Up">For each line, how far up its value stands at each place; null where it is not there.</param>
/// <param name="Text">For each line, its value in words at each place.</param>
/// <param name="Marks">What happens at each place; empty mostly.</param>
internal sealed record PlotFollowing(
    bool Clock,
    DrawnFrame? Wide,
    DrawnFrame? Narrow,
    IReadOnlyList<string> Series,
    IReadOnlyList<double> X,
    IReadOnlyList<double> Along,
    IReadOnlyList<string> Across,
    IReadOnlyList<IReadOnlyList<double>> Up,
    IReadOnlyList<IReadOnlyList<string>> Text,
    IReadOnlyList<string> Marks)
{
    private const int Places = 400;

    /// <summary>As JSON.</summary>
    public static string Of(Plot plot, bool inch)
    {
        var wide = PlotDrawing.Frame(plot, PlotSizes.Style("wide", false, inch));
        var narrow = PlotDrawing.Frame(plot, PlotSizes.Style("narrow", false, inch));
        var readings = wide is null ? [] : PlotReadings.Of(plot, Places);
        var lines = Enumerable.Range(0, plot.Series.Count).ToArray();
        return JsonText.Of(new PlotFollowing(
            plot.Across is { Name: "time", Unit: Unit.Time },
            DrawnFrame.Of(wide),
            DrawnFrame.Of(narrow),
            [.. plot.Series.Select(s => s.Name)],
            [.. readings.Select(r => Math.Round(r.X, 6))],
            [.. readings.Select(r => Round(wide!.Across(r.X)))],
            [.. readings.Select(r => Shown.Text(r.X, plot.Across.Unit, inch))],
            [.. lines.Select(i => readings.Select(r => Round(wide!.Up(r.Y[i]))).ToList())],
            [.. lines.Select(i => readings.Select(r => double.IsNaN(r.Y[i]) ? "" : Shown.Text(r.Y[i], plot.Up.Unit, inch)).ToList())],
            [.. readings.Select(r => string.Join(", ", r.Marks))]));
    }

    private static double Round(double share) => Math.Round(share, 5);
}

/// <summary>The field of values within a drawing, pixels.</summary>
internal sealed record DrawnFrame(int Width, int Height, float Left, float Top, float Right, float Bottom)
{
    public static DrawnFrame? Of(PlotFrame? frame) => frame is null ? null : new(frame.Width, frame.Height, frame.Left, frame.Top, frame.Right, frame.Bottom);
}
