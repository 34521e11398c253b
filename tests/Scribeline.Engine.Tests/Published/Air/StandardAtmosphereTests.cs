using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Air;

/// <summary>
/// U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562): every kilometre and half kilometre to 50 km in air-us76.csv, and printed values.
/// The file carries seven digits, hence 1e-6 (density of the file: seven digits of a rounded gas constant, 1e-5 asked, 1e-6 met).
/// </summary>
public class StandardAtmosphereTests
{
    public static TheoryData<double> Heights => [.. AirTable.Read("air-us76.csv").Select(r => r.Number("H_m"))];

    [Theory]
    [MemberData(nameof(Heights))]
    public void Table_of_the_lower_fifty_kilometres(double height)
    {
        var row = AirTable.Read("air-us76.csv").Single(r => r.Number("H_m") == height);
        var geometric = row.Number("Z_m");
        Assert.Equal(geometric, Geopotential.Standard.Geometric<Scalar>(height), 1e-3);
        var air = StandardAtmosphere.AtGeopotential<Scalar>(height);
        Close(row.Number("T_K"), air.Temperature);
        Close(row.Number("p_Pa"), air.Pressure);
        Close(row.Number("rho_kg_m3"), air.Density);
        Close(row.Number("a_m_s"), air.SoundSpeed);
        Close(row.Number("mu_Pa_s"), air.Viscosity);
        Close(row.Number("g_m_s2"), Gravity.Standard<Scalar>(geometric));
        Close(row.Number("p_Pa"), StandardAtmosphere.At<Scalar>(geometric).Pressure);
        Assert.Equal(height, StandardAtmosphere.PressureAltitude<Scalar>(air.Pressure), 1e-6);
    }

    // Printed rows, table I, by geometric height: K, Pa, kg/m³; half a unit of the last printed digit, and one unit for 10 km pressure.
    [Theory]
    [InlineData(1000, 281.651, 8.9876e4, 1.1117)]
    [InlineData(5000, 255.676, 5.4048e4, 0.73643)]
    [InlineData(10_000, 223.252, 2.6499e4, 0.41351)]
    [InlineData(20_000, 216.650, 5.5293e3, 0.088910)]
    [InlineData(30_000, 226.509, 1.1970e3, 0.018410)]
    [InlineData(50_000, 270.650, 79.779, 1.0269e-3)]
    public void Printed_rows(double height, double temperature, double pressure, double density)
    {
        var air = StandardAtmosphere.At<Scalar>(height);
        Assert.Equal(temperature, air.Temperature, 5.1e-4);
        Assert.Equal(pressure, air.Pressure, pressure * 5e-5);
        Assert.Equal(density, air.Density, density * 5e-5);
    }

    // Base pressures of the layers as printed, Pa, by geopotential height (table 4 and its use in table I).
    [Theory]
    [InlineData(11_000, 22_632.06)]
    [InlineData(20_000, 5474.889)]
    [InlineData(32_000, 868.0187)]
    [InlineData(47_000, 110.9063)]
    [InlineData(51_000, 66.93887)]
    [InlineData(71_000, 3.956420)]
    public void Base_pressures(double height, double pressure) =>
        Assert.Equal(pressure, StandardAtmosphere.AtGeopotential<Scalar>(height).Pressure, pressure * 2e-7);

    // Printed for 86 km geometric, the top of the lower atmosphere: 0.37338 Pa, molecular temperature 186.946 K (from memory).
    [Fact]
    public void Top_of_the_layers()
    {
        var air = StandardAtmosphere.At<Scalar>(86_000);
        Assert.Equal(186.946, air.Temperature, 5e-4);
        Assert.Equal(0.37338, air.Pressure, 1e-5);
    }

    // NASA/TM-2015-218675 check-case data at 30 000 ft geometric: degR, lbf/ft², slug/ft³, ft/s. Its constants differ in the sixth digit.
    [Fact]
    public void Check_case_atmosphere()
    {
        var air = StandardAtmosphere.At<Scalar>(30_000 * 0.3048);
        Assert.Equal(411.838873082, air.Temperature * 1.8, 1e-8);
        Assert.Equal(629.6672, air.Pressure / 47.88025898, 1e-3);
        Assert.Equal(8.906868e-4, air.Density / 515.378818, 2e-9);
        Assert.Equal(994.8488, air.SoundSpeed / 0.3048, 1.2e-3);
    }

    private static void Close(double expected, double actual) => Assert.Equal(expected, actual, Math.Abs(expected) * 1e-6);
}
