using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;

namespace Scribeline.Engine.Questions;

/// <content>Where it comes down, flown many times over.</content>
public sealed partial class Study
{
    // Failures share the flights: a fifth each, but enough that none seen outside means fewer than one in a hundred.
    private const int LeastOfFailure = 300, MostOfFailure = LandingTally.MostEnds;

    private LandingCases? landingCases;

    internal ManyFlights? Many { get; init; }

    /// <summary>Number of flights asked for; 0 for none.</summary>
    public int Flights => Many?.Count ?? 0;

    /// <summary>The same study, asked for many flights.</summary>
    /// <param name="flights">How many; 0 for none.</param>
    /// <param name="told">Told the share done, 0 to 1, from any thread; may be null.</param>
    /// <param name="cancel">Ends the work with an <see cref="OperationCanceledException"/>.</param>
    public Study Flying(int flights, Action<double>? told = null, CancellationToken cancel = default) =>
        new(Rocket, motorOfDay, dayOrNull, Missing, cache, IsSample, Planned)
        {
            Drawn = Drawn,
            TestedBefore = TestedBefore,
            Confirmed = Confirmed,
            NoseFirst = NoseFirst,
            Many = Many is null ? null : Many with { Count = flights, Told = told, Cancel = cancel },
        };

    /// <summary>The landings of the flight as planned; only where flights are asked for.</summary>
    internal LandingTally Landings => cache.Get((Many!.Design, Flights, Many.Seed, "as planned"), _ => Tally(Cases.Of(this), Plan, Flights));

    /// <summary>The landings of each failure, in their order; only where flights are asked for.</summary>
    internal ValueList<(FailureOutcome Outcome, LandingTally Tally)> FailureLandings => cache.Get((Many!.Design, Flights, Many.Seed, "failures"), _ =>
    {
        var count = Math.Min(Flights, Math.Clamp(Flights / 5, LeastOfFailure, MostOfFailure));
        var kept = NewFailureCache();
        var planned = EnsembleInputs.LeavesClimb(Plan) ? Landings.Ends : null;
        return FailureOutcomes.Skip(1).Where(o => o.Computed).Select(o =>
        {
            var flown = Failing(o.Rocket, o.Failure.Of(Motor), kept, o.NoseFirst);
            return (o, Tally(Cases.Of(flown), flown.Plan, count, o.Failure.ChangesMotor ? null : planned));
        }).ToValueList();
    });

    /// <summary>Where the rail is best pointed; only where flights are asked for and there is a field.</summary>
    internal AimSearch BestAim => cache.Get((Many!.Design, Flights, Many.Seed, "aim"), _ =>
        new AimSearch(Cases.Of(this), new RailAim((Math.PI / 2) - Day.Rail.Elevation, Day.Rail.Azimuth), Limits["aim.tilt"].Value, Day.Field!, Flights, Many.Cancel));

    /// <summary>Shares and scatter of the landings with the rail pointing elsewhere.</summary>
    internal LandingTally LandingsAimed(RailAim aim) =>
        cache.Get((Many!.Design, Flights, Many.Seed, aim), k => Tally(Cases.Of(this).Aimed(k.aim), Plan, Flights));

    private LandingCases Cases => LazyInitializer.EnsureInitialized(ref landingCases, () =>
        cache.Get((Many!.Design, Many.Seed), k => new LandingCases(k.Design, k.Seed, this)));

    private LandingTally Tally(LandingFlights flights, RecoveryPlan plan, int count, EnsembleEnd[]? planned = null) =>
        new(flights.Fly(count, Many!.Told, Many.Cancel, planned), plan.Pieces.Select(p => p.Name).ToValueList(), Day.Field);
}
