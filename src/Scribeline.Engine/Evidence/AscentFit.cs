using MathNet.Numerics.LinearAlgebra;
using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Flight;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// What a recorded climb says of drag and impulse: the flight equations themselves flown with other factors until heights and accelerations fit best.
/// What else may differ is fitted along, each held by what is known of it: moment of lift-off, burn time, lean of the rail, scale of the
/// accelerometer, lag of the pressure in the bay.
/// </summary>
/// <param name="Drag">Factor on the drag that was predicted, by this climb alone.</param>
/// <param name="Impulse">Factor on the impulse, by this climb alone.</param>
/// <param name="PortLag">Lag of the pressure, s; null without accelerometer, where it cannot be told from the moment of lift-off.</param>
/// <param name="BurnTime">Factor on the burn time.</param>
/// <param name="Scatter">Root of the mean squared residual, in its uncertainties: about 1 where the model fits.</param>
/// <param name="Samples">Number of residuals.</param>
/// <param name="Converged">Whether it came to rest; otherwise nothing is learnt.</param>
public sealed record AscentFit(Estimate Drag, Estimate Impulse, Estimate? PortLag, Estimate BurnTime, double Scatter, int Samples, bool Converged)
{
    private const double Gravity = 9.80665;
    private const int MostMoments = 150;

    // What is known without the record: of drag and impulse next to nothing, so that the climb alone speaks.
    private const double Free = 2;

    /// <summary>Fits.</summary>
    /// <param name="reading">The recorded flight; its climb must reach apogee.</param>
    /// <param name="inputs">The flight as predicted.</param>
    /// <param name="aerodynamics">Table of its shape.</param>
    /// <param name="known">What is known of the rest.</param>
    public static AscentFit Of(FlightReading reading, FlightInputs inputs, AeroTable aerodynamics, AscentKnown known)
    {
        Model model = new(reading, inputs, aerodynamics, known);
        var start = Vector<double>.Build.DenseOfArray([1, 1, 0, 1, 0, 1, reading.Settings.PortLag]);
        var fit = LeastSquares.Fit(model.Residuals, LeastSquares.Differences(model.Residuals, [0.02, 0.005, 0.01, 0.005, 0.005, 0.005, 0.01]), start, 40);
        var (p, covariance) = (fit.Parameters, fit.Covariance);

        // Where the model does not follow the record the uncertainties are told too small, and are stretched by as much (Birge, 1932).
        var scatter = Math.Sqrt(fit.Sum / Math.Max(1, model.Count));
        Estimate At(int i) => new(p[i], Math.Sqrt(covariance[i, i]) * Math.Max(1, scatter));
        return new(At(0), At(1), model.Lags ? At(6) : null, At(3), scatter, model.Count, fit.Converged);
    }

    private sealed class Model
    {
        private readonly FlightInputs inputs;
        private readonly AeroTable aerodynamics;
        private readonly AscentKnown known;
        private readonly (double Since, double Height, double Sigma)[] heights;
        private readonly (double Since, double Felt, double Sigma)[] felt;

        internal Model(FlightReading reading, FlightInputs inputs, AeroTable aerodynamics, AscentKnown known)
        {
            (this.inputs, this.aerodynamics, this.known) = (inputs, aerodynamics, known);
            var smooth = reading.Smooth;
            var end = reading.Apogee!.Time - 0.3;
            var within = Enumerable.Range(0, smooth.Time.Count).Where(i => smooth.Time[i] > reading.LiftOff.Time && smooth.Time[i] < end).ToArray();
            var thin = Math.Max(1, within.Length / MostMoments);
            var chosen = within.Where((_, i) => i % thin == 0).ToArray();
            var disturbed = smooth.TransonicAt.Concat(smooth.LeftOut).ToHashSet();
            heights = [.. chosen.Where(i => double.IsFinite(reading.Heights[i]) && !disturbed.Contains(smooth.Time[i]))
                .Select(i => (reading.Since(smooth.Time[i]), reading.Heights[i], Math.Max(reading.Settings.HeightSigma, 0.3)))];
            felt = [.. chosen.Where(i => double.IsFinite(reading.Accelerations[i]))
                .Select(i => (reading.Since(smooth.Time[i]), FlightReading.Felt(reading.Accelerations[i]), Math.Max(reading.Settings.AccelerationSigma, 0.03 * Math.Abs(FlightReading.Felt(reading.Accelerations[i])))))];
        }

