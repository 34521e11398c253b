using Scribeline.Engine.Questions;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>Where the name of a moment stands.</summary>
/// <param name="Name">Its name.</param>
/// <param name="At">Pixel of the moment.</param>
/// <param name="Left">Pixel at which the name begins.</param>
/// <param name="Row">Rows above the lowest.</param>
internal sealed record MarkLabel(string Name, float At, float Left, int Row);

/// <summary>Puts the names of moments above a plot so that no two overlap.</summary>
internal static class MarkLabels
{
    private const float Gap = 10;

    /// <summary>Places the moments that lie on the axis, each in the lowest row with room for it.</summary>
    public static IReadOnlyList<MarkLabel> Place(IEnumerable<Mark> marks, PlotAxis across, float left, float right, SKFont font)
    {
        // From right to left, so that the leader of a name in a higher row stands left of the names below it.
        List<float> begins = [];
        List<MarkLabel> placed = [];
        var shown = marks.Select(m => (m.Name, X: across.Of(m.X))).Where(m => m.X >= across.Low && m.X <= across.High);
        foreach (var (name, x) in shown.OrderByDescending(m => m.X))
        {
            var at = left + (float)((x - across.Low) / (across.High - across.Low) * (right - left));
            var width = font.MeasureText(name);
            var begin = Math.Min(at + 4, right - width);
            var row = begins.FindIndex(b => begin + width + Gap <= b);
            if (row < 0)
            {
                row = begins.Count;
                begins.Add(0);
            }

            begins[row] = begin;
            placed.Add(new MarkLabel(name, at, begin, row));
        }

        return placed;
    }
}
