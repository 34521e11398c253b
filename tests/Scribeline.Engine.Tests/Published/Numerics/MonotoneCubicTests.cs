using System.Globalization;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>The data RPN14 of Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246; slopes and values computed independently.</summary>
public class MonotoneCubicTests
{
    [Fact]
    public void Slopes_and_values_of_the_published_data()
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "Data", "numerics-interpolation.csv"))
            .Select(line => line.Split(',')).Where(cells => cells[0] == "RPN14").ToArray();
        static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
        var knots = rows.Where(cells => cells[1] == "knot").ToArray();
        var curve = new MonotoneCubic(knots.Select(cells => Number(cells[2])).ToValueList(), knots.Select(cells => Number(cells[3])).ToValueList());
        // Given with twelve digits.
        for (var i = 0; i < knots.Length; i++) Near(Number(knots[i][5]), curve.Slopes[i]);
        foreach (var query in rows.Where(cells => cells[1] == "query")) Near(Number(query[5]), curve.At<Scalar>(Number(query[2])));

        static void Near(double expected, double computed) => Assert.Equal(expected, computed, 1e-10 * Math.Abs(expected));
    }
}
