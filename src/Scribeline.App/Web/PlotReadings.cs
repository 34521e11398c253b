using Scribeline.Engine.Questions;

namespace Scribeline.App.Web;

/// <summary>One reading of a plot: the values of all its lines at one place of the axis across.</summary>
/// <param name="X">On the axis across, SI.</param>
/// <param name="Y">Of each line, SI; NaN where the line is not there.</param>
/// <param name="Marks">Names of the moments that lie there.</param>
internal sealed record PlotReading(double X, IReadOnlyList<double> Y, IReadOnlyList<string> Marks);

/// <summary>
/// Reads a plot as a finger goes along it: at the places where its lines have points, thinned evenly, and at every moment, highest and
/// lowest point, which are never left out. Between two points of a line its value lies on the straight stroke that is drawn.
/// </summary>
internal static class PlotReadings
{
    /// <summary>The readings in order.</summary>
    /// <param name="plot">The plot.</param>
    /// <param name="most">Places to read at, about; those never left out come on top.</param>
    public static IReadOnlyList<PlotReading> Of(Plot plot, int most)
    {
        SortedSet<double> places = [.. plot.Series.SelectMany(s => s.X).Where(double.IsFinite)];
        if (places.Count == 0) return [];
        var marks = plot.Marks.Where(m => m.X >= places.Min && m.X <= places.Max).ToLookup(m => m.X, m => m.Name);
        SortedSet<double> kept = [.. Thinned([.. places], most), .. marks.Select(m => m.Key), .. plot.Series.SelectMany(Extremes)];
        return [.. kept.Select(x => new PlotReading(x, [.. plot.Series.Select(s => At(s, x))], [.. marks[x]]))];
    }

    // Evenly along the axis, not by count: points crowd where a computation took short steps.
    private static IEnumerable<double> Thinned(double[] places, int most)
    {
        if (places.Length <= most) return places;
        var (first, step) = (places[0], (places[^1] - places[0]) / (most - 1));
        return Enumerable.Range(0, most).Select(i => Nearest(places, first + (i * step)));
    }

    private static double Nearest(double[] places, double x)
    {
        var at = Array.BinarySearch(places, x);
        if (at >= 0) return places[at];
        var after = Math.Min(~at, places.Length - 1);
        return after > 0 && x - places[after - 1] < places[after] - x ? places[after - 1] : places[after];
    }

    private static IEnumerable<double> Extremes(Series series)
    {
        var points = series.X.Zip(series.Y).Where(p => double.IsFinite(p.First) && double.IsFinite(p.Second)).ToList();
        return points.Count == 0 ? [] : [points.MinBy(p => p.Second).First, points.MaxBy(p => p.Second).First];
    }

    // A line goes from left to right; where it steps at one place, what comes after the step holds.
    private static double At(Series series, double x)
    {
        for (var i = Math.Min(series.X.Count, series.Y.Count) - 1; i >= 0; i--)
        {
            if (!(series.X[i] <= x)) continue;
            if (series.X[i] == x) return series.Y[i];
            if (i + 1 >= Math.Min(series.X.Count, series.Y.Count) || !(series.X[i + 1] > x)) return double.NaN;
            return series.Y[i] + ((series.Y[i + 1] - series.Y[i]) * (x - series.X[i]) / (series.X[i + 1] - series.X[i]));
        }

        return double.NaN;
    }
}
