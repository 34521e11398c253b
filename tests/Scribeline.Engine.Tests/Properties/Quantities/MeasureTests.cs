using System.Globalization;
using CsCheck;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Tests.Properties.Quantities;

public class MeasureTests
{
    [Fact]
    public void What_is_written_reads_back_the_same_in_every_dimension()
    {
        RoundTrip<Length>();
        RoundTrip<Mass>();
        RoundTrip<Angle>();
        RoundTrip<Speed>();
        RoundTrip<Pressure>();
        RoundTrip<Density>();
        RoundTrip<ElectricCharge>();
        RoundTrip<Energy>();
        RoundTrip<Volume>();
        RoundTrip<Ratio>();
        RoundTrip<Frequency>();
        RoundTrip<LinearDensity>();
    }

    [Fact]
    public void Inches_on_a_rule_are_written_as_fractions() => Gen.Int[1, 64 * 200].Sample(parts =>
    {
        var inch = Dimension.Of<Length>().Find("in")!;
        var text = MeasureText.Write(parts / 64.0, inch);
        return !text.Contains('.', StringComparison.Ordinal) && Measure.Read<Length>(text).Value!.Value == parts / 64.0;
    });

    [Fact]
    public void Units_do_not_change_the_quantity() => Gen.Double[-1e6, 1e6].Sample(value =>
    {
        foreach (var unit in Dimension.Of<Length>().Units)
        {
            var other = Measure.Of<Length>(unit.FromSi(value), unit).Si;
            if (Math.Abs(other - value) > 4e-16 * Math.Abs(value)) return false;
        }

        return true;
    });

    [Theory]
    [InlineData("5' 3\"", 1.6002)]
    [InlineData("5 ft 3 in", 1.6002)]
    [InlineData("5ft3in", 1.6002)]
    [InlineData("5′ 3″", 1.6002)]
    [InlineData("1½ in", 0.0381)]
    [InlineData("1⁄2 in", 0.0127)]
    [InlineData("−5 mm", -0.005)]
    [InlineData("20 µm", 20e-6)]
    [InlineData("20 \u03BCm", 20e-6)]
    [InlineData("  12mm ", 0.012)]
    [InlineData("1e3 MM", 1)]
    [InlineData(".5 in", 0.0127)]
    [InlineData("0", 0)]
    public void Lengths_are_read_as_builders_write_them(string text, double si) => Assert.Equal(si, Measure.Read<Length>(text).Value!.Si, 1e-16);

    [Theory]
    [InlineData("412 g ± 5 g", 0.412, 0.005)]
    [InlineData("412 +/- 5 g", 0.412, 0.005)]
    [InlineData("412 g ±2 %", 0.412, 0.00824)]
    [InlineData("2 lb 4 oz ± 1 oz", 1.0205828325, 0.028349523125)]
    public void A_tolerance_is_two_standard_deviations(string text, double si, double tolerance)
    {
        var mass = Measure.Read<Mass>(text).Value!;
        Assert.Equal(si, mass.Si, 1e-15);
        Assert.Equal(tolerance, mass.ToleranceSi, 1e-15);
        Assert.Equal(tolerance / 2, mass.Sigma, 1e-15);
    }

    [Fact]
    public void A_tolerance_of_a_temperature_is_a_difference()
    {
        Assert.Equal(20.0 / 9, Measure.Read<Temperature>("72 F ± 4 F").Value!.ToleranceSi, 1e-12);
        Assert.Equal(2, Measure.Read<Temperature>("20 °C ± 2 K").Value!.ToleranceSi, 1e-12);
    }

    [Fact]
    public void A_share_of_a_share_is_absolute()
    {
        Assert.Equal(0.05, Measure.Read<Ratio>("60 % ± 5 %").Value!.ToleranceSi, 1e-15);
        Assert.Equal(0.11, Measure.Read<Ratio>("2.2 ± 5 %").Value!.ToleranceSi, 1e-15);
    }

    [Theory]
    [InlineData("5", 1, "does not say its unit", "5 mm")]
    [InlineData("5 g", 2, "is a mass", "5 mm")]
    [InlineData("3,5 mm", 1, "comma", "3.5 mm")]
    [InlineData("1,000 ft", 1, "comma", "1000 ft")]
    [InlineData("5 mmm", 2, "not a unit", "5 mm?")]
    [InlineData("12 mm ± 0.1", 11, "does not say its unit", "± 0.1 mm")]
    [InlineData("1/3 in", 0, "not on a rule", "64ths")]
    [InlineData("5 ft 14 in", 5, "1 ft or more", "Carry")]
    [InlineData("nan", 0, "not a number", "")]
    [InlineData("1e400 m", 0, "larger than", "")]
    [InlineData("#7", 0, "screw or a drill", "")]
    [InlineData("", 0, "Nothing", "5 mm")]
    public void Slips_are_told_with_place_and_remedy(string text, int position, string message, string suggestion)
    {
        var problem = Measure.Read<Length>(text).Problem!;
        Assert.Equal(position, problem.Position);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(suggestion, problem.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_is_read_or_refused_without_an_exception()
    {
        Gen.String[Gen.Char["0123456789./-+±%, '\"°µmingft lbozNaN#½eE²³()−×\u03BC"], 0, 20].Sample(text =>
        {
            foreach (var reading in (bool[])[Measure.Read<Length>(text).Good, Measure.Read<Mass>(text).Good, Measure.Read<Ratio>(text).Good, Measure.Read<Temperature>(text).Good, ThreadName.Read(text).Good])
                _ = reading;
            return Measure.Read<Length>(text) is { Good: true } or { Problem.Position: >= 0 } && (Measure.Read<Length>(text).Problem?.Position ?? 0) <= text.Length;
        });
        Assert.False(Measure.Read<Length>("ab").Good);
    }

    [Fact]
    public void Culture_does_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = (CultureInfo)before.Clone();
            CultureInfo.CurrentCulture.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture.NumberFormat.NegativeSign = "~";
            Assert.Equal(-0.0125, Measure.Read<Length>("-12.5 mm").Value!.Si);
            Assert.Equal("-12.5 mm", MeasureText.Write(-12.5, Dimension.Of<Length>().Find("mm")!));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static void RoundTrip<TQuantity>()
        where TQuantity : struct, IQuantity
    {
        var dimension = Dimension.Of<TQuantity>();
        Gen.Select(Gen.Double[-900, 900], Gen.Int[0, dimension.Units.Count - 1], Gen.Double[0, 100], Gen.Int[0, 2]).Sample((value, unit, tolerance, kind) =>
        {
            var typed = dimension.Units[unit];
            Tolerance? spread = kind switch
            {
                0 => null,
                1 => new(tolerance, typed),
                _ => typed.Word == "%" ? null : new(Math.Round(tolerance, 3) / 100, null),
            };
            var written = Measure.Of<TQuantity>(value, typed, spread);
            return Measure.Read<TQuantity>(written.Text).Value == written;
        });
    }
}
