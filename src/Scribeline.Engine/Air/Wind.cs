using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// Mean horizontal wind above the ground: <see cref="CalmWind"/>, <see cref="PowerLawWind"/>, <see cref="LogWind"/> or
/// <see cref="LayeredWind"/>. A closed set: each is value-equal and evaluated for one height or for lanes.
/// </summary>
public abstract record Wind
{
    private protected Wind()
    {
    }

    /// <summary>Mean wind at a height, m above ground.</summary>
    public WindVector<T> At<T>(T heightAboveGround)
        where T : struct, IReal<T> => this switch
        {
            LayeredWind layered => layered.Evaluate(heightAboveGround),
            PowerLawWind power => power.Evaluate(heightAboveGround),
            LogWind log => log.Evaluate(heightAboveGround),
            _ => new(T.From(0), T.From(0)),
        };
}

/// <summary>No wind at any height.</summary>
public sealed record CalmWind : Wind;
