using Scribeline.Engine.Air;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Tests.Published.Air;

namespace Scribeline.Engine.Tests.Published.Evidence;

/// <summary>
/// A whole invented flight with known truth (Runge-Kutta, 0.5 ms), sampled at 20 Hz with noise and processed as stated beside each value by an
/// independent program. The columns of the truth are only compared with.
/// </summary>
public class SyntheticFlightChecks
{
    private const double PadTemperature = 286.20, Gravity = 9.80665;

    private static readonly List<Dictionary<string, string>> Rows = AirTable.Read("logs-synthetic-flight.csv");
    private static readonly double[] Time = Column("time_s"), Pressure = Column("pressure_Pa"), Reading = Column("accel_mps2"), TrueHeight = Column("truth_h_m"), TrueSpeed = Column("truth_v_mps");
    private static readonly double PadPressure = Time.Zip(Pressure).Where(s => s.First < 4).Average(s => s.Second);
    private static readonly double PadReading = Time.Zip(Reading).Where(s => s.First < 4).Average(s => s.Second);
    private static readonly double[] Height = [.. Pressure.Select(p => Hypsometric(p, PadPressure))];
    private static readonly double[] Acceleration = [.. Reading.Select(r => r - PadReading)];
    private static readonly SmoothedFlight Smooth = Smoothed();

    [Fact]
    public void The_pad_is_read()
    {
        Assert.Equal(97772.575, PadPressure, 1e-9);
        Assert.Equal(10.023375, PadReading, 1e-8);
    }

    // Hypsometric height of the standard lapse rate: 85000 Pa over a pad of 97772 Pa and 286.20 K. The value was computed with a gas constant of
    // 287.05287 J/(kg K), ours is that of the standard of 1976, 287.05307.
    [Fact]
    public void Heights_follow_from_pressure()
    {
        var height = Geopotential.Standard.Height<Scalar>(FlightReader.HeightsOf([85000], 97772, new DayAir(0, 97772, 286.20, 0))[0]);
        Assert.Equal(1157.251505, height, 1157 * 8e-7);
        Assert.Equal(1157.251505, Hypsometric(85000, 97772), 1e-6);
    }

    [Fact]
    public void Apogee_is_found()
    {
        var (raw, smooth) = (Max(Height, 0, 21.5), Max(Smooth.Height, 0, 21.5));
        Assert.Equal(1193.6407, Height[raw], 1e-4);
        Assert.Equal(1193.5758, Smooth.Height[smooth], 1.5e-4);
        Assert.Equal(21.05, Time[smooth], 1e-9);
        Assert.Equal(21.1, Time[Enumerable.Range(0, Time.Length).First(i => Time[i] > 10 && Smooth.FilteredSpeed[i] <= 0)], 1e-9);
        Assert.Equal(21.056889, FlightMoments.Apogee(Smooth, 10)!.Value, 2e-6);

        // By independent digits: the truth is 1193.564 m at 21.0638 s.
        Assert.Equal(1193.564, Smooth.Height[smooth], 0.05);
    }

    [Fact]
    public void A_parabola_agrees()
    {
        var near = Enumerable.Range(0, Time.Length).Where(i => Time[i] >= 21.05 - 1.5 - 1e-9 && Time[i] <= 21.05 + 0.4 + 1e-9).ToArray();
        var fit = ParabolaFit.Of([.. near.Select(i => Time[i])], [.. near.Select(i => Height[i])]);
        Assert.Equal(1193.5758, fit.Height, 1.5e-4);
        Assert.Equal(21.059233, fit.Time, 2e-6);
    }

    [Fact]
    public void Speeds_are_found()
    {
        Assert.Equal(160.49822, Smooth.Speed.Max(), 2e-5);
        Assert.Equal(7.40, Time[Max(Smooth.Speed, 0, 21)], 1e-9);
        var (eleven, twentyOne) = (SavitzkyGolay.Along(Height, 0.05, 11, 2, 1), SavitzkyGolay.Along(Height, 0.05, 21, 2, 1));
        Assert.Equal(158.78044, eleven[Max(eleven, 5.05, 21)], 2e-5);
        Assert.Equal(156.2796, twentyOne[Max(twentyOne, 5.05, 21)], 2e-5);
        Assert.Equal(0.625548, Error(eleven, TrueSpeed), 1e-6);
        Assert.Equal(1.0324436, Error(twentyOne, TrueSpeed), 2e-6);
        Assert.Equal(0.18930161, Error(Smooth.FilteredSpeed, TrueSpeed), 1e-6);
        Assert.Equal(0.084752631, Error(Smooth.Speed, TrueSpeed), 1e-6);
        Assert.Equal(0.27830043, Error(Height, TrueHeight), 1e-6);
        Assert.Equal(0.096150479, Error(Smooth.FilteredHeight, TrueHeight), 1e-6);
        Assert.Equal(0.041210593, Error(Smooth.Height, TrueHeight), 1e-6);
    }

