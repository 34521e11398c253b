using Scribeline.Engine.Separation;
using static Scribeline.Engine.Tests.Published.Separation.EjectionCases;

namespace Scribeline.Engine.Tests.Published.Separation;

/// <summary>
/// The customary relation in both systems of units (Mobley, 1997; T from memory), and its impetus against that of closed vessels
/// (Encyclopaedia Britannica, 11th ed., "Ballistics", table 1; Davis, The Chemistry of Powder and Explosives, 1943, p. 43).
/// </summary>
public class StaticChargeTests
{
    private const double PerSquareInch = 4.4482216152605 / (0.0254 * 0.0254);

    [Fact]
    public void Constants_convert_exactly()
    {
        Holds("S1.01", StaticCharge.GasConstant);
        Holds("S1.02", StaticCharge.Temperature);
        Holds("S1.03", StaticCharge.Impetus / 1000);
        Holds("S1.04", 1 / StaticCharge.GramsUs(1, 1));
        Holds("S1.05", StaticCharge.GramsUs(15, Math.PI / 4));
        Holds("S1.22", StaticCharge.Impetus / 256.2e3);
    }

    /// <summary>The customary R would make half of the powder gas of the mean molar mass that Davis's composition has, 35.4197 g/mol.</summary>
    [Fact]
    public void The_customary_gas_constant_stands_for_half_the_powder_as_gas() =>
        Holds("S1.21", StaticCharge.GasConstant * 35.4197e-3 / 8.314462618);

    [Theory]
    [InlineData("S1.06", 54, 200, 15)]
    [InlineData("S1.07", 75, 300, 15)]
    [InlineData("S1.08", 98, 400, 15)]
    [InlineData("S1.09", 98, 250, 20)]
    [InlineData("S1.10", 152, 450, 10)]
    [InlineData("S1.11", 200, 700, 8)]
    [InlineData("S1.12", 3.9 * 25.4, 16 * 25.4, 15)]
    [InlineData("S1.13", 6 * 25.4, 18 * 25.4, 10)]
    public void A_bay_needs_the_same_powder_in_both_systems(string id, double diameter, double length, double psi)
    {
        var volume = Math.PI / 4 * diameter * diameter * length * 1e-9;
        Holds(id, 1000 * StaticCharge.Mass(psi * PerSquareInch, volume));
        Holds(id, StaticCharge.GramsUs(psi, volume / Math.Pow(0.0254, 3)));
        Assert.Equal(psi * PerSquareInch, StaticCharge.GaugePressure(StaticCharge.Mass(psi * PerSquareInch, volume), volume), 1e-6);
    }

    [Fact]
    public void Published_impetus_follows_from_the_published_gas()
    {
        // 280 cm³ of permanent gas per gram at 0 °C and 1 atm, 2200 °C (Noble and Abel, Phil. Trans. 165, 1875, through G. André).
        Holds("S1.14", Powder.Atmosphere * 280e-6 / 273.15 * (2200 + 273.15));
        Holds("S1.15", ClosedVessel(50, 0.855));
        Holds("S1.16", ClosedVessel(100, 1.76));
        Holds("S1.17", ClosedVessel(200, 3.77));
        Holds("S1.18", ClosedVessel(300, 6.07));

        // The outer bound of the gas model carries what the closed vessel measured.
        Assert.Equal(Value("S1.17") * 1000, Powder.ClosedVessel.Impetus, 0.002 * 256e3);
    }

    [Fact]
    public void Burning_follows_the_strand_laws()
    {
        Holds("S1.23", 1000 * Powder.Customary.RateAt(2 * Powder.Atmosphere));
        Holds("S1.24", 1000 * Powder.Customary.Slower().RateAt(2 * Powder.Atmosphere));
        Holds("S1.25", 1000 * Powder.Customary.GrainRadius / Powder.Customary.RateAt(Powder.Atmosphere));
        Holds("S1.26", Powder.Customary.RateAt(35_599.8) / Powder.Customary.RateAt(Powder.Atmosphere));
    }

    [Fact]
    public void Powder_of_the_window_example()
    {
        // 3 pins #4-40 at 72.4 MPa with 1.5 on them, 60 N of friction, on 98 mm, 3.017 L.
        var thread = new ThreadGeometry(2.8448e-3, 0.635e-3, false);
        var pressure = ((1.5 * 3 * thread.MinorArea * 72.4e6) + 60) / (Math.PI / 4 * 0.098 * 0.098);
        Holds("S4.12", pressure / 1000);
        Holds("S4.13", 1000 * StaticCharge.Mass(pressure, Math.PI / 4 * 0.098 * 0.098 * 0.400));
    }

    // F = (p/Δ)(1 - ηΔ), η 0.6 cm³/g; p in long tons per square inch.
    private static double ClosedVessel(double density, double tons) =>
        tons * 2240 * PerSquareInch / density * (1 - (0.6e-3 * density)) / 1000;
}
