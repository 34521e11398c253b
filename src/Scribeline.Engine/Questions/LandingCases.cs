using Scribeline.Engine.Air;
using Scribeline.Engine.Design;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;

namespace Scribeline.Engine.Questions;

/// <summary>
/// The many flights of a design: weather, rail and turbulence of each case drawn and resolved as for any case of its tolerances; the rocket's
/// numbers (masses, balance, drag areas, impulse, coefficients) by their response to each tolerance, found by resolving the design at
/// both ends of it. Draws are those of <see cref="Draws.Case"/>, so case i is the same case for every question.
/// </summary>
internal sealed class LandingCases
{
    // Ends of a tolerance at which the design is resolved, standard deviations: the points of the three-point Gauss-Hermite rule.
    private const double Apart = 1.7320508075688772;

    private readonly RocketDesign design;
    private readonly ulong seed;
    private readonly Lazy<ValueList<Tolerance>> tolerances;

    public LandingCases(RocketDesign design, ulong seed, Study nominal)
    {
        (this.design, this.seed, Nominal) = (design, seed, nominal);
        tolerances = new(Resolve);
    }

    /// <summary>The study of the design as typed.</summary>
    public Study Nominal { get; }

    /// <summary>Cases of a rocket on this day: as planned, or with something failed.</summary>
    /// <param name="flown">The study that is flown without perturbation.</param>
    /// <param name="aim">Where the rail points instead; null for as it is set.</param>
    public LandingFlights Of(Study flown, RailAim? aim = null)
    {
        var figures = RocketFigures.Of(flown, Nominal, flown, AeroFactors.None);
        var responses = new Response[tolerances.Value.Count];
        Parallel.For(0, responses.Length, i =>
        {
            var t = tolerances.Value[i];
            var (high, low) = (RocketFigures.Of(t.High, Nominal, flown, t.HighAir), RocketFigures.Of(t.Low, Nominal, flown, t.LowAir));
            responses[i] = new(t.At, high.Less(low).Times(1 / (2 * Apart)), high.Plus(low).Less(figures.Times(2)).Times(1 / (2 * Apart * Apart)));
        });
        return new(this, flown, figures, responses, aim);
    }

    /// <summary>The air, wind and rail of a case; null where the drawn values make no day.</summary>
    internal (DayAir Air, AirMotion Wind, RailOfDay Rail)? Day(int number, double top) =>
        DayResolver.Around(design, Draws.Case(seed, number), new RandomStream(seed + (ulong)number, "turbulence"), top);

    internal double Drawn(int number, string at) => new RandomStream(seed + (ulong)number, at).Normal();

    /// <summary>Every tolerance that reaches the rocket, with the rocket at both ends of it. Those of weather, site and rail are drawn by themselves.</summary>
    private ValueList<Tolerance> Resolve()
    {
        Dictionary<string, double> sigmas = new(StringComparer.Ordinal);
        Resolved(m =>
        {
            if (m.Sigma > 0 && !IsOfDay(m.At)) sigmas.TryAdd(m.At, m.Sigma);
            return m.Si;
        });
        var found = sigmas.Keys.Order(StringComparer.Ordinal).ToArray();
        var ends = new Tolerance?[found.Length];
        Parallel.For(0, found.Length, i =>
        {
            if (End(found[i], Apart) is { } high && End(found[i], -Apart) is { } low) ends[i] = new(found[i], high, low, AirOf(high), AirOf(low));
        });
        return ends.OfType<Tolerance>().ToValueList();
    }

    private Study? End(string at, double deviations)
    {
        var resolution = Resolved(m => m.At == at ? m.Si + (deviations * m.Sigma) : m.Si);
        return resolution is { Rocket: { } rocket, Motor: { } motor, Problems.Count: 0 }
            ? new(rocket, motor, Nominal.Day with { Motor = motor }, [], new ResultCache(2), isSample: true)
            : null;
    }

    private Resolution Resolved(Func<IMeasure, double> draw) => DesignResolver.Resolve(design, draw, null, Nominal.Rocket.Separation.Charges);

    private static bool IsOfDay(string at) => at.StartsWith("weather", StringComparison.Ordinal) || at.StartsWith("rail", StringComparison.Ordinal) || at.StartsWith("site", StringComparison.Ordinal);

    /// <summary>
    /// How the coefficients of a slightly different shape differ over the climb as planned, each moment counting by its dynamic pressure.
    /// </summary>
    private AeroFactors AirOf(Study other)
    {
        if (other.Shape.Equals(Nominal.Shape) || Nominal.FreeAscent.Count == 0) return AeroFactors.None;
        double axial = 0, wasAxial = 0, slope = 0, wasSlope = 0, moment = 0, wasMoment = 0;
        var samples = Nominal.FreeAscent;
        for (var i = 0; i < samples.Count; i += Math.Max(1, samples.Count / 50))
        {
            var s = samples[i];
            Add(other, s, ref axial, ref slope, ref moment);
            Add(Nominal, s, ref wasAxial, ref wasSlope, ref wasMoment);
        }

        return new(axial / wasAxial, slope / wasSlope, (moment / slope) - (wasMoment / wasSlope));

        void Add(Study of, FlightSample s, ref double a, ref double n, ref double m)
        {
            var c = of.Aero.At<Scalar>(s.Mach, 0, Nominal.ReynoldsPerMetreAt(s), s.Thrust > 0 ? 1 : 0);
            var weight = s.DynamicPressure * of.Aero.ReferenceArea;
            (a, n, m) = (a + (weight * c.Axial), n + (weight * c.DampingSum0), m + (weight * c.DampingSum1));
        }
    }

    private sealed record Tolerance(string At, Study High, Study Low, AeroFactors HighAir, AeroFactors LowAir);
}

/// <summary>What a rocket's numbers do as one tolerance is drawn: first and second order, per standard deviation.</summary>
internal sealed record Response(string At, RocketFigures First, RocketFigures Second);

/// <summary>Where a rail points.</summary>
/// <param name="Tilt">From the vertical, rad, 0 or more.</param>
/// <param name="Azimuth">Towards which it leans, rad clockwise from north.</param>
public readonly record struct RailAim(double Tilt, double Azimuth)
{
    /// <summary>East and north parts of the tilt, rad.</summary>
    public (double East, double North) Parts => (Tilt * Math.Sin(Azimuth), Tilt * Math.Cos(Azimuth));

    /// <summary>The aim with these parts.</summary>
    public static RailAim Of(double east, double north) => new(double.Hypot(east, north), (Math.Atan2(east, north) + Math.Tau) % Math.Tau);
}
