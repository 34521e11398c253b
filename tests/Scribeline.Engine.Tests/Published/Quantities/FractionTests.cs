using System.Globalization;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Tests.Published.Quantities;

/// <summary>Every 64th of an inch against its exact millimetres (1 in = 25.4 mm exactly, international inch of 1959).</summary>
public class FractionTests
{
    public static TheoryData<string, double, double> Fractions
    {
        get
        {
            TheoryData<string, double, double> rows = [];
            foreach (var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "Data", "quantities-fractions.csv")).Skip(2))
            {
                var cells = line.Split(',');
                rows.Add(cells[0], double.Parse(cells[1], CultureInfo.InvariantCulture), double.Parse(cells[2], CultureInfo.InvariantCulture));
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Fractions))]
    public void Reads_and_writes_each_64th(string fraction, double inches, double millimetres)
    {
        // Both printed columns are exact, so only the last binary digit is left open.
        Assert.Equal(millimetres / 1000, Measure.Read<Length>(fraction + " in").Value!.Si, 1e-17);

        Assert.Equal(fraction == "1" || !fraction.Contains('/', StringComparison.Ordinal) ? null : fraction, Inches.Fraction(inches));
        Assert.Equal(fraction, Inches.Nearest(millimetres / 1000).Text);
        Assert.Equal(0, Inches.Nearest(millimetres / 1000).Error, 1e-17);
    }
}
