using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Range;

/// <summary>The field on which everything must come down, and what on it or beside it must not be hit.</summary>
/// <param name="Boundary">The field.</param>
/// <param name="Kept">Areas to keep clear of.</param>
public sealed record LandingField(LandingArea Boundary, ValueList<KeptArea> Kept)
{
    /// <summary>Whether something that comes down here is off the field.</summary>
    public bool IsOutside(LandingPoint point) => !Boundary.Contains(point);
}

/// <summary>An area nothing may come down on.</summary>
/// <param name="Name">As typed.</param>
/// <param name="People">Whether people are expected there.</param>
/// <param name="Area">Where.</param>
public sealed record KeptArea(string Name, bool People, LandingArea Area);
