using Scribeline.Engine.Design;
using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;

namespace Scribeline.Engine.Questions;

/// <summary>The studies of a design: the nominal one and those drawn from its tolerances.</summary>
public sealed class Studies
{
    private readonly RocketDesign design;
    private readonly ulong seed;

    private Studies(RocketDesign design, ulong seed, Study? nominal, ValueList<Problem> problems) =>
        (this.design, this.seed, Nominal, Problems) = (design, seed, nominal, problems);

    /// <summary>The study of the design as typed; null where the airframe cannot be.</summary>
    public Study? Nominal { get; }

    /// <summary>What is wrong with the design.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>The studies of a design.</summary>
    /// <param name="design">As typed, its files read.</param>
    /// <param name="seed">Of the drawn cases.</param>
    /// <param name="cache">Where long results of the nominal study are kept; null for a new one.</param>
    /// <param name="confirmed">What persons have confirmed for this day, design and motor; null for nothing.</param>
    /// <param name="flights">Recorded flights, oldest first; null for none.</param>
    /// <param name="asked">Number of the flight that is asked about; the newest where there is none of that number.</param>
    public static Studies Of(
        RocketDesign design, ulong seed = 1, ResultCache? cache = null, ValueList<Confirmation>? confirmed = null, ValueList<FlownFlight>? flights = null, long? asked = null)
    {
        var built = AsBuilt.Of(design);
        var resolution = DesignResolver.Resolve(built.Design, Draws.Nominal);
        var kept = cache ?? new ResultCache();
        if (resolution.Rocket is { } rocket && built.Compared.Count > 0) resolution = resolution with { Rocket = rocket with { Compared = built.Compared } };
        var drawn = design.Records is { Weighed.Count: > 0 } or { Measured.Count: > 0 }
            ? new Lazy<Study?>(() => Of(DesignResolver.Resolve(AsBuilt.Drawn(design), Draws.Nominal), kept, isSample: false))
            : null;
        var untaught = FlownValues.AreIn(built.Design) ? new Lazy<Study?>(() => Of(DesignResolver.Resolve(FlownValues.Without(built.Design), Draws.Nominal), kept, isSample: false, confirmed: confirmed, many: new(FlownValues.Without(built.Design), seed))) : null;
        var nominal = Of(resolution, kept, isSample: false, drawn, confirmed: confirmed, many: new(built.Design, seed), untaught: untaught, flights: flights, asked: asked);
        return new(built.Design, seed, nominal, resolution.Problems);
    }

    /// <summary>The study of case 0, 1, 2 ...: tolerances drawn, the wind gusting; null where the drawn values do not make a rocket.</summary>
    public Study? Case(int number)
    {
        var untaught = FlownValues.AreIn(design) ? new Lazy<Study?>(() => Case(FlownValues.Without(design), number, Nominal?.Untaught, null)) : null;
        return Case(design, number, Nominal, untaught);
    }

    private Study? Case(RocketDesign drawn, int number, Study? nominal, Lazy<Study?>? untaught)
    {
        var resolution = DesignResolver.Resolve(drawn, Draws.Case(seed, number), new RandomStream(seed + (ulong)number, "turbulence"), nominal?.Rocket.Separation.Charges);
        return resolution.Problems.Count > 0 ? null : Of(resolution, new ResultCache(2), isSample: true, tested: new(() => nominal?.Tested ?? []), untaught: untaught);
    }

    private static Study? Of(
        Resolution resolution, ResultCache cache, bool isSample, Lazy<Study?>? drawn = null, Lazy<ValueList<TestedCharge>>? tested = null, ValueList<Confirmation>? confirmed = null,
        ManyFlights? many = null, Lazy<Study?>? untaught = null, ValueList<FlownFlight>? flights = null, long? asked = null)
    {
        if (resolution.Rocket is not { } rocket) return null;
        var planned = !isSample && resolution.Day is { } day && day.Weather != default
            ? new Study(rocket, resolution.Motor, day.Planned(), resolution.Missing, cache, isSample)
            : null;
        return new(rocket, resolution.Motor, resolution.Day, resolution.Missing, cache, isSample, planned)
        {
            Drawn = drawn,
            TestedBefore = tested,
            Confirmed = confirmed ?? [],
            Many = many,
            UntaughtOrNull = untaught,
            RecordedFlights = flights ?? [],
            Recorded = flights?.FirstOrDefault(f => f.Number == asked) ?? (flights is { Count: > 0 } ? flights[^1] : null),
        };
    }
}
