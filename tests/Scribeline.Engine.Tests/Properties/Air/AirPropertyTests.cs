using CsCheck;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Air;

public class AirPropertyTests
{
    private static readonly Gen<ValueList<SoundingLevel>> Soundings =
        Gen.Select(Gen.Double[300, 900], Gen.Double[230, 300]).Array[0, 12].Select(rows =>
        {
            var height = 1900.0;
            return rows.Select(r => new SoundingLevel(height += r.Item1, r.Item2)).ToValueList();
        });

    private static readonly Gen<DayAir> Days =
        from elevation in Gen.Double[-100, 1800]
        from pressure in Gen.Double[0.96, 1.04]
        from temperature in Gen.Double[250, 315]
        from humidity in Gen.Double[0, 1]
        from lapse in Gen.Double[0, 0.0098]
        from sounding in Soundings
        select new DayAir(
            elevation, StandardAtmosphere.At<Scalar>(elevation).Pressure * pressure, temperature, humidity, lapse, null, sounding);

    private static readonly Gen<double> HeightsGen = Gen.Double[-300, 85_000];

    // The column is in balance: dp/dZ = -ρ g, with density and gravity as flight uses them. Differences over 2 m: 1e-7 or so,
    // more where a layer ends within them.
    [Fact]
    public void Pressure_carries_the_air_above() => Gen.Select(Days, Gen.Double[-300, 30_000]).Sample((day, z) =>
    {
        var (above, below, here) = (day.At<Scalar>(z + 1), day.At<Scalar>(z - 1), day.At<Scalar>(z));
        var slope = (above.Pressure - below.Pressure).Value / 2;
        var weight = here.Density * Gravity.Standard<Scalar>(z);
        Assert.Equal(-weight.Value, slope, weight.Value * 1e-4);
    });

    [Fact]
    public void Pressure_falls_with_height() => Gen.Select(Days, HeightsGen, Gen.Double[0.01, 1000]).Sample((day, z, dz) =>
        day.At<Scalar>(z + dz).Pressure < day.At<Scalar>(z).Pressure);

    [Fact]
    public void Pad_is_as_measured() => Days.Sample(day =>
    {
        var pad = day.At<Scalar>(day.Elevation);
        Assert.Equal(day.StationPressure, pad.Pressure, 1e-7);
        Assert.Equal(day.Temperature, pad.Temperature, 1e-9);
        Assert.Equal(
            day.StationPressure / (AirConstants.GasConstant * Humidity.VirtualTemperature(day.Temperature, day.StationPressure, day.RelativeHumidity)),
            pad.Density,
            1e-9);
    });

    [Fact]
    public void Height_and_pressure_are_inverse() => Gen.Select(Days, HeightsGen).Sample((day, z) =>
        Assert.Equal(z, day.HeightAtPressure(day.At<Scalar>(z).Pressure), 1e-5));

    [Fact]
    public void Altimeter_and_its_inverse() => Gen.Select(Days, Gen.Double[-50, 12_000]).Sample((day, h) =>
        Assert.Equal(h, Altimetry.TrueHeight(day, Altimetry.ShownHeight(day, (Scalar)h)), 1e-6));

    [Fact]
    public void Standard_day_is_the_standard_atmosphere() => Gen.Select(Gen.Double[0, 3000], HeightsGen).Sample((elevation, z) =>
    {
        var (day, standard) = (DayAir.Standard(elevation).At<Scalar>(z), StandardAtmosphere.At<Scalar>(z));
        Assert.Equal(standard.Pressure, day.Pressure, standard.Pressure * 1e-9);
        Assert.Equal(standard.Density, day.Density, standard.Density * 1e-9);
        Assert.Equal(standard.Viscosity, day.Viscosity, standard.Viscosity * 1e-9);
    });

    // A sounding cut from the standard atmosphere, pressures and all, gives it back.
    [Fact]
    public void Sounding_of_the_standard_day()
    {
        var levels = Enumerable.Range(1, 11).Select(k =>
        {
            var air = StandardAtmosphere.AtGeopotential<Scalar>(1000 * k);
            return new SoundingLevel(1000 * k, air.Temperature, air.Pressure);
        }).ToValueList();
        var day = new DayAir(0, 101_325, 288.15, 0, aloft: levels);
        Gen.Double[-300, 85_000].Sample(z =>
        {
            var (expected, actual) = (StandardAtmosphere.At<Scalar>(z), day.At<Scalar>(z));
            Assert.Equal(expected.Pressure, actual.Pressure, expected.Pressure * 1e-9);
            Assert.Equal(expected.Temperature, actual.Temperature, 1e-6);
        });
    }

