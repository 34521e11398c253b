using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Tests.Published.Shop;

/// <summary>Adhesives against values worked by hand from the cited equations.</summary>
public class AdhesionChecks
{
    private const double Zero = 273.15;

    // Thermochimica Acta 447 (2006) 167 gives 55 to 60 kJ/mol; the factors follow by Arrhenius.
    [Theory]
    [InlineData(50e3, 0.520)]
    [InlineData(55e3, 0.487)]
    [InlineData(60e3, 0.456)]
    public void Pot_life_from_25_to_35(double activation, double factor) => Assert.Equal(factor, Adhesion.TimeFactor(Zero + 25, Zero + 35, activation), 0.001);

    [Fact]
    public void Cure_from_25_to_15() => Assert.Equal(2.160, Adhesion.TimeFactor(Zero + 25, Zero + 15), 0.005);

    // Halves for each 10 °C at 52.9 kJ/mol; a paste's data sheet of 2016, 12 h at 20 °C and 2 h at 40 °C, shows 68.4 kJ/mol.
    [Fact]
    public void Activation_from_times()
    {
        Assert.Equal(52.9, Adhesion.ActivationOf(2, Zero + 25, 1, Zero + 35) / 1000, 0.1);
        Assert.Equal(68.4, Adhesion.ActivationOf(12, Zero + 20, 2, Zero + 40) / 1000, 0.1);
    }

    [Fact]
    public void A_cup_runs_away_and_a_film_does_not()
    {
        Assert.Equal(242, Adhesion.Rise(), 1.0);
        Assert.Equal(4000, Adhesion.Cooling(0.020), 40.0);
        Assert.Equal(22.5, Adhesion.Cooling(0.0015), 0.225);
    }

    // 2 to 1 by volume of 1.16 and 1.00 g/cm³: 2.32, 43.1 parts to a hundred; 20 g and 10 g on scales of ±0.1 and ±1 g as standard uncertainties.
    [Fact]
    public void Mixing()
    {
        Assert.Equal(2.32, Adhesion.MassRatio(2, 1160, 1000), 0.01);
        Assert.Equal(43.1, 100 / Adhesion.MassRatio(2, 1160, 1000), 0.05);
        Assert.Equal(0.0112, Adhesion.RatioUncertainty(20, 10, 0.1), 0.0001);
        Assert.Equal(0.112, Adhesion.RatioUncertainty(20, 10, 1), 0.001);
    }

    [Fact]
    public void Amounts()
    {
        Assert.Equal(2331, 1e9 * Adhesion.Annulus(0.0991, 0.0988, 0.050), 2.3);
        Assert.Equal(2.68, 1e9 * Adhesion.Annulus(0.0991, 0.0988, 0.050) * 1.15e-3, 0.003);
        Assert.Equal(7.726, 1e6 * Adhesion.Fillet(0.006), 0.008);
        Assert.Equal(3.863, 2 * 25 * 1e4 * Adhesion.Fillet(0.006), 0.004);
        Assert.Equal(1633, 1e9 * Adhesion.RingFillet(0.005, 0.0991 / 2, inBore: true), 1.7);
    }

    [Theory]
    [InlineData(60, 0.6849)]
    [InlineData(90, 0.2146)]
    [InlineData(120, 0.0538)]
    public void Fillet_of_radius_one(double degrees, double area) => Assert.Equal(area, Adhesion.Fillet(1, degrees * Math.PI / 180), 0.0001);

    // Volkersen (1938): E 18 GPa, t 2 mm, line 0.2 mm, G 1 GPa.
    [Theory]
    [InlineData(10, 2.66)]
    [InlineData(25, 6.59)]
    [InlineData(50, 13.18)]
    public void Peak_over_mean(double length, double ratio) => Assert.Equal(ratio, Adhesion.PeakOverMean(length / 1000, 18e9, 0.002, 0.0002), 0.01);

    // 1000 W/m² on a day of 35 °C; the black skin agrees with 105 °C found on aircraft (service letters 1988 to 2001).
    [Theory]
    [InlineData(0.95, 10, 88.6)]
    [InlineData(0.70, 10, 75.6)]
    [InlineData(0.25, 10, 50.2)]
    [InlineData(0.95, 5, 106.0)]
    [InlineData(0.70, 5, 89.8)]
    [InlineData(0.25, 5, 56.5)]
    public void Skin_in_the_sun(double absorbed, double film, double celsius) => Assert.Equal(celsius, Adhesion.Skin(absorbed, Zero + 35, film) - Zero, 0.2);
}
