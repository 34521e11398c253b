using MathNet.Numerics.LinearAlgebra;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// A flight straight up and down, smoothed: height, speed and acceleration from heights by pressure and, where there is one, from an accelerometer.
/// White noise on the jerk; steps of time as they are (Bar-Shalom, Li and Kirubarajan, Estimation with Applications to Tracking and Navigation,
/// 2001, 6.2, from memory). A pressure that lags by t follows h - t v + t² a, as it does at constant acceleration.
/// </summary>
/// <param name="Time">s.</param>
/// <param name="Height">m above the pad.</param>
/// <param name="Speed">Upwards, m/s.</param>
/// <param name="Acceleration">Upwards, m/s².</param>
/// <param name="HeightSigma">Standard uncertainty, m.</param>
/// <param name="SpeedSigma">Standard uncertainty, m/s.</param>
public sealed record SmoothedFlight(
    ValueList<double> Time, ValueList<double> Height, ValueList<double> Speed, ValueList<double> Acceleration, ValueList<double> HeightSigma, ValueList<double> SpeedSigma)
{
    /// <summary>Height as a device could have known it then, m.</summary>
    public ValueList<double> FilteredHeight { get; init; } = [];

    /// <summary>Speed as a device could have known it then, m/s.</summary>
    public ValueList<double> FilteredSpeed { get; init; } = [];

    /// <summary>Normalised innovation of each height; NaN where none was taken.</summary>
    public ValueList<double> Innovations { get; init; } = [];

    /// <summary>Times of heights left out because they were too far off, s.</summary>
    public ValueList<double> LeftOut { get; init; } = [];

    /// <summary>Times of heights in the transonic region, s.</summary>
    public ValueList<double> TransonicAt { get; init; } = [];

    /// <summary>Logarithm of the likelihood of all that was measured.</summary>
    public double LogLikelihood { get; init; }

    /// <summary>Smooths.</summary>
    /// <param name="times">s, rising.</param>
    /// <param name="heights">m above the pad; NaN where missing.</param>
    /// <param name="accelerations">Upwards, gravity and bias taken off, m/s²; NaN where missing or not to be used.</param>
    /// <param name="settings">How.</param>
    public static SmoothedFlight Of(IReadOnlyList<double> times, IReadOnlyList<double> heights, IReadOnlyList<double> accelerations, SmoothingSettings settings)
    {
        var build = Vector<double>.Build;
        var filter = new KalmanFilter(build.Dense(3), Matrix<double>.Build.DenseIdentity(3));
        var lag = settings.PortLag;
        var (readsHeight, readsAcceleration) = (build.DenseOfArray([1, -lag, lag * lag]), build.DenseOfArray([0, 0, 1]));
        var (height, speed, innovations) = (new double[times.Count], new double[times.Count], new double[times.Count]);
        List<double> leftOut = [], transonic = [];
        var run = 0;
        for (var k = 0; k < times.Count; k++)
        {
            if (k > 0) filter.Predict(Motion(times[k] - times[k - 1]), Noise(times[k] - times[k - 1], settings.QuietJerk is { } quiet && settings.Quiet(times[k]) ? quiet : settings.Jerk));
            innovations[k] = double.NaN;
            if (double.IsFinite(heights[k]))
            {
                var mach = Math.Abs(filter.State[1]) / settings.SoundSpeed(filter.State[0]);
                var disturbed = mach > settings.Transonic.From && mach < settings.Transonic.To;
                if (disturbed) transonic.Add(times[k]);
                var sigma = settings.HeightSigma * (disturbed ? settings.TransonicFactor : 1);
                if (filter.Look(readsHeight, heights[k], sigma * sigma).Squared > settings.Gate && run < settings.MostLeftOut)
                {
                    run++;
                    leftOut.Add(times[k]);
                }
                else
                {
                    run = 0;
                    var seen = filter.Take(readsHeight, heights[k], sigma * sigma);
                    innovations[k] = seen.Difference / Math.Sqrt(seen.Variance);
                }
            }

            if (double.IsFinite(accelerations[k])) filter.Take(readsAcceleration, accelerations[k], settings.AccelerationSigma * settings.AccelerationSigma);
            (height[k], speed[k]) = (filter.State[0], filter.State[1]);
        }

        var smooth = filter.Smooth();
        return new(
            times.ToValueList(), Part(0), Part(1), Part(2),
            smooth.Select(b => Math.Sqrt(Math.Max(0, b.Covariance[0, 0]))).ToValueList(), smooth.Select(b => Math.Sqrt(Math.Max(0, b.Covariance[1, 1]))).ToValueList())
        {
            FilteredHeight = ValueList.Of<double>(height),
            FilteredSpeed = ValueList.Of<double>(speed),
            Innovations = ValueList.Of<double>(innovations),
            LeftOut = leftOut.ToValueList(),
            TransonicAt = transonic.ToValueList(),
            LogLikelihood = filter.LogLikelihood,
        };

        ValueList<double> Part(int i) => smooth.Select(b => b.State[i]).ToValueList();
    }

    /// <summary>F over a step, s.</summary>
    public static Matrix<double> Motion(double d) => Matrix<double>.Build.DenseOfArray(new[,] { { 1, d, d * d / 2 }, { 0, 1, d }, { 0, 0, 1 } });

    /// <summary>Q over a step, s, of white jerk with a density, m²/s⁵.</summary>
    public static Matrix<double> Noise(double d, double density)
    {
        double d2 = d * d, d3 = d2 * d, d4 = d3 * d, d5 = d4 * d;
        return density * Matrix<double>.Build.DenseOfArray(new[,] { { d5 / 20, d4 / 8, d3 / 6 }, { d4 / 8, d3 / 3, d2 / 2 }, { d3 / 6, d2 / 2, d } });
    }

    /// <summary>Index of the last sample not after a time; 0 where all are.</summary>
    public int IndexAt(double time)
    {
        int low = 0, high = Time.Count - 1;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (Time[middle] <= time) low = middle;
            else high = middle - 1;
        }

        return low;
    }

    /// <summary>Height at a time, m: straight between samples, held at the ends.</summary>
    public double HeightAt(double time) => Between(Height, time);

    /// <summary>Speed at a time, m/s: straight between samples, held at the ends.</summary>
    public double SpeedAt(double time) => Between(Speed, time);

    private double Between(ValueList<double> values, double time)
    {
        var i = IndexAt(time);
        if (i + 1 >= Time.Count || time <= Time[i]) return values[i];
        return values[i] + ((values[i + 1] - values[i]) * (time - Time[i]) / (Time[i + 1] - Time[i]));
    }
}
