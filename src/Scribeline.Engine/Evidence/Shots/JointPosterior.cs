using MathNet.Numerics.Distributions;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence.Shots;

/// <summary>
/// Effectiveness of the powder and strength of the hold after shots, by Bayes' rule on a grid over the logarithms of both: five standard
/// deviations of the prior either way for the one, four for the other. Every shot counts, whether the joint let go or not.
/// </summary>
public sealed class JointPosterior
{
    private const int PowderPlaces = 101, HoldPlaces = 33;

    private readonly double[] x, y;
    private readonly double[,] weight;

    private JointPosterior(JointPrior prior)
    {
        Prior = prior;
        x = [.. Enumerable.Range(0, PowderPlaces).Select(i => prior.PowderSpread * 5 * ((2.0 * i / (PowderPlaces - 1)) - 1))];
        y = prior.HoldSpread <= 0 ? [prior.HoldMiddle]
            : [.. Enumerable.Range(0, HoldPlaces).Select(j => prior.HoldMiddle + (prior.HoldSpread * 4 * ((2.0 * j / (HoldPlaces - 1)) - 1)))];
        weight = new double[x.Length, y.Length];
        for (var i = 0; i < x.Length; i++)
        {
            for (var j = 0; j < y.Length; j++) weight[i, j] = Math.Exp(-0.5 * (Square(x[i] / prior.PowderSpread) + (y.Length == 1 ? 0 : Square((y[j] - prior.HoldMiddle) / prior.HoldSpread))));
        }

        Normalise();
    }

    /// <summary>What was held before.</summary>
    public JointPrior Prior { get; }

    /// <summary>Effectiveness of the powder.</summary>
    public Believed Powder => Believed.Of(x.Select((p, i) => (Math.Exp(p), Enumerable.Range(0, y.Length).Sum(j => weight[i, j]))));

    /// <summary>Strength of the hold.</summary>
    public Believed Hold => Believed.Of(y.Select((p, j) => (Math.Exp(p), Enumerable.Range(0, x.Length).Sum(i => weight[i, j]))));

    /// <summary>Correlation of the logarithms of the two, -1 to 1; 0 where the hold is known.</summary>
    public double Correlation
    {
        get
        {
            double a = 0, b = 0, aa = 0, bb = 0, ab = 0;
            Each((i, j, w) => (a, b, aa, bb, ab) = (a + (w * x[i]), b + (w * y[j]), aa + (w * x[i] * x[i]), bb + (w * y[j] * y[j]), ab + (w * x[i] * y[j])));
            var wide = (aa - (a * a)) * (bb - (b * b));
            return y.Length == 1 || wide <= 0 ? 0 : (ab - (a * b)) / Math.Sqrt(wide);
        }
    }

    /// <summary>Mean and standard deviation of ln of the effectiveness.</summary>
    public (double Mean, double Deviation) LogPowder
    {
        get
        {
            double mean = 0, square = 0;
            Each((i, _, w) => (mean, square) = (mean + (w * x[i]), square + (w * x[i] * x[i])));
            return (mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
        }
    }

    /// <summary>The posterior after shots; without any it is the prior.</summary>
    /// <param name="prior">Before them.</param>
    /// <param name="shots">In any order.</param>
    public static JointPosterior Of(JointPrior prior, IEnumerable<ShotEvidence> shots)
    {
        var posterior = new JointPosterior(prior);
        foreach (var shot in shots) posterior.Take(shot);
        return posterior;
    }

    /// <summary>Probability that a joint lets go, over all that may be true.</summary>
    /// <param name="firing">The firing; what came of it is not looked at.</param>
    public Believed LetsGo(ShotEvidence firing) => Believed.Of(Places(firing).Select(p => (p.LetsGo, p.Weight)));

    /// <summary>The mean of <see cref="LetsGo"/> alone, which needs no order among the places.</summary>
    /// <param name="firing">The firing; what came of it is not looked at.</param>
    public double Chance(ShotEvidence firing) => Places(firing).Sum(p => p.LetsGo * p.Weight);

    /// <summary>
    /// Further shots without one that stays shut, until the probability of letting go in flight is at least <paramref name="share"/> with the
    /// given credibility; null where <paramref name="most"/> do not suffice.
    /// </summary>
    /// <param name="shot">Each further shot.</param>
    /// <param name="flight">The firing in flight.</param>
    /// <param name="share">Of letting go, 0 to 1.</param>
    /// <param name="credibility">0 to 1.</param>
    /// <param name="most">Most shots looked at.</param>
    public int? MoreShots(ShotEvidence shot, ShotEvidence flight, double share, double credibility, int most = 200)
    {
        var passes = Places(shot).Zip(Places(flight), (s, f) => (Pass: Math.Log(Math.Max(s.LetsGo, 1e-300)), Good: f.LetsGo >= share, f.Weight)).ToArray();
        bool Enough(int shots)
        {
            double good = 0, all = 0;
            foreach (var place in passes)
            {
                var w = place.Weight * Math.Exp(shots * place.Pass);
                all += w;
                if (place.Good) good += w;
            }

            return all > 0 && good >= credibility * all;
        }

        if (Enough(0)) return 0;
        int low = 0, high = 1;
        while (!Enough(high))
        {
            if (high >= most) return null;
            (low, high) = (high, Math.Min(2 * high, most));
        }

        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Enough(middle)) high = middle;
            else low = middle;
        }

        return high;
    }

    /// <summary>Density of the effectiveness, per unit of it.</summary>
    public (ValueList<double> Values, ValueList<double> Density) PowderCurve => Curve(x, i => Enumerable.Range(0, y.Length).Sum(j => weight[i, j]));

    /// <summary>Density of the strength, per unit of it; empty where it is known.</summary>
    public (ValueList<double> Values, ValueList<double> Density) HoldCurve => y.Length == 1 ? ([], []) : Curve(y, j => Enumerable.Range(0, x.Length).Sum(i => weight[i, j]));

    private static (ValueList<double> Values, ValueList<double> Density) Curve(double[] places, Func<int, double> at)
    {
        var step = places[1] - places[0];
        return (places.Select(p => Math.Exp(p)).ToValueList(), places.Select((p, i) => at(i) / step / Math.Exp(p)).ToValueList());
    }

    private void Take(ShotEvidence shot)
    {
        Span<double> likelihood = new double[x.Length];
        for (var j = 0; j < y.Length; j++)
        {
            shot.Likelihood(x[0], x[1] - x[0], Prior, Math.Exp(y[j]), likelihood);
            for (var i = 0; i < x.Length; i++) weight[i, j] *= likelihood[i];
        }

        Normalise();
    }

    private IEnumerable<(double LetsGo, double Weight)> Places(ShotEvidence firing)
    {
        for (var j = 0; j < y.Length; j++)
        {
            var (needed, wide) = firing.Wide(Math.Exp(y[j]), Prior.PowderScatter);
            for (var i = 0; i < x.Length; i++) yield return (Normal.CDF(needed, wide, x[i]), weight[i, j]);
        }
    }

    private void Each(Action<int, int, double> at)
    {
        for (var i = 0; i < x.Length; i++)
        {
            for (var j = 0; j < y.Length; j++) at(i, j, weight[i, j]);
        }
    }

    private void Normalise()
    {
        double sum = 0;
        Each((_, _, w) => sum += w);
        if (sum <= 0) throw new InvalidOperationException("Shots that no place of the grid can explain.");
        for (var i = 0; i < x.Length; i++)
        {
            for (var j = 0; j < y.Length; j++) weight[i, j] /= sum;
        }
    }

    private static double Square(double value) => value * value;
}