    [Fact]
    public void Spikes_of_the_charges_are_left_out() => Assert.Equal([21.60, 21.65, 69.25, 69.30], Smooth.LeftOut, (a, b) => Math.Abs(a - b) < 1e-9);

    [Fact]
    public void Moments_are_found()
    {
        // The third reading in a row beyond 30 m/s² comes at 5.15 s; thrust began at 5.02 s.
        Assert.Equal(5.15, Time[FlightMoments.LiftOff(Acceleration)!.Value + 2], 1e-9);
        Assert.Equal(6, Time[FlightMoments.Climbed(Height)!.Value], 1e-9);
        Assert.Equal(7.45, Time[FlightMoments.Burnout(Time, Acceleration, 5.05)!.Value], 1e-9);
        Assert.Equal(105.25, Time[Enumerable.Range(0, Time.Length).Last(i => Math.Abs(Smooth.Speed[i]) > 1)], 0.1);
        Assert.Equal(105.131, FlightMoments.Landing(Smooth, 30)!.Value, 0.4);
    }

    [Fact]
    public void Descents_are_found()
    {
        var drogue = DescentFit.Of(Time, Height, 30 - 1e-9, 60 + 1e-9)!;
        var main = DescentFit.Of(Time, Height, 75 - 1e-9, 100 + 1e-9)!;
        Assert.Equal(21.32334318, drogue.Rate, 1e-7);
        Assert.Equal(5.368266176, main.Rate, 1e-7);
        Assert.Equal(0.0037432505, drogue.Sigma, 1e-8);
        Assert.Equal(0.30299229, Area(drogue).Value, 0.303 * 1e-6);
        Assert.Equal(4.5015353, Area(main).Value, 4.5 * 1e-6);

        // Corrected for falling into denser air it comes to the truth: 0.30368 m² of drogue and body.
        Assert.Equal(0.30368, Area(drogue).Corrected.Value, 0.0002);
        Assert.Equal(20.301999, drogue.Rate * Math.Sqrt(Area(drogue).Density / 1.225), 1e-4);
        Assert.Equal(5.2671327, main.Rate * Math.Sqrt(Area(main).Density / 1.225), 1e-5);
    }

    // The whole chain, with nothing told but the record and the air, against the truth it was made from.
    [Fact]
    public void The_whole_reading_comes_to_the_truth()
    {
        var (reading, why) = FlightReader.Read(Record(), new DayAir(300, PadPressure, PadTemperature, 0));
        Assert.Equal("", why);
        Assert.Equal(5.02, reading!.LiftOff.Time, 0.06);
        Assert.Equal(7.42, reading.Burnout!.Time, 0.06);
        Assert.Equal(21.0638, reading.Apogee!.Time, 3 * reading.Apogee.Sigma);
        Assert.Equal(Geometric, reading.Apogee.Height, 0.3);
        Assert.Equal(160.772, reading.Smooth.Speed[reading.Fastest], 0.6);
        Assert.Equal(105.131, reading.Landing!.Time, 0.5);
        Assert.Equal(["drogue_fired", "main_fired"], reading.Firings.Select(f => f.Name));
        Assert.Equal([false, true], reading.Descents.Select(d => d.Main));

        // Rates vary with the air: here at the middle of each descent, known from the drag areas.
        foreach (var (seen, area) in reading.Descents.Zip([0.30368, 4.50368]))
        {
            var density = new DayAir(300, PadPressure, PadTemperature, 0).At<Scalar>(300 + seen.Fit.Height).Density;
            Assert.Equal(Math.Sqrt(2 * 7.8 * Gravity / (density * area)), seen.Fit.Rate, 0.05);
        }
    }

