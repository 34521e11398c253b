using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Row = System.Collections.Generic.Dictionary<string, string>;

namespace Scribeline.Engine.Tests.Published.Air;

/// <summary>Rows W of air-check-values.csv and further values of the same sources (MIL-F-8785C 1980; WMO-No. 8; power and log law).</summary>
public class WindCheckValueTests
{
    private const double Knot = 1852.0 / 3600;

    public static TheoryData<string> Ids => [.. Rows().Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_is_met(string id)
    {
        var row = Rows().Single(r => r["id"] == id);
        var expected = row.Number("value");
        Assert.Equal(expected, Computed(row), Math.Abs(expected) * row.Number("rel_tol"));
    }

    // 5 m/s at 10 m, at 2, 5, 20, 50, 100, 200, 300 m (computed independently).
    [Theory]
    [InlineData(1.0 / 7, new[] { 3.97299, 4.52862, 5.52045, 6.29249, 6.94748, 7.67064, 8.12807 })]
    [InlineData(0.2, new[] { 3.62390, 4.35275, 5.74349, 6.89865, 7.92447, 9.10282, 9.87175 })]
    public void Power_law(double exponent, double[] speeds) => Profile(new PowerLawWind(5, 1, exponent), speeds);

    [Theory]
    [InlineData(0.03, new[] { 3.61474, 4.40340, 5.59660, 6.38526, 6.98186, 7.57846 })]
    public void Log_law(double roughness, double[] speeds) => Profile(new LogWind(5, 1, roughness), speeds);

    // Below 10 roughness heights the log law is held, so the lowest of its values for 0.5 m is left out (2 m).
    [Theory]
    [InlineData(5, 3.84311)]
    [InlineData(20, 6.15689)]
    [InlineData(50, 7.68622)]
    [InlineData(100, 8.84311)]
    [InlineData(200, 10.0)]
    public void Log_law_over_parkland(double height, double speed) =>
        Assert.Equal(speed, new LogWind(5, 1, 0.5).At<Scalar>(height).Speed(), 5.1e-6);

    // From 240° 8 m/s to 300° 14 m/s (computed independently by components).
    [Theory]
    [InlineData(0.25, 261.360878, 8.321658)]
    [InlineData(0.50, 278.948276, 9.643651)]
    [InlineData(0.75, 291.434882, 11.629703)]
    public void Winds_aloft_between_rows(double share, double from, double speed)
    {
        var wind = Rows(240, 8, 300, 14).At<Scalar>(1000 + (1000 * share));
        Assert.Equal(from, wind.Direction() * 180 / Math.PI, 1e-6);
        Assert.Equal(speed, wind.Speed(), 1e-6);
    }

    [Fact]
    public void Winds_aloft_across_north_come_from_north() =>
        Assert.Equal(0, Math.IEEERemainder(Rows(350, 10, 10, 10).At<Scalar>(1500).Direction(), Math.Tau), 1e-12);

    // MIL-F-8785C low-altitude scales: h ft, L_u m, L_w m, σ_u at 15 and 30 kt, σ_w at 15 kt, m/s (computed independently).
    [Theory]
    [InlineData(20, 43.7659, 6.096, 1.48865, 2.97730)]
    [InlineData(50, 94.7281, 15.24, 1.41882, 2.83764)]
    [InlineData(100, 153.976, 30.48, 1.32406, 2.64813)]
    [InlineData(500, 287.932, 152.4, 0.953962, 1.90792)]
    [InlineData(1000, 304.800, 304.8, 0.771667, 1.54333)]
    public void Low_altitude_turbulence(double feet, double along, double vertical, double sigma15, double sigma30)
    {
        var scales = GustScales.At(feet * 0.3048, 15 * Knot);
        Assert.Equal(along, scales.LengthAlong, along * 1e-5);
        Assert.Equal(vertical, scales.LengthVertical, 1e-6);
        Assert.Equal(sigma15, scales.SigmaAlong, 5.1e-6);
        Assert.Equal(sigma30, GustScales.At(feet * 0.3048, 30 * Knot).SigmaAlong, 5.1e-6);
        Assert.Equal(0.771667, scales.SigmaVertical, 5.1e-7);
    }

    // MIL-F-8785C figure 7 as digitised, ft/s, at its own altitudes above 2000 ft: light, moderate, severe.
    [Theory]
    [InlineData(3750, 7.4, 10.6, 23.0)]
    [InlineData(15_000, 4.6, 8.0, 22.1)]
    [InlineData(80_000, 0, 0, 5.1)]
    public void Turbulence_aloft(double feet, double light, double moderate, double severe)
    {
        Assert.Equal(light * 0.3048, GustScales.At(feet * 0.3048, 15 * Knot).SigmaAlong, 1e-9);
        Assert.Equal(moderate * 0.3048, GustScales.At(feet * 0.3048, 30 * Knot).SigmaAlong, 1e-9);
        Assert.Equal(severe * 0.3048, GustScales.At(feet * 0.3048, 45 * Knot).SigmaAlong, 1e-9);
        Assert.Equal(1750 * 0.3048, GustScales.At(feet * 0.3048, 45 * Knot).LengthVertical, 1e-9);
    }

    // WMO Beaufort table: the ends of the forces, m/s.
    [Theory]
    [InlineData(0.2, 0)]
    [InlineData(0.3, 1)]
    [InlineData(5.4, 3)]
    [InlineData(5.5, 4)]
    [InlineData(8.9408, 5)]
    [InlineData(32.6, 11)]
    [InlineData(32.7, 12)]
    public void Beaufort_force(double speed, int force) => Assert.Equal(force, Beaufort.Force(speed));

    private static IEnumerable<Row> Rows() => AirTable.Read("air-check-values.csv").Where(r => r["id"][0] == 'W');

    private static double Computed(Row row) => row["quantity"] switch
    {
        "power-law wind" => new PowerLawWind(row.Input("u10"), 0, Exponent(row)).At<Scalar>(row.Input("z")).Speed(),
        "log-law wind" => new LogWind(row.Input("u10"), 0, row.Input("z0")).At<Scalar>(row.Input("z")).Speed(),
        "winds-aloft midpoint direction" => Rows(240, 8, 300, 14).At<Scalar>(1500).Direction() * 180 / Math.PI,
        "winds-aloft midpoint speed" => Rows(240, 8, 300, 14).At<Scalar>(1500).Speed(),
        "winds-aloft midpoint speed across north" => Rows(350, 10, 10, 10).At<Scalar>(1500).Speed(),
        "Dryden Lu (8785C)" => GustScales.At(row.Input("h") * 0.3048, 1).LengthAlong,
        "Dryden sigma_u" => GustScales.At(row.Input("h") * 0.3048, row.Input("W20") * Knot).SigmaAlong,
        "Dryden PSD longitudinal" => GustSpectrum.DrydenAlong(1, row.Input("L"), row.Input("Omega")),
        "Dryden PSD vertical" => GustSpectrum.DrydenAcross(1, row.Input("L"), row.Input("Omega")),
        "von Karman PSD longitudinal" => GustSpectrum.VonKarmanAlong(1, row.Input("L"), row.Input("Omega")),
        "von Karman PSD vertical" => GustSpectrum.VonKarmanAcross(1, row.Input("L"), row.Input("Omega")),
        "Dryden discrete pole" => DrydenAcrossDecay(row.Input("V") * row.Input("dt") / row.Input("Lu")),
        "1-cosine gust" => new DiscreteGust(row.Input("Vm"), 0, 0, row.Input("dm")).At<Scalar>(row.Input("x")).Speed(),
        "Beaufort 4 equivalent speed" => Beaufort.EquivalentSpeed(4),
        _ => double.NaN,
    };

    // The file rounds one seventh to six digits and then gives the value of the exact fraction.
    private static double Exponent(Row row) => row.Input("alpha") == 0.142857 ? 1.0 / 7 : row.Input("alpha");

    // One noiseless step of unit state: the pole of the process.
    private static double DrydenAcrossDecay(double d) => new DrydenAcross(1, 0).Step(d, 0, 0).X1;

    private static LayeredWind Rows(double from1, double speed1, double from2, double speed2) => new(
        [new(1000, speed1, from1 * Math.PI / 180), new(2000, speed2, from2 * Math.PI / 180)], 0);

    private static void Profile(Wind wind, double[] speeds)
    {
        double[] heights = [2, 5, 20, 50, 100, 200, 300];
        for (var i = 0; i < speeds.Length; i++) Assert.Equal(speeds[i], wind.At<Scalar>(heights[i]).Speed(), 5.1e-6);
    }
}