    [Fact]
    public void Measured_pressures_aloft_are_met()
    {
        var day = new DayAir(100, 100_000, 290, 0.6, aloft: [new(1500, 283, 84_600), new(3000, 272, 70_300)]);
        Assert.Equal(84_600, day.At<Scalar>(Geopotential.Standard.Geometric<Scalar>(1500)).Pressure, 1e-6);
        Assert.Equal(70_300, day.At<Scalar>(Geopotential.Standard.Geometric<Scalar>(3000)).Pressure, 1e-6);
        Assert.Equal(day, new DayAir(100, 100_000, 290, 0.6, aloft: [new(1500, 283, 84_600), new(3000, 272, 70_300)]));
        Assert.NotEqual(day, new DayAir(100, 100_000, 290, 0.6, aloft: [new(1500, 283, 84_601), new(3000, 272, 70_300)]));
    }

    [Fact]
    public void Problems_of_a_day_are_all_named()
    {
        Assert.Empty(AirProblems.In(1400, 85_800, 308, 0.2, 0.0065, 0.6, [new(1500, 307), new(3000, 295, 71_000)]));
        Assert.Contains("station pressure", Only(AirProblems.In(1400, 101_325, 300, 0, 0.0065, null, [])), StringComparison.Ordinal);
        Assert.Contains("does not fit", Only(AirProblems.In(0, 101_325, 288, 0, 0.0065, null, [new(3000, 268.5, 60_000)])), StringComparison.Ordinal);
        Assert.Contains("does not fit", Only(AirProblems.In(0, 101_325, 288, 0, 0.0065, null, [new(3000, 268.5, double.NaN)])), StringComparison.Ordinal);
        Assert.Contains("must rise", Only(AirProblems.In(0, 101_325, 288, 0, 0.0065, null, [new(3000, 268), new(2000, 275)])), StringComparison.Ordinal);
        Assert.Equal(5, AirProblems.In(double.NaN, 101_325, double.NaN, 55, double.NaN, 33, []).Count);
    }

    private static string Only(ValueList<Problem> problems) => Assert.Single(problems).Message;

    [Fact]
    public void Lanes_equal_one_number() => Gen.Select(Days, HeightsGen, HeightsGen).Sample((day, a, b) =>
    {
        var (both, first, second) = (day.At(new Pair(a, b)), day.At<Scalar>(a), day.At<Scalar>(b));
        Assert.Equal((first.Temperature.Value, second.Temperature.Value), (both.Temperature.A, both.Temperature.B));
        Assert.Equal((first.Pressure.Value, second.Pressure.Value), (both.Pressure.A, both.Pressure.B));
        Assert.Equal((first.Density.Value, second.Density.Value), (both.Density.A, both.Density.B));
        Assert.Equal((first.SoundSpeed.Value, second.SoundSpeed.Value), (both.SoundSpeed.A, both.SoundSpeed.B));
        Assert.Equal((first.Viscosity.Value, second.Viscosity.Value), (both.Viscosity.A, both.Viscosity.B));
    });

    // The register's exponential and logarithm differ from the single ones in the last places.
    [Fact]
    public void Register_lanes_agree() => Gen.Select(Days, HeightsGen.Array[4]).Sample((day, z) =>
    {
        var pack = day.At(Wide4.Load(z)).Density;
        for (var lane = 0; lane < 4; lane++)
        {
            var one = day.At<Scalar>(z[lane]).Density.Value;
            Assert.Equal(one, Wide4.Lane(pack, lane), one * 1e-12);
        }
    });

    [Fact]
    public void Segments_are_found_as_by_looking() => Gen.Select(
        Gen.Double[0.001, 10].Array[1, 30], Gen.Double[-20, 200]).Sample((steps, x) =>
    {
        var sum = 0.0;
        double[] ascending = [0, .. steps.Select(s => sum += s * s)];
        var found = (int)new Breakpoints(ascending).Find<Scalar>(x).Value;
        var expected = Math.Clamp(ascending.Count(a => a < x) - 1, 0, steps.Length - 1);
        Assert.Equal(expected, found);
    });
}
