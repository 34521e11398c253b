namespace Scribeline.Engine.Flight;

/// <summary>How finely to compute a flight, and where to stop.</summary>
/// <param name="RelativeTolerance">
/// Of each step, on every state. Turbulence has corners at every grid height: 1e-5 then gives landings to some centimetres, and 1e-8
/// costs ten times as much for nothing that could be measured.
/// </param>
/// <param name="Extent">Where the flight ends.</param>
/// <param name="Coriolis">Whether the Earth turns under the flight.</param>
/// <param name="MaximumSteps">Steps after which the flight is given up.</param>
public sealed record FlightOptions(
    double RelativeTolerance = 1e-8,
    FlightExtent Extent = FlightExtent.Landing,
    bool Coriolis = true,
    int MaximumSteps = 20_000)
{
    /// <summary>
    /// Whether a rocket that is still whole at apogee dives from there, its nose held into the air. Left to itself it may fall flat, which
    /// is gentler and cannot be relied on.
    /// </summary>
    public bool NoseFirst { get; init; }

    /// <summary>One flight, looked at closely: relative tolerance 1e-8.</summary>
    public static FlightOptions Nominal { get; } = new();

    /// <summary>One of many: relative tolerance 1e-4, which lands within a metre in turbulence, within centimetres without.</summary>
    public static FlightOptions OneOfMany { get; } = new(RelativeTolerance: 1e-4);
}

/// <summary>Where a flight ends.</summary>
public enum FlightExtent
{
    /// <summary>When every piece has come to the ground.</summary>
    Landing,

    /// <summary>At apogee.</summary>
    Apogee,

    /// <summary>When the last guide has left the rail.</summary>
    RailExit,
}
