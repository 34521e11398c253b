namespace Scribeline.Engine.Flight;

/// <summary>What holds at a moment of a flight.</summary>
public enum FlightPhase
{
    /// <summary>Motor alight, thrust still below what holds the rocket on the pad.</summary>
    Held,

    /// <summary>Both guides on the rail.</summary>
    OnRail,

    /// <summary>Only the aft guide on the rail: the rocket turns about it.</summary>
    Pivoting,

    /// <summary>Free, motor burning.</summary>
    Boost,

    /// <summary>Free and whole, motor burnt out: up, over and, where nothing opens, down.</summary>
    Coast,

    /// <summary>Whole and past apogee, its nose held into the air: see <see cref="FlightOptions.NoseFirst"/>.</summary>
    Dive,

    /// <summary>In pieces or under canopies.</summary>
    Descent,
}