        internal bool Lags => felt.Length > 0;

        internal int Count => heights.Length + felt.Length;

        internal Vector<double> Residuals(Vector<double> p)
        {
            var flight = Fly(p);
            var ground = flight.Events.FirstOrDefault(e => e.Kind == FlightEventKind.LiftOff)?.Time ?? 0;
            var r = Vector<double>.Build.Dense(heights.Length + felt.Length + 7);
            var n = 0;
            foreach (var (since, height, sigma) in heights)
            {
                var (h, v, a) = At(flight, ground + since + p[2]);
                r[n++] = (h - (p[6] * v) + (p[6] * p[6] * a) - height) / sigma;
            }

            foreach (var (since, reading, sigma) in felt)
            {
                var time = ground + since + p[2];
                r[n++] = ((p[5] * (time > flight.End ? 0 : flight.At(time).ProperAcceleration.X)) - reading) / sigma;
            }

            r[n++] = (p[0] - 1) / Free;
            r[n++] = (p[1] - 1) / Free;
            r[n++] = p[2] / known.LiftOffSigma;
            r[n++] = (p[3] - 1) / known.BurnTimeSigma;
            r[n++] = p[4] / known.LeanSigma;
            r[n++] = (p[5] - 1) / known.ScaleSigma;
            r[n] = (p[6] - known.PortLag.Value) / (Lags ? known.PortLag.Sigma : 1e-4);
            return r;
        }

        private FlightResult Fly(Vector<double> p)
        {
            var factors = inputs.Factors with
            {
                Drag = inputs.Factors.Drag * Math.Clamp(p[0], 0.05, 10),
                Impulse = inputs.Factors.Impulse * Math.Clamp(p[1], 0.2, 5),
                BurnTime = inputs.Factors.BurnTime * Math.Clamp(p[3], 0.3, 3),
            };
            return (inputs with
            {
                Factors = factors,
                Rail = inputs.Rail with { Elevation = Math.Min(inputs.Rail.Elevation + p[4], Math.PI - inputs.Rail.Elevation - p[4]) },
                Recovery = RecoveryPlan.Ballistic,
                Options = inputs.Options with { Extent = FlightExtent.Apogee, RelativeTolerance = 1e-7 },
            }).Fly(aerodynamics);
        }

        // Past its own apogee the model falls freely: only for the last moments, where another factor reaches apogee a little sooner.
        private static (double Height, double Speed, double Acceleration) At(FlightResult flight, double time)
        {
            var over = Math.Max(0, time - flight.End);
            var at = flight.At(Math.Max(0, time));
            if (over > 0) return (at.Height - (Gravity * over * over / 2), -Gravity * over, -Gravity);
            const double Near = 0.02;
            var (before, after) = (flight.At(Math.Max(0, time - Near)), flight.At(Math.Min(flight.End, time + Near)));
            return (at.Height, at.VerticalSpeed, (after.VerticalSpeed - before.VerticalSpeed) / Math.Max(after.Time - before.Time, 1e-6));
        }
    }
}

/// <summary>What is known of a climb without its record.</summary>
/// <param name="PortLag">Lag of the pressure in the bay, s.</param>
/// <param name="LeanSigma">Standard uncertainty of the lean of the rail, rad.</param>
/// <param name="LiftOffSigma">Of the moment of lift-off, s.</param>
/// <param name="BurnTimeSigma">Of the burn time, as a share.</param>
/// <param name="ScaleSigma">Of the accelerometer's scale, as a share; sensors of this range are good to 0.5 to 3 %.</param>
public sealed record AscentKnown(Estimate PortLag, double LeanSigma = 0.0087, double LiftOffSigma = 0.1, double BurnTimeSigma = 0.05, double ScaleSigma = 0.015);
