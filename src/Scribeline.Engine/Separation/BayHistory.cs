using MathNet.Numerics.RootFinding;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Separation;

/// <summary>What the air in a bay does along a flight.</summary>
/// <param name="Bay">The bay.</param>
/// <param name="Air">Its free volume and its holes.</param>
/// <param name="Samples">Motion of the body it belongs to, in order of time.</param>
/// <param name="Outside">Pressure at its holes at those times, Pa.</param>
/// <param name="Inside">Pressure in it, Pa.</param>
public sealed record BayHistory(Bay Bay, BreathingBay Air, ValueList<FlightSample> Samples, ValueList<double> Outside, ValueList<double> Inside)
{
    /// <summary>Pressure over the outside at a sample, Pa: what pushes its joints apart.</summary>
    public double Excess(int sample) => Inside[sample] - Outside[sample];

    /// <summary>Index of the sample with the greatest push outwards before a time; -1 where there is none.</summary>
    /// <param name="until">s after ignition.</param>
    public int Worst(double until)
    {
        var worst = -1;
        for (var i = 0; i < Samples.Count && Samples[i].Time <= until; i++)
        {
            if (worst < 0 || Excess(i) > Excess(worst)) worst = i;
        }

        return worst;
    }

    /// <summary>The same bay with holes of another area.</summary>
    /// <param name="area">m², 0 or more.</param>
    public BayHistory With(double area)
    {
        var air = Air with { Area = area };
        return this with { Air = air, Inside = Breathing.Pressures(air, [.. Samples.Select(s => s.Time)], Outside).ToValueList() };
    }

    /// <summary>Least area of holes that keeps the push before a time under a pressure, m²; 0 where none is needed.</summary>
    /// <param name="pressure">Pa, more than 0.</param>
    /// <param name="until">s after ignition.</param>
    public double LeastArea(double pressure, double until)
    {
        var count = Samples.TakeWhile(s => s.Time <= until).Count();
        if (count == 0) return 0;
        var times = Samples.Take(count).Select(s => s.Time).ToArray();
        var outside = Outside.Take(count).ToArray();

        // How far the greatest push is over the pressure allowed, as a share of it.
        double Over(double logArea)
        {
            var inside = Breathing.Pressures(Air with { Area = Math.Exp(logArea) }, times, outside);
            return (inside.Zip(outside, (i, o) => i - o).Max() / pressure) - 1;
        }

        // Between a pinhole and a hole that drains the bay in a blink. A bigger hole never lags more, so there is one root.
        double low = Math.Log(1e-9 * Air.Volume), high = Math.Log(10 * Air.Volume);
        if (Over(low) <= 0) return 0;
        if (Over(high) > 0) return Math.Exp(high);
        return Math.Exp(Brent.FindRoot(Over, low, high, 1e-5, 100));
    }
}
