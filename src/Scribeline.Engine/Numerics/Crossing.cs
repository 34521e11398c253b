namespace Scribeline.Engine.Numerics;

/// <summary>The way an event's value must pass zero, followed in the direction of integration.</summary>
public enum Crossing
{
    /// <summary>From below to above, or the reverse.</summary>
    Either,

    /// <summary>From below zero to zero or above.</summary>
    Rising,

    /// <summary>From above zero to zero or below.</summary>
    Falling,
}
