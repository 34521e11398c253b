using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Tests.Published.Quantities;

/// <summary>Unit factors against NIST SP 811 (2008), appendix B.8 (figures from memory; bold there means exact), and against UnitsNet.</summary>
public class UnitTests
{
    [Theory]
    [InlineData("1 in", 0.0254)]
    [InlineData("1 ft", 0.3048)]
    [InlineData("1 mi", 1609.344)]
    [InlineData("1 yd", 0.9144)]
    [InlineData("1 mil", 2.54e-5)]
    public void Lengths(string text, double si) => Close<Length>(text, si, 1e-15);

    [Theory]
    [InlineData("1 lb", 0.45359237)]
    [InlineData("1 oz", 0.028349523125)]
    [InlineData("1 grain", 6.479891e-5)]
    public void Masses(string text, double si) => Close<Mass>(text, si, 1e-15);

    [Theory]
    [InlineData("1 lbf", 4.4482216152605, 1e-14)]
    [InlineData("1 kgf", 9.80665, 1e-15)]
    public void Forces(string text, double si, double share) => Close<Force>(text, si, share);

    [Theory]
    [InlineData("1 psi", 6894.757, 1e-7)]
    [InlineData("1 inHg", 3386.389, 1.5e-7)] // half of the last printed digit
    [InlineData("1 mmHg", 133.3224, 1e-6)]
    [InlineData("1 atm", 101325, 1e-15)]
    [InlineData("1 mbar", 100, 1e-15)]
    public void Pressures(string text, double si, double share) => Close<Pressure>(text, si, share);

    [Theory]
    [InlineData("1 mph", 0.44704, 1e-15)]
    [InlineData("1 kn", 0.5144444, 1e-6)]
    [InlineData("36 km/h", 10, 1e-15)]
    public void Speeds(string text, double si, double share) => Close<Speed>(text, si, share);

    [Theory]
    [InlineData("32 °F", 273.15)]
    [InlineData("212 F", 373.15)]
    [InlineData("-40 F", 233.15)]
    [InlineData("-40 °C", 233.15)]
    [InlineData("0 K", 0)]
    public void Temperatures(string text, double si) => Assert.Equal(si, Measure.Read<Temperature>(text).Value!.Si, 1e-10);

    [Theory]
    [InlineData("1 ft·lbf", 1.355818)]
    [InlineData("1 ft-lbf", 1.355818)]
    [InlineData("1 Wh", 3600)]
    public void Energies(string text, double si) => Close<Energy>(text, si, 1e-6);

    [Fact]
    public void Factors_agree_with_the_library()
    {
        // The library holds derived units to seven to nine digits only: 16.018463265 for 0.45359237 / 0.3048³ = 16.018463374 kg/m³.
        Assert.Equal(UnitsNet.Density.FromPoundsPerCubicFoot(1).KilogramsPerCubicMeter, Measure.Read<Density>("1 lb/ft³").Value!.Si, 2e-7);
        Assert.Equal(UnitsNet.Density.FromPoundsPerCubicInch(1).KilogramsPerCubicMeter, Measure.Read<Density>("1 lb/in³").Value!.Si, 5e-3);
        Assert.Equal(UnitsNet.Volume.FromCubicInches(1).CubicMeters, Measure.Read<Volume>("1 in³").Value!.Si, 1e-14);
        Assert.Equal(UnitsNet.Pressure.FromKilopoundsForcePerSquareInch(1).Pascals, Measure.Read<Pressure>("1 ksi").Value!.Si, 1e-2);
        Assert.Equal(UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(1).RadiansPerSecond, Measure.Read<RotationalSpeed>("1 rpm").Value!.Si, 1e-12);
        Assert.Equal(UnitsNet.LinearDensity.FromPoundsPerFoot(1).KilogramsPerMeter, Measure.Read<LinearDensity>("1 lb/ft").Value!.Si, 1e-6);
        Assert.Equal(UnitsNet.ElectricCharge.FromMilliampereHours(1).Coulombs, Measure.Read<ElectricCharge>("1 mAh").Value!.Si, 1e-9);
        Assert.Equal(UnitsNet.Angle.FromArcminutes(1).Radians, Measure.Read<Angle>("1'").Value!.Si, 1e-15);
    }

    [Theory]
    [InlineData("#2-56", 0.0860)]
    [InlineData("#10-24", 0.1900)]
    [InlineData("6-32", 0.1380)]
    [InlineData("1/4-20", 0.2500)]
    [InlineData("M4", 4 / 25.4)]
    [InlineData("M4x0.7", 4 / 25.4)]
    public void Threads_have_the_major_diameter_of_their_name(string name, double inches) =>
        Assert.Equal(inches * 0.0254, ThreadName.Read(name).Value!.MajorDiameter, 1e-12);

    [Theory]
    [InlineData("#2")]
    [InlineData("#7-32")]
    [InlineData("1-1/4")]
    [InlineData("")]
    public void Other_names_are_no_threads(string name) => Assert.False(ThreadName.Read(name).Good);

    private static void Close<TQuantity>(string text, double si, double share)
        where TQuantity : struct, IQuantity => Assert.Equal(si, Measure.Read<TQuantity>(text).Value!.Si, share * si);
}
