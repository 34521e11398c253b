using Scribeline.Engine.Flight;

namespace Scribeline.Engine.Questions;

/// <summary>Cases of one rocket on one day that can be flown in any number.</summary>
/// <param name="cases">Where they are drawn.</param>
/// <param name="flown">Without perturbation.</param>
/// <param name="figures">Its numbers.</param>
/// <param name="responses">How they move.</param>
/// <param name="aim">Where the rail points instead; null for as it is set.</param>
internal sealed class LandingFlights(LandingCases cases, Study flown, RocketFigures figures, Response[] responses, RailAim? aim)
{
    private readonly FlightInputs inputs = flown.ManyInputs;
    private readonly double top = (1.3 * (flown.Flight.Apogee?.Height ?? 0)) + 200;

    /// <summary>One case; null where the drawn values make no day.</summary>
    public EnsembleCase? Case(int number)
    {
        if (cases.Day(number, top) is not { } day) return null;
        var rail = Aimed(day.Rail);
        var drawn = figures.With(responses, at => cases.Drawn(number, at)).Case(inputs);
        return drawn with { Air = day.Air, Wind = day.Wind, Rail = drawn.Rail with { Length = rail.Length, Elevation = rail.Elevation, Azimuth = rail.Azimuth, Friction = rail.Friction } };
    }

    /// <summary>Flies them.</summary>
    /// <param name="count">How many.</param>
    /// <param name="progress">Told the share done; may be null.</param>
    /// <param name="cancel">Ends the work.</param>
    /// <param name="planned">The same cases as planned, where nothing differs before apogee: they are gone on from there; null to fly the climb.</param>
    public EnsembleEnd[] Fly(int count, Action<double>? progress, CancellationToken cancel, EnsembleEnd[]? planned = null) =>
        new EnsembleInputs(inputs, flown.Aero, top) { From = planned is not null && EnsembleInputs.LeavesClimb(inputs.Recovery) ? i => planned[i].Apex : null }
            .Fly(count, Case, progress, cancel: cancel);

    /// <summary>The same cases with the rail pointing elsewhere.</summary>
    public LandingFlights Aimed(RailAim elsewhere) => new(cases, flown, figures, responses, elsewhere);

    // How far a case's rail is off stays as drawn, wherever the rail is meant to point.
    private Resolving.RailOfDay Aimed(Resolving.RailOfDay drawn)
    {
        if (aim is not { } at) return drawn;
        var set = cases.Nominal.Day.Rail;
        var tilt = at.Tilt + (set.Elevation - drawn.Elevation);
        var azimuth = at.Azimuth + (drawn.Azimuth - set.Azimuth);
        return drawn with { Elevation = (Math.PI / 2) - Math.Abs(tilt), Azimuth = tilt < 0 ? azimuth + Math.PI : azimuth };
    }
}
