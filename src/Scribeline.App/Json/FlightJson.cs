using Scribeline.Engine.Flight;

namespace Scribeline.App.Json;

/// <summary>The document of the fly command. docs/json.md describes it.</summary>
internal sealed record FlightJson(
    int Format,
    string Kind,
    string Design,
    string File,
    string? Failure,
    IReadOnlyList<EventJson> Events,
    MaximaJson Maxima,
    IReadOnlyList<LandingJson> Landings)
{
    /// <summary>The document for a flight.</summary>
    public static FlightJson Of(string design, string file, FlightResult flight) => new(
        JsonText.Format,
        "flight",
        design,
        file,
        flight.Failure == FlightFailure.None ? null : flight.Failure.ToString(),
        [.. flight.Events.Select(e => new EventJson(e.Name, string.Join(" + ", flight.Bodies[e.Body].Pieces), e.Time, e.At.Height, e.At.Speed))],
        MaximaJson.Of(flight.Maxima),
        [.. flight.Landings.Select(l => new LandingJson([.. l.Pieces], l.At.Time, l.East, l.North, l.DescentRate, l.Speed, l.Mass))]);
}

/// <summary>An event: s, m above the pad, m/s over the ground.</summary>
internal sealed record EventJson(string Name, string Body, double Time, double Height, double Speed);

/// <summary>Greatest values.</summary>
internal sealed record MaximaJson(
    MaximumJson Speed, MaximumJson Mach, MaximumJson DynamicPressure, MaximumJson Acceleration, MaximumJson AngleOfAttack, MaximumJson Thrust, MaximumJson RollRate)
{
    /// <summary>The part of the document for the greatest values.</summary>
    public static MaximaJson Of(FlightMaxima m) =>
        new(One(m.Speed), One(m.Mach), One(m.DynamicPressure), One(m.Acceleration), One(m.AngleOfAttack), One(m.Thrust), One(m.RollRate));

    private static MaximumJson One(FlightMaximum maximum) => new(maximum.Value, maximum.Time, maximum.Height);
}

/// <summary>A greatest value, SI, with its time and height.</summary>
internal sealed record MaximumJson(double Value, double Time, double Height);

/// <summary>A landing: s, m from the foot of the rail, m/s, kg.</summary>
internal sealed record LandingJson(IReadOnlyList<string> Pieces, double Time, double East, double North, double DescentRate, double Speed, double Mass);
