using MathNet.Numerics.Statistics;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>A predicted flight with what the tolerances of design, motor and day do to it. Times are after lift-off.</summary>
/// <param name="Time">s after lift-off, equal steps.</param>
/// <param name="Height">As typed, m above the pad.</param>
/// <param name="Low">5 % of the cases are lower, m.</param>
/// <param name="High">5 % of the cases are higher, m.</param>
/// <param name="Cases">Number of cases drawn.</param>
public sealed record PredictedBand(ValueList<double> Time, ValueList<double> Height, ValueList<double> Low, ValueList<double> High, int Cases)
{
    /// <summary>Sixty cases: the greatest bounds 95 % with 95 % confidence from 59 on (Wilks, Ann. Math. Stat. 12 (1941) 91).</summary>
    public const int Drawn = 60;

    private const double Step = 0.5;

    /// <summary>Apogee above the pad, m, of the cases.</summary>
    public ValueList<double> Apogees { get; init; } = [];

    /// <summary>Greatest upward speed, m/s, of the cases.</summary>
    public ValueList<double> Speeds { get; init; } = [];

    /// <summary>Lift-off to apogee, s, of the cases.</summary>
    public ValueList<double> ApogeeTimes { get; init; } = [];

    /// <summary>Flights of the cases, for what is asked of heights that a record names.</summary>
    public ValueList<DescentPath> Paths { get; init; } = [];

    /// <summary>Flies the cases.</summary>
    /// <param name="studies">Of the design as it flew.</param>
    /// <param name="nominal">Its nominal study; it reaches apogee.</param>
    public static PredictedBand Of(Studies studies, Study nominal)
    {
        var flights = new FlightResult?[Drawn];
        Parallel.For(0, Drawn, i => flights[i] = studies.Case(i) is { Missing.Count: 0, Flight: { Apogee: not null } flown } ? flown : null);
        DescentPath[] paths = [.. flights.OfType<FlightResult>().Select(f => new DescentPath(f))];
        DescentPath typed = new(nominal.Flight);
        var count = (int)Math.Ceiling(paths.Append(typed).Max(p => p.End) / Step) + 1;
        double[] times = [.. Enumerable.Range(0, count).Select(i => i * Step)], low = new double[count], high = new double[count];
        for (var i = 0; i < count; i++)
        {
            var heights = paths.Select(p => p.HeightAt(times[i])).ToArray();
            (low[i], high[i]) = heights.Length == 0 ? (double.NaN, double.NaN) : (heights.QuantileCustom(0.05, QuantileDefinition.R7), heights.QuantileCustom(0.95, QuantileDefinition.R7));
        }

        return new(ValueList.Of<double>(times), times.Select(typed.HeightAt).ToValueList(), ValueList.Of<double>(low), ValueList.Of<double>(high), paths.Length)
        {
            Apogees = paths.Select(p => p.Flight.Apogee!.Height).ToValueList(),
            Speeds = paths.Select(p => p.Fastest).ToValueList(),
            ApogeeTimes = paths.Select(p => p.Flight.Apogee!.Time - p.LiftOff).ToValueList(),
            Paths = ValueList.Of<DescentPath>(paths),
        };
    }

    /// <summary>Bounds at a time after lift-off, m: straight between steps; nil on the ground afterwards.</summary>
    public (double Low, double High) At(double time)
    {
        var at = Math.Clamp(time / Step, 0, Time.Count - 1);
        var i = Math.Min((int)at, Time.Count - 2);
        var share = at - i;
        return (Low[i] + (share * (Low[i + 1] - Low[i])), High[i] + (share * (High[i + 1] - High[i])));
    }

    /// <summary>A value with the standard deviation of its cases.</summary>
    /// <param name="value">As typed.</param>
    /// <param name="cases">Of the cases; those that are not finite are left out.</param>
    public static Estimate With(double value, IEnumerable<double> cases)
    {
        var sigma = cases.Where(double.IsFinite).StandardDeviation();
        return new(value, double.IsFinite(sigma) && sigma > 0 ? sigma : Math.Max(Math.Abs(value) * 1e-6, 1e-9));
    }
}
