using MathNet.Numerics.LinearAlgebra;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Questions;

/// <summary>
/// Where the rail is best pointed. The same cases are flown at fifteen aims spread over what the code allows; each case's landing is fitted by a
/// quadratic in the east and north parts of the tilt, and the aim is sought on the fits, which cost nothing. What is advised is flown anew.
/// An aim is the better the fewer land outside or on an area to keep clear of (people count five times); a landing near an edge counts
/// in part, so that of aims that all keep inside the one with most room wins.
/// Method: quadratic response surface with common random numbers (Box and Wilson, J. R. Stat. Soc. B 13 (1951) 1; from memory).
/// </summary>
internal sealed class AimSearch
{
    // Weight of people over ground, and share of the field's width over which an edge counts in part: assumptions.
    private const double People = 5, Soft = 0.03;
    private const int Terms = 6, LeastCases = 100, MostCases = 400;

    private readonly LandingField field;
    private readonly double most;
    private readonly List<double[][]> fits = [];

    /// <param name="flights">Cases with the rail anywhere.</param>
    /// <param name="now">Where it points.</param>
    /// <param name="most">Greatest tilt, rad.</param>
    /// <param name="field">The field.</param>
    /// <param name="count">Flights of a whole answer.</param>
    /// <param name="cancel">Ends the work.</param>
    public AimSearch(LandingFlights flights, RailAim now, double most, LandingField field, int count, CancellationToken cancel)
    {
        (this.field, this.most) = (field, most);
        Cases = Math.Clamp(count / 5, LeastCases, MostCases);
        Fit(flights, cancel);
        Best = Seek(now, cancel);
        Room = RoomAround(Best);
    }

    /// <summary>Cases flown at every aim.</summary>
    public int Cases { get; }

    /// <summary>Cases that came down everywhere and are fitted.</summary>
    public int Fitted => fits.Count;

    /// <summary>Root mean square of what the fits leave over, m.</summary>
    public double Misfit { get; private set; }

    /// <summary>The aim advised.</summary>
    public RailAim Best { get; }

    /// <summary>How far the rail may point elsewhere, to any side, before one more flight in a hundred goes astray, rad; by the fits.</summary>
    public double Room { get; }

    /// <summary>Share of the fitted cases that go astray at an aim: outside, or on an area to keep clear of.</summary>
    public double Astray(RailAim aim)
    {
        var terms = Powers(aim);
        return fits.Count == 0 ? 1 : (double)fits.Count(f => Landings(f, terms).Any(p => field.IsOutside(p) || field.Kept.Any(k => k.Area.Contains(p)))) / fits.Count;
    }

    private static RailAim[] Design(double most)
    {
        List<RailAim> aims = [new(0, 0)];
        for (var i = 0; i < 6; i++) aims.Add(new(most / 2, i * Math.PI / 3));
        for (var i = 0; i < 8; i++) aims.Add(new(most, (i + 0.5) * Math.PI / 4));
        return [.. aims];
    }

    private void Fit(LandingFlights flights, CancellationToken cancel)
    {
        var aims = Design(most);
        var ends = aims.Select(a => flights.Aimed(a).Fly(Cases, null, cancel)).ToArray();
        var inverse = Matrix<double>.Build.DenseOfRowArrays(aims.Select(Powers)).PseudoInverse();
        var terms = aims.Select(Powers).ToArray();
        var (left, numbers) = (0.0, 0);
        for (var i = 0; i < Cases; i++)
        {
            var bodies = ends[0][i].Landings.Count;
            if (bodies == 0 || ends.Any(e => e[i].Failed || e[i].Landings.Count != bodies)) continue;
            var fit = new double[2 * bodies][];
            for (var b = 0; b < bodies; b++)
            {
                fit[2 * b] = (inverse * Vector<double>.Build.DenseOfEnumerable(ends.Select(e => e[i].Landings[b].East))).ToArray();
                fit[(2 * b) + 1] = (inverse * Vector<double>.Build.DenseOfEnumerable(ends.Select(e => e[i].Landings[b].North))).ToArray();
            }

            fits.Add(fit);
            for (var a = 0; a < aims.Length; a++)
            {
                var at = Landings(fit, terms[a]).First();
                left += Math.Pow(at.East - ends[a][i].Landings[0].East, 2) + Math.Pow(at.North - ends[a][i].Landings[0].North, 2);
                numbers++;
            }
        }

        Misfit = numbers == 0 ? double.NaN : Math.Sqrt(left / numbers);
    }

    /// <summary>All over the disc, then closer and closer about the best; of equals the one nearer the vertical.</summary>
    private RailAim Seek(RailAim now, CancellationToken cancel)
    {
        if (fits.Count == 0) return now;
        var best = (Aim: new RailAim(Math.Min(now.Tilt, most), now.Azimuth), Cost: double.PositiveInfinity);
        Try(best.Aim);
        for (var ring = 0; ring <= 8; ring++)
        {
            cancel.ThrowIfCancellationRequested();
            for (var i = 0; i < (ring == 0 ? 1 : 24); i++) Try(new(most * ring / 8, i * Math.Tau / 24));
        }

        for (var step = most / 8; step > 0.1 * Math.PI / 180; step /= 2)
        {
            var (east, north) = best.Aim.Parts;
            for (var i = 0; i < 8; i++) Try(RailAim.Of(east + (step * Math.Sin(i * Math.PI / 4)), north + (step * Math.Cos(i * Math.PI / 4))));
        }

        return best.Aim;

        void Try(RailAim aim)
        {
            if (aim.Tilt > most) return;
            var cost = Cost(aim) + (1e-4 * aim.Tilt);
            if (cost < best.Cost) best = (aim, cost);
        }
    }

    private double Cost(RailAim aim)
    {
        var (terms, width) = (Powers(aim), Soft * field.Boundary.Narrowest);
        return fits.Average(f => Landings(f, terms).Max(p =>
            Part(-field.Boundary.Inside(p)) + field.Kept.Sum(k => (k.People ? People : 1) * Part(k.Area.Inside(p)))));

        // From 0 well clear of an edge to 1 well beyond it: the logistic curve.
        double Part(double beyond) => 1 / (1 + Math.Exp(-beyond / width));
    }

    private double RoomAround(RailAim best)
    {
        if (fits.Count == 0) return 0;
        var (least, (east, north)) = (Astray(best), best.Parts);
        const double step = 0.5 * Math.PI / 180;
        var room = 0.0;
        for (var r = step; r <= 2 * most; r += step)
        {
            for (var i = 0; i < 12; i++)
            {
                if (Astray(RailAim.Of(east + (r * Math.Sin(i * Math.PI / 6)), north + (r * Math.Cos(i * Math.PI / 6)))) > least + 0.01) return room;
            }

            room = r;
        }

        return room;
    }

    private static double[] Powers(RailAim aim)
    {
        var (x, y) = aim.Parts;
        return [1, x, y, x * x, x * y, y * y];
    }

    private static IEnumerable<LandingPoint> Landings(double[][] fit, double[] terms)
    {
        for (var b = 0; b < fit.Length; b += 2) yield return new(Sum(fit[b], terms), Sum(fit[b + 1], terms));
    }

    private static double Sum(double[] fit, double[] terms)
    {
        var sum = 0.0;
        for (var i = 0; i < Terms; i++) sum += fit[i] * terms[i];
        return sum;
    }
}