    [Fact]
    public void The_origin_of_time_changes_nothing()
    {
        DayAir air = new(300, PadPressure, PadTemperature, 0);
        var (here, there) = (FlightReader.Read(Record(), air).Reading!, FlightReader.Read(Record().Shifted(1024), air).Reading!);
        Assert.Equal(here.Moments.Count, there.Moments.Count);
        foreach (var (a, b) in here.Moments.Zip(there.Moments))
        {
            Assert.Equal(a.Time + 1024, b.Time, 1e-6);
            Assert.Equal(a.Height, b.Height, 1e-5);
        }
    }

    // Without an accelerometer the same flight is still read, a little less well.
    [Fact]
    public void Heights_alone_suffice()
    {
        var (reading, _) = FlightReader.Read(Record() with { Acceleration = [], Firings = [] }, new DayAir(300, PadPressure, PadTemperature, 0));
        Assert.Equal(5.02, reading!.LiftOff.Time, 0.2);
        Assert.Equal(Geometric, reading.Apogee!.Height, 0.6);
        Assert.Equal(21.0638, reading.Apogee.Time, 0.2);
        Assert.Equal(69.221, reading.Moments.Single(m => m.Kind == MomentKind.Opening).Time, 2.0);
        Assert.Equal(160.772, reading.Smooth.Speed[reading.Fastest], 4.0);
    }

    [Fact]
    public void A_record_cut_short_tells_only_what_it_holds()
    {
        var whole = Record();
        var until = Enumerable.Range(0, Time.Length).First(i => Time[i] > 15);
        FlightRecord cut = new([.. whole.Time.Take(until)], [.. whole.Pressure.Take(until)], [], [.. whole.Acceleration.Take(until)]);
        var (reading, _) = FlightReader.Read(cut, new DayAir(300, PadPressure, PadTemperature, 0));
        Assert.NotNull(reading!.Burnout);
        Assert.Null(reading.Apogee);
        Assert.Null(reading.Landing);
        Assert.Empty(reading.Descents);
    }

    private static FlightRecord Record() => new([.. Time], [.. Pressure], [], [.. Reading])
    {
        Firings = [new("drogue_fired", First("drogue_fired")), new("main_fired", First("main_fired"))],
    };

    // Air at the mean height.
    private static DragAreaEstimate Area(DescentFit fit)
    {
        var temperature = PadTemperature - (0.0065 * fit.Height);
        var pressure = PadPressure * Math.Pow(temperature / PadTemperature, Gravity / (287.05287 * 0.0065));
        return new(new(7.8, 0.01), new(temperature, 1), new(pressure, 1), new(fit.Rate, fit.Sigma));
    }

    private static SmoothedFlight Smoothed()
    {
        var fired = First("drogue_fired");
        return SmoothedFlight.Of(Time, Height, [.. Acceleration.Select((a, i) => Time[i] < fired ? a : double.NaN)], new(0.30, 0.60, 500));
    }

    // The same height in metres of length rather than of potential, above a pad at 300 m.
    private static double Geometric => Geopotential.Standard.Geometric<Scalar>(Geopotential.Standard.Height<Scalar>(300) + 1193.564) - 300;

    // With the constants of the stated processing.
    private static double Hypsometric(double pressure, double padPressure) =>
        PadTemperature / 0.0065 * (1 - Math.Pow(pressure / padPressure, 287.05287 * 0.0065 / Gravity));

    private static double First(string column) => Rows.First(r => r.Number(column) > 0).Number("time_s");

    private static double[] Column(string name) => [.. Rows.Select(r => r.Number(name))];

    private static int Max(IReadOnlyList<double> values, double from, double to) =>
        Enumerable.Range(0, Time.Length).Where(i => Time[i] >= from - 1e-9 && Time[i] <= to + 1e-9 && double.IsFinite(values[i])).MaxBy(i => values[i]);

    private static double Error(IReadOnlyList<double> values, double[] truth)
    {
        var within = Enumerable.Range(0, Time.Length).Where(i => Time[i] >= 5.05 - 1e-9 && Time[i] <= 21 + 1e-9).ToArray();
        return Math.Sqrt(within.Average(i => (values[i] - truth[i]) * (values[i] - truth[i])));
    }
}
