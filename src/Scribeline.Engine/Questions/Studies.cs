using Scribeline.Engine.Design;
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
    public static Studies Of(RocketDesign design, ulong seed = 1, ResultCache? cache = null)
    {
        var built = AsBuilt.Of(design);
        var resolution = DesignResolver.Resolve(built.Design, Draws.Nominal);
        var kept = cache ?? new ResultCache();
        if (resolution.Rocket is { } rocket && built.Compared.Count > 0) resolution = resolution with { Rocket = rocket with { Compared = built.Compared } };
        var drawn = design.Records is { Weighed.Count: > 0 } or { Measured.Count: > 0 }
            ? new Lazy<Study?>(() => Of(DesignResolver.Resolve(AsBuilt.Drawn(design), Draws.Nominal), kept, isSample: false))
            : null;
        return new(built.Design, seed, Of(resolution, kept, isSample: false, drawn), resolution.Problems);
    }

    /// <summary>The study of case 0, 1, 2 ...: tolerances drawn, the wind gusting; null where the drawn values do not make a rocket.</summary>
    public Study? Case(int number)
    {
        var resolution = DesignResolver.Resolve(design, Draws.Case(seed, number), new RandomStream(seed + (ulong)number, "turbulence"), Nominal?.Rocket.Separation.Charges);
        return resolution.Problems.Count > 0 ? null : Of(resolution, new ResultCache(2), isSample: true);
    }

    private static Study? Of(Resolution resolution, ResultCache cache, bool isSample, Lazy<Study?>? drawn = null)
    {
        if (resolution.Rocket is not { } rocket) return null;
        var planned = !isSample && resolution.Day is { } day && day.Weather != default
            ? new Study(rocket, resolution.Motor, day.Planned, resolution.Missing, cache, isSample)
            : null;
        return new(rocket, resolution.Motor, resolution.Day, resolution.Missing, cache, isSample, planned) { Drawn = drawn };
    }
}
