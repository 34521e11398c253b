using System.Globalization;
using Scribeline.Engine.Air;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Tests.Published.Air;

namespace Scribeline.Engine.Tests.Published.Evidence;

/// <summary>Estimates, sums and polynomials against published tables, and against worked values computed independently.</summary>
public class EstimateChecks
{
    // Savitzky and Golay, Anal. Chem. 36 (1964) 1627, with the corrections of Steinier, Termonia and Deltour (1972): integers over a norm.
    [Fact]
    public void Weights_are_those_of_the_tables()
    {
        var rows = AirTable.Read("logs-savitzky-golay.csv");
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            int points = (int)row.Number("points"), degree = (int)row.Number("lowest_degree"), derivative = (int)row.Number("derivative");
            var expected = row["weights"].Split(' ').Select(w => double.Parse(w, CultureInfo.InvariantCulture) / row.Number("norm"));
            Assert.Equal(expected, SavitzkyGolay.Weights(points, degree, derivative), (a, b) => Math.Abs(a - b) < 1e-12);
        }
    }

    [Fact]
    public void Seven_heights_give_height_speed_and_acceleration()
    {
        double[] y = [1.0, 4.2, 9.3, 15.8, 25.1, 36.4, 48.9];
        Assert.Equal(16.14285714, SavitzkyGolay.Along(y, 0.1, 7, 2, 0)[3], 1e-7);
        Assert.Equal(79.96428571, SavitzkyGolay.Along(y, 0.1, 7, 2, 1)[3], 1e-7);
        Assert.Equal(80.15873016, SavitzkyGolay.Along(y, 0.1, 7, 3, 1)[3], 1e-7);
        Assert.Equal(197.8571429, SavitzkyGolay.Along(y, 0.1, 7, 2, 2)[3], 1e-6);
    }

    [Theory]
    [InlineData(5, 0.316227766)]
    [InlineData(11, 0.09534625892)]
    [InlineData(21, 0.03603749851)]
    public void Noise_of_a_slope(int points, double gain) => Assert.Equal(gain, Math.Sqrt(SavitzkyGolay.Weights(points, 2, 1).Sum(w => w * w)), 1e-9);

    // Montgomery, Introduction to Statistical Quality Control, tables 9.1 and 9.2: mean 10, K = 0.5, H = 5.
    [Fact]
    public void Cumulative_sums_are_those_of_the_book()
    {
        var rows = AirTable.Read("logs-cusum.csv");
        var sums = Cusum.Of([.. rows.Select(r => r.Number("x"))], 10, 0.5);
        Assert.Equal(rows.Select(r => r.Number("C_plus")), sums.Above, (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(rows.Select(r => r.Number("C_minus")), sums.Below, (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(rows.Select(r => (int)r.Number("N_plus")), sums.SinceAbove);
        Assert.Equal(5.28, sums.Above[28], 1e-9);
        Assert.Equal(7, sums.SinceAbove[28]);

        // The shift began after the twenty-second sample.
        Assert.Equal(22, sums.RisesFrom(5));
        Assert.Null(sums.FallsFrom(5));
    }

    // Drag scale, a prior and three flights, worked from the product of normal densities.
    [Fact]
    public void A_prior_and_flights_come_together_in_any_order()
    {
        Estimate[] all = [new(1.00, 0.10), new(1.08, 0.05), new(1.04, 0.05), new(1.11, 0.06)];
        Near(new(1.064, 0.04472135955), Estimate.Of(all.Take(2)));
        Near(new(1.053333333, 0.03333333333), Estimate.Of(all.Take(3)));
        Near(new(1.066698113, 0.02913857587), Estimate.Of(all));
        Near(Estimate.Of(all), Estimate.Of(all.Reverse()));
        Assert.Equal(1.321603774, Estimate.ChiSquared(all), 1e-8);
        Assert.Equal(0.663727799, Estimate.BirgeRatio(all), 1e-8);
    }

    // 1180 m with 9 m in the log against 1225 m with 30 m predicted.
    [Fact]
    public void Prediction_against_record()
    {
        Estimate log = new(1180, 9), predicted = new(1225, 30);
        Assert.Equal(-1.436739428, log.Apart(predicted), 1e-8);
        Assert.Equal(0.7183697139, log.Score(predicted), 1e-8);
    }

    // Chi squared over its freedom, 100 innovations.
    [Fact]
    public void Range_of_a_mean_of_squares()
    {
        var (low, high) = Estimate.MeanSquareRange(100);
        Assert.Equal(0.7422192747, low, 1e-8);
        Assert.Equal(1.295611972, high, 1e-8);
        Assert.InRange(Estimate.MeanSquareRange(100_000).High, 1.0, 1.01);
    }

    [Fact]
    public void A_parabola_through_five_heights()
    {
        var fit = ParabolaFit.Of([-0.4, -0.2, 0, 0.2, 0.4], [998.95, 999.60, 1000.02, 999.90, 999.45]);
        Assert.Equal(0.06642335766, fit.Time, 1e-9);
        Assert.Equal(999.99701616, fit.Height, 1e-7);
        Assert.Equal(-9.785714286, fit.Bend, 1e-8);
    }

    // From rest at constant acceleration: 10 m at 1.5 s, 40 m at 2.0 s.
    [Fact]
    public void Two_heights_tell_when_it_left()
    {
        var (time, acceleration) = FlightMoments.FromRest(1.5, 10, 2.0, 40);
        Assert.Equal((1.0, 80.0), (Math.Round(time, 9), Math.Round(acceleration, 6)));
    }

    // The values were computed with a gas constant of 287.05287 J/(kg K), ours is that of the standard of 1976, 287.05307: 8e-7 apart.
    // Law of propagation, JCGM 100:2008: 7.80 ± 0.02 kg, 291.0 ± 1.5 K, 97000 ± 120 Pa, 5.62 ± 0.06 m/s from nine blocks.
    [Fact]
    public void Uncertainty_of_a_drag_area()
    {
        DragAreaEstimate area = new(new(7.80, 0.02), new(291.0, 1.5), new(97000, 120), new(5.62, 0.06), 8);
        Assert.Equal(4.171149836, area.Value, 4e-6);
        Assert.Equal([0.01069525599, 0.02150077235, -0.005160185365, -0.08906369757], area.Contributions, (a, b) => Math.Abs(a - b) < 1e-7);
        Assert.Equal(0.09238853528, area.Sigma, 1e-7);
        Assert.Equal(9.263165621, area.Freedom, 1e-7);
        Assert.Equal(2.262157163, area.Coverage, 1e-8);
        Assert.Equal(0.2089973868, area.Expanded, 2e-7);
        Assert.Equal(1.161226269, area.Density, 1e-6);
    }

    // Slowing into denser air at 22 m/s, 1000 m up in the standard atmosphere: 0.02376885832 m/s².
    [Fact]
    public void Falling_into_denser_air_brakes()
    {
        var air = StandardAtmosphere.AtGeopotential<Scalar>(1000);
        DragAreaEstimate area = new(new(1, 0.1), new(air.Temperature, 1), new(air.Pressure, 1), new(22, 0.1));
        Assert.Equal(0.02376885832 / 9.80665, area.Unsteady - 1, 1e-8);
    }

    // What an altimeter shows over a standard pad at 1500 m is too high by T_standard/T_pad where it takes the pad for sea level; the standard
    // atmosphere's pressures at 1000 to 5000 m are those printed.
    [Theory]
    [InlineData(1000, 89874.6)]
    [InlineData(2000, 79495.2)]
    [InlineData(3000, 70108.5)]
    [InlineData(5000, 54019.9)]
    public void Pressures_give_their_heights(double height, double printed) =>
        Assert.Equal(height, Geopotential.Standard.Height<Scalar>(FlightReader.HeightsOf([printed], 101325, DayAir.Standard())[0]), 0.01);

    private static void Near(Estimate expected, Estimate actual)
    {
        Assert.Equal(expected.Value, actual.Value, 1e-8);
        Assert.Equal(expected.Sigma, actual.Sigma, 1e-9);
    }
}
