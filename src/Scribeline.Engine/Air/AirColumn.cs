using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// A column of air in hydrostatic balance, of layers in which the virtual temperature is linear in geopotential height H:
/// p = p_b (T_b/T)^(g0/(R L)), or p_b exp(-g0 (H - H_b)/(R T_b)) in a layer without lapse. Exact: no table of pressures is kept.
/// Where a level carries a measured pressure the layer's exponent is scaled so that the pressure passes through it.
/// Below the first level the first layer is extended, above the last level the column is isothermal.
/// Source: <i>U.S. Standard Atmosphere, 1976</i>, equations 33a and 33b.
/// </summary>
internal sealed class AirColumn
{
    private readonly Breakpoints layers;
    private readonly double[] height, temperature, lapse, virtualTemperature, virtualLapse;
    private readonly double[] logPressure, isothermal, gradient;      // ln p = ln p_b - isothermal (H - H_b) - gradient ln(T/T_b)
    private readonly double[] heightPerLog, heightFactor, logScale;   // the inverse of the same

    /// <param name="levels">One or more, ascending in height; the first carries a pressure.</param>
    public AirColumn(ReadOnlySpan<AirLevel> levels)
    {
        var n = levels.Length;
        var heights = new double[n + 1];
        for (var i = 0; i < n; i++) heights[i] = levels[i].Height;
        heights[n] = heights[n - 1] + 1; // above it the last layer is still found
        layers = new Breakpoints(heights);
        height = heights[..n];
        (temperature, lapse, virtualTemperature, virtualLapse) = (new double[n], new double[n], new double[n], new double[n]);
        (logPressure, isothermal, gradient) = (new double[n], new double[n], new double[n]);
        (heightPerLog, heightFactor, logScale) = (new double[n], new double[n], new double[n]);

        logPressure[0] = Math.Log(levels[0].Pressure ?? throw new ArgumentException("The first level needs a pressure.", nameof(levels)));
        for (var i = 0; i < n; i++) SetLayer(i, levels[i], i + 1 < n ? levels[i + 1] : levels[i] with { Height = heights[n] });
    }

    /// <summary>Air at geopotential height <paramref name="H"/>, m.</summary>
    public AirState<T> At<T>(T H)
        where T : struct, IReal<T>
    {
        var i = layers.Find(H);
        var dH = H - T.Gather(height, i);
        var Tb = T.Gather(virtualTemperature, i);
        var Tv = Tb + (T.Gather(virtualLapse, i) * dH);
        var t = T.Gather(temperature, i) + (T.Gather(lapse, i) * dH);
        var p = T.Exp(T.Gather(logPressure, i) - (T.Gather(isothermal, i) * dH) - (T.Gather(gradient, i) * T.Log(Tv / Tb)));
        var RT = T.From(AirConstants.GasConstant) * Tv;
        var mu = T.From(AirConstants.SutherlandFactor) * t * T.Sqrt(t) / (t + T.From(AirConstants.SutherlandTemperature));
        return new(t, p, p / RT, T.Sqrt(T.From(AirConstants.HeatRatio) * RT), mu);
    }

    /// <summary>Geopotential height, m, at which the pressure is <paramref name="pressure"/>, Pa.</summary>
    public T HeightAt<T>(T pressure)
        where T : struct, IReal<T>
    {
        var log = T.Log(pressure);
        var i = T.From(0);
        for (var k = 1; k < logPressure.Length; k++) i = T.SelectLess(log, T.From(logPressure[k]), T.From(k), i);
        var drop = T.Gather(logPressure, i) - log;
        return T.Gather(height, i) + (T.Gather(heightPerLog, i) * drop)
            + (T.Gather(heightFactor, i) * (T.Exp(T.Gather(logScale, i) * drop) - T.From(1)));
    }

    private void SetLayer(int i, AirLevel low, AirLevel high)
    {
        var dH = high.Height - low.Height;
        var (Tb, Tt) = (low.Temperature + low.VapourExcess, high.Temperature + high.VapourExcess);
        (temperature[i], lapse[i]) = (low.Temperature, (high.Temperature - low.Temperature) / dH);
        (virtualTemperature[i], virtualLapse[i]) = (Tb, (Tt - Tb) / dH);

        const double g0OverR = AirConstants.StandardGravity / AirConstants.GasConstant;
        var steep = Math.Abs(Tt - Tb) > 1e-6 * Tb;
        if (!steep) virtualLapse[i] = 0;
        var drop = steep ? g0OverR / virtualLapse[i] * Math.Log(Tt / Tb) : g0OverR / Tb * dH;
        var last = i + 1 == height.Length;
        var scale = !last && high.Pressure is { } measured ? (logPressure[i] - Math.Log(measured)) / drop : 1;
        if (!last) logPressure[i + 1] = logPressure[i] - (scale * drop);
        if (steep)
        {
            gradient[i] = scale * g0OverR / virtualLapse[i];
            (heightFactor[i], logScale[i]) = (Tb / virtualLapse[i], 1 / gradient[i]);
        }
        else
        {
            isothermal[i] = scale * g0OverR / Tb;
            heightPerLog[i] = 1 / isothermal[i];
        }
    }
}
