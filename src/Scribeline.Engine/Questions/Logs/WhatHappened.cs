using Scribeline.Engine.Evidence;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Logs;

/// <summary>What did it do? The record smoothed: moments, heights, speeds, descents and deployments, each with its uncertainty.</summary>
public sealed class WhatHappened() : Question("what-happened", "What did it do?", Place.Log)
{
    private const string Smoother = "Kalman filter with white jerk, smoothed back (Rauch, Tung and Striebel, AIAA J. 3 (1965) 1445)";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Flown);
        if (Recorded(draft, study) is not { } reading) return draft.Done();
        List<TableRow> values = [];
        Ascent(draft, study, study.Recorded!, reading, values);
        Descents(draft, study.Recorded!, reading, values, study.Rocket.Inch);
        Deployments(draft, reading, values, study.Rocket.Inch);
        Voltage(draft, reading);
        draft.List(() => new("What it did", [new("what"), new("value"), new("give or take"), new("told by")], values.ToValueList()));
        draft.List(() => Moments(reading));
        Notes(draft, study.Recorded!, reading);
        draft.Draw(() => Heights(reading));
        draft.Draw(() => Speeds(reading));
        draft.Draw(() => Innovations(reading));
        return draft.Done();
    }

    /// <summary>The record of the flight that is asked about; null where the draft names what is missing instead.</summary>
    internal static FlightReading? Recorded(Draft draft, Study study)
    {
        if (study.Recorded is not { } flown)
        {
            draft.Miss("a recorded flight: scribeline log FILE --add flight.csv, or choose its file at the Log place");
            return null;
        }

        if (flown.Reading is { } reading) return reading;
        draft.Miss($"{flown.Name} ({flown.File}): {flown.Why} Add another record of it");
        return null;
    }

    private static void Ascent(Draft draft, Study study, FlownFlight flown, FlightReading reading, List<TableRow> rows)
    {
        var w = draft.Working;
        var inch = study.Rocket.Inch;
        var smooth = reading.Smooth;
        w.Given("n_p", reading.PadSamples, "", "samples on the pad, from which height and acceleration are zeroed", flown.File);
        if (double.IsFinite(reading.PadPressure)) w.Given("p_0", reading.PadPressure, "Pa", "pressure on the pad, middle of its samples", flown.File);
        w.Given("s_h", reading.Settings.HeightSigma, "m", "standard error of a height by pressure, the larger of pad and coast", "record");
        if (reading.Apogee is { } apogee)
        {
            var h = w.Simulated("h_a", apogee.Height, "m", "apogee above the pad", Smoother);
            var T = w.Given("T_0", flown.AsFlown is { Missing.Count: 0 } day ? day.Air.Temperature : 288.15, "K", "temperature at the pad", "weather of the day, or the standard one");
            var u_T = w.Given("u_T", 1.5, "K", "standard uncertainty of the temperature of the air below", "assumption");
            var u_s = w.Simulated("u_s", smooth.HeightSigma[smooth.IndexAt(apogee.Time)], "m", "standard uncertainty of the smoothed height", Smoother);
            var u_h = w.StepOf("u_h", Math.Sqrt((u_s * u_s) + (h * u_T / T * (h * u_T / T))), "m", "standard uncertainty of the apogee", "law of propagation, JCGM 100:2008", [("h", "h_a"), ("T", "T_0")]);
            draft.Find("apogee above the pad", h, Unit.Height);
            Row(rows, inch, "apogee above the pad", h, u_h, Unit.Height, "smoothed");
            draft.Find("lift-off to apogee", reading.Since(apogee.Time), Unit.Time);
            Row(rows, inch, "lift-off to apogee", reading.Since(apogee.Time), Math.Sqrt((apogee.Sigma * apogee.Sigma) + (reading.LiftOff.Sigma * reading.LiftOff.Sigma)), Unit.Time, apogee.How);
        }
        else
        {
            draft.Note("The record ends before apogee: what follows is not told.");
        }

        var i = reading.Fastest;
        var v = w.Simulated("v", smooth.Speed[i], "m/s", "greatest speed upwards", Smoother);
        var c = w.Simulated("c", reading.Settings.SoundSpeed(smooth.Height[i]), "m/s", "speed of sound there", "air of the day");
        draft.Find("greatest speed", v, Unit.Speed);
        Row(rows, inch, "greatest speed", v, reading.FastestSigma, Unit.Speed, reading.FastestDisturbed ? "smoothed, ports disturbed there" : "smoothed");
        draft.Find("greatest Mach number", w.Step("M", v / c, "", "greatest Mach number", "definition"), Unit.Mach);
        var slope = SavitzkyGolay.Along(reading.Heights, reading.Record.Step, 11, 2, 1).Where((x, k) => double.IsFinite(x) && k <= smooth.IndexAt(reading.Apogee?.Time ?? double.PositiveInfinity)).DefaultIfEmpty(double.NaN).Max();
        if (double.IsFinite(slope)) w.Simulated("v_d", slope, "m/s", "the same by parabolas through eleven heights, which is always low", "Savitzky and Golay, Anal. Chem. 36 (1964) 1627");
        if (double.IsFinite(reading.GreatestPush)) Push(draft, reading, rows, inch);
        if (reading.Burnout is { } burnout)
        {
            draft.Find("lift-off to burnout", reading.Since(burnout.Time), Unit.Time);
            Row(rows, inch, "lift-off to burnout", reading.Since(burnout.Time), Math.Sqrt((burnout.Sigma * burnout.Sigma) + (reading.LiftOff.Sigma * reading.LiftOff.Sigma)), Unit.Time, burnout.How);
        }

        var (mean, count) = reading.Consistency;
        if (count == 0) return;
        w.Simulated("NIS", mean, "", $"mean of {count} squared normalised innovations of heights on the way up; 1 where the errors are as told", Smoother);
        var (low, high) = Estimate.MeanSquareRange(count);
        if (mean > high) draft.Note(FormattableString.Invariant($"Heights scatter more about the smoothed flight than told: {mean:F2} of squared innovation against {high:F2}. Uncertainties are too small by about {Math.Sqrt(mean):F1}."));
        else if (mean < low) draft.Note("Heights scatter less about the smoothed flight than told: the altimeter may have smoothed them already.");
    }

    private static void Push(Draft draft, FlightReading reading, List<TableRow> rows, bool inch)
    {
        var w = draft.Working;
        var f = w.Given("f", reading.GreatestPush, "m/s²", "greatest reading of the accelerometer, single sample", "record");
        w.Step("n_g", f / 9.80665, "", "the same in multiples of standard gravity", "definition");
        draft.Find(reading.Saturated ? "greatest felt acceleration, at least" : "greatest felt acceleration", f, Unit.Acceleration);
        Row(rows, inch, reading.Saturated ? "greatest felt acceleration, at least" : "greatest felt acceleration", f, reading.Settings.AccelerationSigma, Unit.Acceleration, "single sample");
        if (reading.Saturated) draft.Note("The accelerometer was at the end of its range: the greatest acceleration was more than it says.");
    }

    private static void Descents(Draft draft, FlownFlight flown, FlightReading reading, List<TableRow> rows, bool inch)
    {
        var w = draft.Working;
        var n = 0;
        foreach (var seen in reading.Descents)
        {
            n++;
            var name = seen.Main ? "under the last canopy" : "after apogee";
            draft.Find($"descent rate {name}", w.Simulated($"V_{n}", seen.Fit.Rate, "m/s", $"descent rate {name}, {seen.Fit.From - reading.LiftOff.Time:F1} to {seen.Fit.To - reading.LiftOff.Time:F1} s after lift-off", "straight line by least squares"), Unit.Speed);
            Row(rows, inch, $"descent rate {name}", seen.Fit.Rate, seen.Fit.Uncertainty, Unit.Speed, $"{seen.Fit.Blocks.Count} blocks of 5 s");
            if (flown.AsFlown is not { Missing.Count: 0 } study) continue;
            var rho = w.Simulated($"rho_{n}", study.Air.At<Scalar>(study.Air.Elevation + seen.Fit.Height).Density, "kg/m³", $"air density {seen.Fit.Height:F0} m above the pad", "air of the day");
            var V = seen.Fit.Rate;
            var s = w.StepOf($"V0_{n}", V * Math.Sqrt(rho / 1.225), "m/s", "the same at the density of sea level", "steady descent", [("V", $"V_{n}"), ("rho", $"rho_{n}")]);
            draft.Find($"descent rate {name}, at sea level", s, Unit.Speed);
        }
    }

    private static void Deployments(Draft draft, FlightReading reading, List<TableRow> rows, bool inch)
    {
        foreach (var moment in reading.Moments.Where(m => m.Kind is MomentKind.Firing or MomentKind.Opening))
        {
            var at = reading.Smooth.IndexAt(moment.Time);
            var sigma = Math.Sqrt(Math.Pow(reading.Smooth.HeightSigma[at], 2) + Math.Pow(moment.Speed * moment.Sigma, 2));
            draft.Find($"{moment.Name}: height", moment.Height, Unit.Height);
            Row(rows, inch, $"{moment.Name}: height", moment.Height, sigma, Unit.Height, moment.How);
            if (reading.Apogee is not { } apogee) continue;
            draft.Find($"{moment.Name}: after apogee", moment.Time - apogee.Time, Unit.Time);
            Row(rows, inch, $"{moment.Name}: after apogee", moment.Time - apogee.Time, Math.Sqrt((moment.Sigma * moment.Sigma) + (apogee.Sigma * apogee.Sigma)), Unit.Time, moment.How);
        }

        if (reading.Landing is { } landing)
        {
            draft.Find("lift-off to landing", reading.Since(landing.Time), Unit.Time);
            Row(rows, inch, "lift-off to landing", reading.Since(landing.Time), landing.Sigma, Unit.Time, landing.How);
        }
        else if (reading.Apogee is not null)
        {
            draft.Note("The record ends before landing.");
        }
    }

    private static void Voltage(Draft draft, FlightReading reading)
    {
        var volts = reading.Record.Voltage.Where(double.IsFinite).ToArray();
        if (volts.Length > 0) draft.Note(FormattableString.Invariant($"The supply stood at {volts[0]:F2} V at first and {volts.Min():F2} V at its least."));
    }

    private static AnswerTable Moments(FlightReading reading) => new(
        "Moments",
        [new("what"), new("after lift-off", Unit.Time), new("give or take", Unit.Time), new("height", Unit.Height), new("speed upwards", Unit.Speed)],
        reading.Moments.Select(m => TableRow.Of(null, m.Name, reading.Since(m.Time), 2 * m.Sigma, m.Height, m.Speed)).ToValueList());

    private static void Notes(Draft draft, FlownFlight flown, FlightReading reading)
    {
        draft.Note($"Read from {flown.File} of {flown.Name}. Give or take is twice the standard uncertainty.");
        if (reading.Record.Pressure.Count == 0) draft.Note("The record holds heights, not pressures: they are taken to be of the standard atmosphere, zeroed on the pad.");
        if (!reading.Record.HasAcceleration) draft.Note("Without an accelerometer speeds come from heights alone: a short peak is told too low.");
        if (reading.Smooth.TransonicAt.Count > 0) draft.Note("Between Mach 0.8 and 1.25 shocks cross the ports (Gracey, NASA RP-1046, 1980): heights count little there.");
        if (reading.Smooth.LeftOut.Count > 0) draft.Note($"{reading.Smooth.LeftOut.Count} heights left out as gas of a charge or noise, the first {reading.Since(reading.Smooth.LeftOut[0]):F1} s after lift-off.");
        if (reading.Gaps > 0) draft.Note($"{reading.Gaps} gaps of more than three steps; nothing stands in for them.");
        if (reading.Settings.PortLag > 0) draft.Note($"Read with a pressure that is {1000 * reading.Settings.PortLag:F0} ms behind (port lag in the design).");
    }

    private static Plot Heights(FlightReading reading) => new(
        "Height as measured and smoothed", new("time after lift-off", Unit.Time), new("height above the pad", Unit.Height),
        [Thin("measured", reading, reading.Heights), Thin("smoothed", reading, reading.Smooth.Height)], Marks(reading));

    private static Plot Speeds(FlightReading reading) => new(
        "Speed upwards, smoothed", new("time after lift-off", Unit.Time), new("speed upwards", Unit.Speed), [Thin("smoothed", reading, reading.Smooth.Speed)], Marks(reading));

    private static Plot Innovations(FlightReading reading) => new(
        "What each height adds, in its standard errors", new("time after lift-off", Unit.Time), new("normalised innovation", Unit.Ratio), [Thin("innovation", reading, reading.Smooth.Innovations)], Marks(reading));

    /// <summary>A line thin enough to look at; missing values left out.</summary>
    internal static Series Thin(string name, FlightReading reading, IReadOnlyList<double> values)
    {
        const int Most = 1500;
        var end = reading.Landing is { } landing ? landing.Time + 3 : double.PositiveInfinity;
        var there = Enumerable.Range(0, values.Count).Where(i => double.IsFinite(values[i]) && reading.Smooth.Time[i] <= end).ToArray();
        var every = Math.Max(1, there.Length / Most);
        var shown = there.Where((_, i) => i % every == 0).ToArray();
        return new(name, shown.Select(i => reading.Since(reading.Smooth.Time[i])).ToValueList(), shown.Select(i => values[i]).ToValueList());
    }

    /// <summary>The moments of a record.</summary>
    internal static ValueList<Mark> Marks(FlightReading reading) => reading.Moments.Select(m => new Mark(m.Name, reading.Since(m.Time))).ToValueList();

    private static void Row(List<TableRow> rows, bool inch, string name, double value, double sigma, Unit unit, string how) =>
        rows.Add(TableRow.Of(null, name, Shown.Text(value, unit, inch), $"± {Shown.Text(2 * sigma, unit, inch)}", how));
}
