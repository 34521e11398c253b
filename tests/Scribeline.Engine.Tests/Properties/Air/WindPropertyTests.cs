using CsCheck;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Air;

public class WindPropertyTests
{
    private static readonly Gen<LayeredWind> Winds =
        from rows in Gen.Select(Gen.Double[20, 800], Gen.Double[0, 40], Gen.Double[0, 6.28]).Array[1, 15]
        from exponent in Gen.Double[0, 0.4]
        select new LayeredWind(Raise(rows), exponent);

    // Turn every row by an angle and the wind between them turns by the same.
    [Fact]
    public void Interpolation_turns_with_the_compass() => Gen.Select(Winds, Gen.Double[-10, 13_000], Gen.Double[-3, 3]).Sample((wind, h, angle) =>
    {
        var turned = new LayeredWind(wind.Rows.Select(r => r with { From = r.From + angle }).ToValueList(), wind.Exponent);
        var (a, b) = (wind.At<Scalar>(h), turned.At<Scalar>(h));
        var (sin, cos) = Math.SinCos(angle);
        Assert.Equal((a.East * cos) + (a.North * sin), b.East, 1e-10);
        Assert.Equal((a.North * cos) - (a.East * sin), b.North, 1e-10);
    });

    [Fact]
    public void Rows_are_met_and_the_top_is_held() => Winds.Sample(wind =>
    {
        foreach (var row in wind.Rows) Assert.Equal(row.Speed, wind.At<Scalar>(row.Height).Speed(), 1e-10);
        Assert.Equal(wind.Rows[^1].Speed, wind.At<Scalar>(wind.Rows[^1].Height + 5000).Speed(), 1e-10);
        var foot = wind.Rows[0];
        Assert.Equal(foot.Speed * Math.Pow(2 / foot.Height, wind.Exponent), wind.At<Scalar>(0).Speed(), 1e-10);
    });

    [Fact]
    public void Direction_and_speed_round_trip() => Gen.Select(Gen.Double[0.1, 50], Gen.Double[0, 6.283]).Sample((speed, from) =>
    {
        var wind = WindVector.From(speed, from);
        Assert.Equal(speed, wind.Speed(), 1e-12);
        Assert.Equal(from, wind.Direction(), 1e-9);
    });

    [Fact]
    public void Lanes_equal_one_number() => Gen.Select(Winds, Gen.Double[-10, 13_000], Gen.Double[-10, 13_000], Gen.Int[1, 1000]).Sample((mean, a, b, seed) =>
    {
        Wind[] winds = [mean, new CalmWind(), new PowerLawWind(5, 2, 0.2), new LogWind(5, 2, 0.03)];
        var field = GustField.Draw(5, 2, 500, Normals(seed), 50);
        foreach (var wind in winds)
        {
            var air = new AirMotion(wind, field, new DiscreteGust(3, 1, 10, 100));
            var (both, first, second) = (air.At(new Pair(a, b)), air.At<Scalar>(a), air.At<Scalar>(b));
            Assert.Equal((first.East.Value, second.East.Value), (both.East.A, both.East.B));
            Assert.Equal((first.North.Value, second.North.Value), (both.North.A, both.North.B));
            Assert.Equal((first.Up.Value, second.Up.Value), (both.Up.A, both.Up.B));
        }
    });

    [Fact]
    public void Winds_are_equal_by_value()
    {
        Assert.Equal(new LayeredWind([new(10, 5, 1), new(100, 7, 1)], 0.2), new LayeredWind([new(10, 5, 1), new(100, 7, 1)], 0.2));
        Assert.NotEqual(new LayeredWind([new(10, 5, 1)], 0.2), new LayeredWind([new(10, 5, 1)], 0.1));
        Assert.Equal(GustField.Draw(5, 1, 100, Normals(7)), GustField.Draw(5, 1, 100, Normals(7)));
        Assert.NotEqual(GustField.Draw(5, 1, 100, Normals(7)), GustField.Draw(5, 1, 100, Normals(8)));
    }

    [Fact]
    public void Problems_of_a_wind_are_all_named()
    {
        Winds.Sample(wind => Assert.Empty(WindProblems.In(wind)));
        Assert.Empty(WindProblems.In(new CalmWind()));
        Assert.Empty(WindProblems.In(new PowerLawWind(5, 2, 0.2)));
        Assert.Empty(WindProblems.In(new LogWind(5, 2, 0.03)));
        Assert.Single(WindProblems.In([], 0.1));
        Assert.Equal(3, WindProblems.In([new(100, -1, 0), new(50, 3, double.NaN)], 0.1).Count);
        Assert.Equal(2, WindProblems.In(new PowerLawWind(double.NaN, 2, -0.2)).Count);
        Assert.Equal(2, WindProblems.In(new LogWind(5, 2, 0, 10, -1)).Count);
    }

    // Autocorrelation e^-d (1 - d/2) at d = 20 m/200 m: 0.859596 (MIL-F-8785C form, computed independently); variance 1.
    // 200 000 steps hold about 16 000 independent squares: a standard error of 0.008, four of which are allowed.
    [Fact]
    public void Dryden_process_has_its_variance_and_correlation()
    {
        var normal = Normals(12345);
        var process = default(DrydenAcross).Step(double.PositiveInfinity, normal(), normal());
        var (squares, products) = (0.0, 0.0);
        const int n = 200_000;
        for (var i = 0; i < n; i++)
        {
            var next = process.Step(0.1, normal(), normal());
            squares += next.Value * next.Value;
            products += next.Value * process.Value;
            process = next;
        }
        Assert.Equal(1, squares / n, 0.032);
        Assert.Equal(0.859596, products / n, 0.032);
    }

    // Intensities over many fields at 500 ft, wind from the west 15 kt at 20 ft: 0.953962 along and across, 0.771667 m/s upward
    // (MIL-F-8785C, computed independently); 3000 fields give variance a standard error of 2.6 %, four of which are allowed.
    [Fact]
    public void Fields_have_their_intensity()
    {
        var normal = Normals(99);
        var (east, north, up) = (0.0, 0.0, 0.0);
        const int n = 3000;
        for (var i = 0; i < n; i++)
        {
            var (e, v, w) = GustField.Draw(15 * 1852.0 / 3600, Math.PI * 1.5, 160, normal, 15.24).At<Scalar>(152.4);
            (east, north, up) = (east + (e * e), north + (v * v), up + (w * w));
        }
        Assert.Equal(1, east / n / Math.Pow(0.953962, 2), 0.104);
        Assert.Equal(1, north / n / Math.Pow(0.953962, 2), 0.104);
        Assert.Equal(1, up / n / Math.Pow(0.771667, 2), 0.104);
    }

    private static ValueList<WindLayer> Raise((double Step, double Speed, double From)[] rows)
    {
        var height = 0.0;
        return rows.Select(r => new WindLayer(height += r.Step, r.Speed, r.From)).ToValueList();
    }

    // Box and Muller.
    private static Func<double> Normals(int seed)
    {
        var random = new Random(seed);
        return () => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
    }
}
