using Scribeline.Engine.Flight;
using static Scribeline.Engine.Tests.Published.Flight.FlightChecks;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>Bodies without attitude, with and without canopies, against closed forms and independent computation.</summary>
public sealed class DescentChecks
{
    private const double G = 9.80665;
    private static readonly BenchModel Still = new() { GravityAtPad = G, Density = 1.225 };

    [Fact]
    public void Approach_to_terminal_speed()
    {
        (DescentTrack<BenchModel> track, FlightSample end) = Flights.Dropped(Still, 10, 3, 100, 0);
        Holds("V30", end.Speed);
        Holds("V31", track.At(1).Speed);
        Holds("V32", 100 - track.At(1).Height);
        Assert.Equal(0.99 * Value("V30"), track.At(Value("V33")).Speed, 1e-6);
    }

    [Fact]
    public void Canopy_that_opens_at_once()
    {
        (DescentTrack<BenchModel> track, _) = Flights.Dropped(Still, 10, 3, 100, 30);
        Holds("V34", track.At(0.5).Speed);
        Holds("V35", track.At(2).Speed);
        Holds("V36", 100 - track.At(2).Height);
        Assert.Equal(155.568, track.At(0).ProperAcceleration.Length - G, 1e-3);
    }

    /// <summary>
    /// The closed forms carry no inertia: the body goes with the wind of its height at once. Gravity a thousandfold, the drag area with
    /// it, leaves the descent rate and shortens the lag to v²/1000 g, some centimetres of height; hence 2e-4.
    /// </summary>
    [Theory]
    [InlineData("V37", 5, 1.0 / 7, 0, 6, 300, 0)]
    [InlineData("V38", 5, 1.0 / 7, 0, 20, 3000, 300)]
    [InlineData("V39", 6, 0.2, 0, 5, 200, 0)]
    [InlineData("V40", 5, 0, 0.03, 6, 200, 0)]
    public void Drift_in_a_wind_profile(string id, double wind, double power, double roughness, double rate, double from, double to)
    {
        BenchModel model = Still with { GravityAtPad = 1000 * G, EastWind = wind, WindPower = power, Roughness = roughness };
        double dragArea = 2 * 1000 * G / (1.225 * rate * rate);
        (DescentTrack<BenchModel> track, FlightSample end) = Flights.Dropped(model, 1, dragArea, from, rate, 1e-7);
        FlightSample at = to == 0 ? end : track.At((from - to) / rate);

        // It starts without drift; the wind takes it along within the lag.
        Holds(id, at.Position.X, 2e-4);
    }

    [Fact]
    public void Drift_and_time_in_the_standard_atmosphere()
    {
        BenchModel model = Still with { GravityAtPad = 200 * G, Density = null, EastWind = 5, WindPower = 1.0 / 7 };
        double start = 6 * Math.Sqrt(1.225 / model.Air<Engine.Numerics.Scalar>(3000).Density);
        (_, FlightSample end) = Flights.Dropped(model, 1, 2 * 200 * G / (1.225 * 36), 3000, start, 1e-7);
        Holds("V41", end.Position.X, 2e-4);
        Holds("V42", end.Time, 2e-5);
    }

    [Theory]
    [InlineData("2.2", 4.0, 0)]
    [InlineData("2.3", 4.0, 1500)]
    [InlineData("2.5", 0.75 * Math.PI * 0.36 / 4 + 0.6 * 1.1 * 0.1 * 2.2, 2000)]
    [InlineData("2.6", 0.75 * Math.PI * 0.36 / 4, 2000)]
    [InlineData("2.7", 0.6 * 1.1 * 0.1 * 2.2, 2000)]
    public void Steady_descent(string id, double dragArea, double height)
    {
        BenchModel model = Still with { Density = Still with { Density = null } is var m ? (double)m.Air<Engine.Numerics.Scalar>(height).Density : 0 };
        (_, FlightSample end) = Flights.Dropped(model, 10, dragArea, 1000, 20);
        Assert.Equal(DescentValue(id), end.Speed, 0.002 * DescentValue(id));
    }

    [Fact]
    public void Fill_time() =>
        Assert.Equal(DescentValue("3.1"), Inflation.FillTime(new("main", 0, 3.507, 2.44), 25, G), 1e-3 * DescentValue("3.1"));

    /// <summary>A canopy let go at rest fills in the time of a free fall through its fill distance.</summary>
    [Fact]
    public void Fill_time_at_rest() => Assert.Equal(Math.Sqrt(2 * 8 * 0.6 / G), Inflation.FillTime(new("drogue", 0, 0.2, 0.6), 0, G), 1e-12);

    /// <summary>The example main, 9 kg at 25 m/s, 1.1901 kg/m³: peak drag, speed and height lost while filling; 0.5 % as printed.</summary>
    [Theory]
    [InlineData("3.12", 1)]
    [InlineData("3.13", 2)]
    [InlineData("3.16", 6)]
    public void Opening(string id, double growth)
    {
        FlightCanopy main = new("main", 0, 3.507, 2.44, 8, growth);
        OpenCanopy open = new(main, 0, Inflation.FillTime(main, 25, G));
        BenchModel model = Still with { Density = 1.1901 };
        (DescentTrack<BenchModel> track, _) = Flights.Dropped(model, 9, 0, 300, 25, 1e-11, [new(main, 0, null)]);
        double peak = MaximumSearch.Of(track, s => s.Drag, 0, 2).Value;
        Assert.Equal(DescentValue(id), peak, 0.005 * DescentValue(id));
        if (growth != 2) return;
        Assert.Equal(DescentValue("3.14"), track.At(open.FillTime).Speed, 0.005 * DescentValue("3.14"));
        Assert.Equal(DescentValue("3.15"), 300 - track.At(open.FillTime).Height, 0.005 * DescentValue("3.15"));
    }
}
