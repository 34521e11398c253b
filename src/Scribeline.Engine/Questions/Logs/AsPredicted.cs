using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Logs;

/// <summary>Was the prediction right? The design as it flew, in the weather of its day, laid over the record.</summary>
public sealed class AsPredicted() : Question("as-predicted", "Was the prediction right?", Place.Log)
{
    private const string Validation = "ASME V&V 20-2009 and ISO 13528, from memory";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Flown);
        if (WhatHappened.Recorded(draft, study) is not { } reading) return draft.Done();
        if (study.Recorded is not { Predicted: { } predicted, Band: { } band } flown)
        {
            draft.Miss(study.Recorded!.AsFlown is { } rocket ? $"what the prediction of that day needs: {string.Join("; ", rocket.Missing)}" : "the design as it flew: it can no longer be read");
            return draft.Done();
        }

        if (reading.Apogee is not { } apogee)
        {
            draft.Miss("a record that goes on to apogee");
            return draft.Done();
        }

        DescentPath typed = new(predicted.Flight);
        var temperature = apogee.Height * 1.5 / predicted.Air.Temperature;
        var smooth = reading.Smooth;
        Compare(draft, 1, "apogee", Unit.Height, "m", new Estimate(apogee.Height, smooth.HeightSigma[smooth.IndexAt(apogee.Time)]).Blurred(temperature), PredictedBand.With(predicted.Flight.Apogee!.Height, band.Apogees));
        Compare(draft, 2, "greatest speed", Unit.Speed, "m/s", new(smooth.Speed[reading.Fastest], reading.FastestSigma), PredictedBand.With(typed.Fastest, band.Speeds));
        Compare(draft, 3, "lift-off to apogee", Unit.Time, "s", new Estimate(reading.Since(apogee.Time), apogee.Sigma).Blurred(reading.LiftOff.Sigma), PredictedBand.With(predicted.Flight.Apogee.Time - typed.LiftOff, band.ApogeeTimes));
        var n = 3;
        foreach (var seen in reading.Descents)
        {
            if (typed.Descending(seen.Fit.Height) is not { } at) continue;
            var rates = band.Paths.Select(p => -(p.Descending(seen.Fit.Height)?.VerticalSpeed ?? double.NaN));
            Compare(draft, ++n, seen.Main ? "descent rate under the last canopy" : "descent rate after apogee", Unit.Speed, "m/s", new(seen.Fit.Rate, seen.Fit.Uncertainty), PredictedBand.With(-at.VerticalSpeed, rates));
        }

        Inside(draft, reading, band, apogee);
        draft.Note($"The design as {flown.Name} flew it, in the weather of that day, and {band.Cases} cases of its tolerances. One flight inside the band proves nothing; ten of ten would begin to.");
        draft.Draw(() => Overlay(reading, band));
        draft.Draw(() => Residuals(reading, band, typed));
        draft.Draw(() => Speeds(reading, typed));
        return draft.Done();
    }

    private static void Compare(Draft draft, int n, string name, Unit unit, string si, Estimate log, Estimate predicted)
    {
        var w = draft.Working;
        var x = w.Simulated($"x_{n}", log.Value, si, $"{name}, as recorded", "question what-happened");
        var u = w.Simulated($"u_{n}", log.Sigma, si, "its standard uncertainty", "question what-happened");
        var y = w.Simulated($"y_{n}", predicted.Value, si, $"{name}, as predicted", "flown: six degrees of freedom in the weather of that day");
        var q = w.Simulated($"q_{n}", predicted.Sigma, si, "standard deviation over the tolerances", "cases drawn");
        (string, string)[] names = [("x", $"x_{n}"), ("y", $"y_{n}"), ("u", $"u_{n}"), ("q", $"q_{n}")];
        w.StepOf($"z_{n}", (x - y) / Math.Sqrt((u * u) + (q * q)), "", "apart, in standard uncertainties of the difference", Validation, names);
        var E = w.StepOf($"E_{n}", Math.Abs(x - y) / (2 * Math.Sqrt((u * u) + (q * q))), "", "difference over the expanded uncertainty", Validation, names);
        draft.Find($"{name}: recorded", x, unit);
        draft.Find($"{name}: predicted", y, unit);
        draft.Find($"{name}: difference over what was to be expected", E, Unit.Ratio, "as-predicted.score");
    }

    private static void Inside(Draft draft, FlightReading reading, PredictedBand band, FlightMoment apogee)
    {
        var smooth = reading.Smooth;
        var end = reading.Landing?.Time ?? smooth.Time[^1];
        double Share(double from, double to)
        {
            var within = Enumerable.Range(0, smooth.Time.Count).Where(i => smooth.Time[i] >= from && smooth.Time[i] <= to).ToArray();
            return within.Length == 0 ? double.NaN : (double)within.Count(i => band.At(reading.Since(smooth.Time[i])) is var (low, high) && smooth.Height[i] >= low - 1 && smooth.Height[i] <= high + 1) / within.Length;
        }

        var w = draft.Working;
        draft.Find("share of the climb inside the predicted band", w.Simulated("b_u", Share(reading.LiftOff.Time, apogee.Time), "", "share of the climb whose smoothed height lies between the 5 % and 95 % heights of the cases, or within 1 m", "order statistics"), Unit.Share);
        if (end > apogee.Time + 5) draft.Find("share of the descent inside the predicted band", w.Simulated("b_d", Share(apogee.Time, end), "", "the same on the way down", "order statistics"), Unit.Share);
    }

    private static Plot Overlay(FlightReading reading, PredictedBand band) => new(
        "Height, recorded and predicted", new("time after lift-off", Unit.Time), new("height above the pad", Unit.Height),
        [
            WhatHappened.Thin("recorded", reading, reading.Smooth.Height), new("predicted", band.Time, band.Height),
            new("5 % of the cases lower", band.Time, band.Low), new("5 % of the cases higher", band.Time, band.High),
        ],
        WhatHappened.Marks(reading));

    private static Plot Residuals(FlightReading reading, PredictedBand band, DescentPath typed)
    {
        var recorded = WhatHappened.Thin("recorded less predicted", reading, reading.Smooth.Height);
        var flown = recorded.X.Select((x, i) => (X: x, Y: recorded.Y[i])).Where(p => p.X >= 0).ToArray();
        return new(
            "Recorded less predicted height", new("time after lift-off", Unit.Time), new("difference", Unit.Height),
            [
                new(recorded.Name, flown.Select(p => p.X).ToValueList(), flown.Select(p => p.Y - typed.HeightAt(p.X)).ToValueList()),
                new("5 % of the cases lower", band.Time, band.Low.Zip(band.Height, (l, h) => l - h).ToValueList()),
                new("5 % of the cases higher", band.Time, band.High.Zip(band.Height, (l, h) => l - h).ToValueList()),
            ],
            WhatHappened.Marks(reading));
    }

    private static Plot Speeds(FlightReading reading, DescentPath typed)
    {
        var recorded = WhatHappened.Thin("recorded", reading, reading.Smooth.Speed);
        var times = recorded.X.Where(x => x >= 0 && x <= typed.End).ToValueList();
        return new(
            "Speed upwards, recorded and predicted", new("time after lift-off", Unit.Time), new("speed upwards", Unit.Speed),
            [recorded, new("predicted", times, times.Select(t => typed.At(t).VerticalSpeed).ToValueList())], WhatHappened.Marks(reading));
    }
}
