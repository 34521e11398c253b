using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Row = System.Collections.Generic.Dictionary<string, string>;

namespace Scribeline.Engine.Tests.Published.Air;

/// <summary>Rows A of air-check-values.csv; the source of each stands in the file.</summary>
public class AirCheckValueTests
{
    public static TheoryData<string> Ids => [.. Rows().Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_is_met(string id)
    {
        var row = Rows().Single(r => r["id"] == id);
        var expected = row.Number("value");
        Assert.Equal(expected, Computed(row), Math.Abs(expected) * row.Number("rel_tol"));
    }

    // Worked day: pad 1400 m, 858 hPa, 35 °C, dry; geopotential metres above the pad (computed independently).
    [Theory]
    [InlineData(0, 308.15, 85_800, 0.969980)]
    [InlineData(1000, 301.65, 76_705.05, 0.885846)]
    [InlineData(3000, 288.65, 60_851.29, 0.734406)]
    public void Hot_day_at_altitude(double above, double temperature, double pressure, double density)
    {
        var day = new DayAir(1400, 85_800, 308.15, 0);
        var air = day.At<Scalar>(Geopotential.Standard.Geometric<Scalar>(Geopotential.Standard.Height<Scalar>(1400) + above));
        Assert.Equal(temperature, air.Temperature, 1e-9);
        Assert.Equal(pressure, air.Pressure, 0.005);
        Assert.Equal(density, air.Density, 5e-7);
    }

    // WMO-No. 8 saturation pressure formula, Pa (computed independently).
    [Theory]
    [InlineData(0, 611.2)]
    [InlineData(10, 1226.03)]
    [InlineData(20, 2332.60)]
    [InlineData(30, 4233.72)]
    [InlineData(40, 7367.46)]
    public void Saturation_pressure(double celsius, double pressure) =>
        Assert.Equal(pressure, Humidity.SaturationPressure(celsius + 273.15), 0.005);

    // Lapse rate alone: pad 101325 Pa, 25 °C, true 3000 geopotential m (computed independently).
    [Theory]
    [InlineData(6.5, 2899.380)]
    [InlineData(0, 2806.599)]
    [InlineData(9.8, 2949.762)]
    public void Altimeter_by_lapse_rate(double lapse, double shown) =>
        Assert.Equal(shown, Altimetry.ShownHeight(new DayAir(0, 101_325, 298.15, 0, lapse / 1000), (Scalar)3001.416356), 1e-3);

    // Set to 150 m on a 35 °C pad at 858 hPa: 165.6 m true (geopotential; computed independently).
    [Fact]
    public void True_height_of_a_set_height()
    {
        var day = new DayAir(1400, 85_800, 308.15, 0);
        Assert.Equal(165.6, Altimetry.TrueHeight(day, (Scalar)150), 0.1);
    }

    // 3000 geopotential m above a pad at 1400 m, 33° north, are 3006.11 m (computed independently from WGS 84 gravity).
    [Fact]
    public void Geopotential_by_latitude()
    {
        var field = Geopotential.AtLatitude(33 * Math.PI / 180);
        Assert.Equal(3006.11, field.Geometric<Scalar>(field.Height<Scalar>(1400) + 3000) - 1400, 0.01);
    }

    // FAA AIM table 7-3-1, ICAO Doc 8168: feet to add at a height above a cold station, rounded up to 10 ft from a formula that
    // overstates by up to 2 %: the exact column lies below the table by at most 2 % and 10 ft.
    [Theory]
    [InlineData(0, 200, 20)]
    [InlineData(0, 1000, 60)]
    [InlineData(0, 3000, 170)]
    [InlineData(-20, 500, 70)]
    [InlineData(-20, 1000, 140)]
    [InlineData(-20, 5000, 710)]
    [InlineData(-30, 1000, 190)]
    [InlineData(-30, 3000, 570)]
    [InlineData(-50, 1000, 300)]
    [InlineData(-50, 3000, 890)]
    public void Cold_temperature_table(double celsius, double feet, double printed)
    {
        var day = new DayAir(0, 101_325, 273.15 + celsius, 0);
        double correction = (Altimetry.ShownHeight(day, (Scalar)(feet * 0.3048)) / 0.3048) - feet;
        Assert.InRange<double>(printed, correction - 0.5, (correction * 1.02) + 10);
    }

    private static IEnumerable<Row> Rows() => AirTable.Read("air-check-values.csv").Where(r => r["id"][0] == 'A');

    private static double Computed(Row row) => row["quantity"] switch
    {
        "pressure at geopotential height" => StandardAtmosphere.AtGeopotential<Scalar>(row.Input("H")).Pressure,
        "printed table pressure at geometric altitude" => StandardAtmosphere.At<Scalar>(row.Input("Z")).Pressure,
        "printed table density at geometric altitude" => StandardAtmosphere.At<Scalar>(row.Input("Z")).Density,
        "pressure altitude" => StandardAtmosphere.PressureAltitude<Scalar>(row.Input("p")),
        "vapour pressure" => row.Input("RH") * Humidity.SaturationPressure(row.Input("t") + 273.15),
        "moist-air density" => Pad(row, row.Input("RH")).At<Scalar>(Elevation(row.Input("p"))).Density,
        "density altitude, dry" => Altimetry.DensityAltitude(Pad(row, 0)),
        "density altitude, moist" => Altimetry.DensityAltitude(Pad(row, row.Input("RH"))),
        "ISA altimeter indication above pad" => Shown(row),
        "station pressure from altimeter setting" => Altimetry.StationPressure(30.42 * 3386.389, 4000 * 0.3048),
        "layer thickness (hypsometric)" => Altimetry.Thickness(101_325, 90_000, 290),
        "geopotential height" => Geopotential.Standard.Height<Scalar>(row.Input("Z")),
        _ => double.NaN,
    };

    // Elevations that keep the given station pressure a usual one; neither density nor shown height depends on them.
    private static double Elevation(double pressure) => Geopotential.Standard.Geometric<Scalar>(StandardAtmosphere.PressureAltitude<Scalar>(pressure));

    private static DayAir Pad(Row row, double humidity) => new(Elevation(row.Input("p")), row.Input("p"), row.Input("t") + 273.15, humidity);

    private static double Shown(Row row)
    {
        var pressure = row.Input("p");
        var day = new DayAir(Elevation(pressure), pressure, row.Input("t") + 273.15, 0, row.Input("lapse") / 1000);
        var height = Geopotential.Standard.Height<Scalar>(day.Elevation) + row.Input("H");
        return Altimetry.ShownHeight(day, Geopotential.Standard.Geometric<Scalar>(height) - day.Elevation);
    }
}
