using MathNet.Numerics.Distributions;

namespace Scribeline.Engine.Evidence.Shots;

/// <summary>A firing as the two unknowns see it: what its load does, what held the joint, and what came of it.</summary>
/// <param name="Response">Of its load.</param>
/// <param name="Hold">Of its joint.</param>
/// <param name="LetGo">Whether the joint let go.</param>
/// <param name="Speed">Speed of the pieces from one another, m/s; null where not measured.</param>
/// <param name="Pressure">Greatest gauge pressure, Pa; null where not measured.</param>
public sealed record ShotEvidence(ChargeResponse Response, JointHold Hold, bool LetGo, ShotReading? Speed = null, ShotReading? Pressure = null)
{
    // A step between two places of the grid would be counted at one of them: a little width spreads it.
    private const double Blur = 0.02;

    // Nothing that was seen is impossible: a record may be wrong, or the model.
    private const double Least = 1e-12;

    /// <summary>ln of the effectiveness at which the joint just lets go, and the standard deviation that scattering pins give it.</summary>
    /// <param name="strength">Of the hold.</param>
    public (double Needed, double Scatter) Threshold(double strength)
    {
        if (Hold.At(strength) <= 0) return (double.NegativeInfinity, 0);
        var (needed, slope) = Response.Needed(Math.Log(Hold.At(strength)));
        return (needed, slope * Hold.ScatterAt(strength));
    }

    /// <summary>The same with the scatter of the powder beside that of the pins: the joint lets go with probability Φ((x - needed)/wide).</summary>
    /// <param name="strength">Of the hold.</param>
    /// <param name="scatter">Of ln of the effectiveness from shot to shot.</param>
    public (double Needed, double Wide) Wide(double strength, double scatter)
    {
        var (needed, pins) = Threshold(strength);
        return (needed, Math.Sqrt((scatter * scatter) + (pins * pins)));
    }

    /// <summary>Likelihoods of what came of it at every place of a grid of effectiveness, for one strength.</summary>
    /// <param name="from">ln of the effectiveness at the first place.</param>
    /// <param name="step">From place to place.</param>
    /// <param name="prior">Scatter and the model's share.</param>
    /// <param name="strength">Of the hold.</param>
    /// <param name="into">One for each place.</param>
    public void Likelihood(double from, double step, JointPrior prior, double strength, Span<double> into)
    {
        var (needed, pins) = Threshold(strength);
        if (Speed is null && Pressure is null)
        {
            var (_, wide) = Wide(strength, prior.PowderScatter);
            for (var i = 0; i < into.Length; i++)
            {
                var z = (from + (i * step) - needed) / wide;
                into[i] = Came(z);
            }

            return;
        }

        // What was measured tells of this very shot's effectiveness: summed over how far that may lie from the bay's.
        var reach = (int)Math.Ceiling(4 * prior.PowderScatter / step);
        Span<double> shot = new double[into.Length + (2 * reach)], weights = new double[(2 * reach) + 1];
        for (var k = 0; k < shot.Length; k++)
        {
            var x = from + ((k - reach) * step);
            var z = (x - needed) / Math.Max(pins, Blur);
            shot[k] = Math.Max(Came(z) * Measured(x, prior.ModelShare), Least);
        }

        for (var k = -reach; k <= reach; k++) weights[k + reach] = Normal.PDF(0, prior.PowderScatter, k * step) * step;
        for (var i = 0; i < into.Length; i++)
        {
            double sum = 0;
            for (var k = 0; k < weights.Length; k++) sum += weights[k] * shot[i + k];
            into[i] = sum;
        }
    }

    /// <summary>How many standard deviations a measured speed lies from what the prior expects, and a measured pressure; 0 where not measured.</summary>
    /// <param name="prior">Before any shot.</param>
    public (double Speed, double Pressure) Surprise(JointPrior prior)
    {
        double Off(ShotReading? reading, Func<double, double> curve)
        {
            if (reading is not { } read) return 0;
            var slope = (curve(0.1) - curve(-0.1)) / 0.2;
            var wide = (slope * slope * ((prior.PowderSpread * prior.PowderSpread) + (prior.PowderScatter * prior.PowderScatter))) + (prior.ModelShare * prior.ModelShare) + (read.Share * read.Share);
            return (Math.Log(read.Value) - curve(0)) / Math.Sqrt(wide);
        }

        return (Off(Speed, Response.Speed), Off(Pressure, x => Response.Pressure(x, LetGo)));
    }

    private double Came(double z) => Math.Max(Normal.CDF(0, 1, LetGo ? z : -z), Least);

    private double Measured(double x, double model)
    {
        double One(ShotReading? reading, double expected) => reading is { } read ? Normal.PDF(expected, Math.Sqrt((read.Share * read.Share) + (model * model)), Math.Log(read.Value)) : 1;
        return One(LetGo ? Speed : null, Response.Speed(x)) * One(Pressure, Response.Pressure(x, LetGo));
    }
}
