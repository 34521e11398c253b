using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions;

/// <summary>
/// Flies a rocket in which something fails, with all that follows: a charge that does not part its joint, a cord or canopy that breaks, a
/// joint that is jerked open. What follows first is put into the rocket and the rocket is flown again, until nothing more follows.
/// </summary>
internal sealed class FailureFlight
{
    // Time after apogee in which a nose comes down, s, and incidence beyond which it has not, rad: assumptions.
    private const double Settling = 3, MostIncidence = 0.5;

    private readonly Study planned;
    private readonly Failure failure;
    private readonly ResultCache kept;
    private readonly Motor motor;
    private readonly List<FailureEvent> followed = [];
    private readonly SortedSet<string> missing = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Name, string Limit), double> least = [];
    private readonly List<ChargeLoad> opening = [];
    private readonly HashSet<string> inVain = [];
    private readonly Dictionary<int, (double Time, ChargeLoad Load, Ejection Left)> shut = [];
    private Study study;
    private bool noseFirst;

    public FailureFlight(Study planned, Failure failure, ResultCache kept)
    {
        (this.planned, this.failure, this.kept, motor) = (planned, failure, kept, failure.Of(planned.Motor));
        study = Flown(FailedRocket.Of(planned.Rocket, failure, planned.PinTemperature));
        while (Next() is { } next)
        {
            followed.Add(next.Event);
            study = Flown(next.Rocket);
        }

        Outcome = Told();
    }

    public FailureOutcome Outcome { get; }

    private Study Flown(Rocket rocket) => planned.Failing(rocket, motor, kept, noseFirst);

    /// <summary>The first thing that follows and is not in the rocket yet; null where the flight is as it would be.</summary>
    private (FailureEvent Event, Rocket Rocket)? Next()
    {
        var rocket = study.Rocket;
        if (Flat() is { } flat) return flat;
        HashSet<int> opened = [];

        // What was found before the first thing that follows stays true of the next flight.
        opening.Clear();
        foreach (var e in study.Flight.Events)
        {
            if (e.Kind == FlightEventKind.Charge && rocket.Firings.FirstOrDefault(f => f.Name == e.Name) is { } firing && opened.Add(firing.Joint))
            {
                if (Parts(firing, e, opened) is { } next) return next;
            }
            else if (e.Kind == FlightEventKind.LineStretch
                && study.Flight.Openings.FirstOrDefault(o => o.LineStretch.Time == e.Time && e.Name == $"{o.Name}: line stretch") is { } canopy
                && Opens(canopy, opened) is { } next)
            {
                return next;
            }
        }

        var silent = rocket.Firings.FirstOrDefault(f => !opened.Contains(f.Joint));
        if (silent is null || study.Flight.Failure != FlightFailure.None) return null;
        return (At(study.Flight.Landings.MaxBy(l => l.At.Time)?.At, $"{silent.Name} has not fired before the ground"), Without(rocket, silent));
    }

    // A rocket left whole after apogee may settle crosswise to the air in this model, and fall a fifth as fast as in a dive. Nothing holds it
    // there in truth, so it is flown nose first.
    private (FailureEvent Event, Rocket Rocket)? Flat()
    {
        var whole = study.Flight.Bodies[0];
        if (noseFirst || study.Flight.Apogee is not { } apogee || whole.End < apogee.Time + Settling) return null;
        var last = study.Flight.At(whole.End);
        if (last.AngleOfAttack < MostIncidence) return null;
        noseFirst = true;
        return (At(apogee, "may fall flat from here; flown nose first, which is harder"), study.Rocket);
    }

    /// <summary>What follows from a firing: its joint stays shut, its cord breaks, or the jerk opens another joint.</summary>
    private (FailureEvent Event, Rocket Rocket)? Parts(Firing firing, FlightEvent e, HashSet<int> opened)
    {
        var rocket = study.Rocket;
        if (rocket.Separation.Charges.FirstOrDefault(c => c.Name == firing.Charge) is not { } load || Burnt(firing, load, e.Time) is not { } ejection) return null;
        if (!ejection.Parted)
        {
            inVain.Add(load.Name);
            shut[firing.Joint] = (e.Time, load, ejection);
            return (At(e.At, $"{load.Name} burns, {Label(firing.Joint)} stays shut", ejection.PeakGauge * ejection.Inputs.Area), Without(rocket, firing));
        }

        opening.Add(load);
        if (rocket.Separation.Harnesses.FirstOrDefault(h => h.Spans(firing.Joint)) is not { } harness || !firing.Tethered) return null;
        if (harness.Stretching is not { } cord)
        {
            missing.Add($"{harness.At}.{(harness.Strength is null ? "strength" : "stretch")}: of {harness.Name}, by the certificate of its lot");
            return null;
        }

        var snap = new SnapOut(ejection.SeparationSpeed, ejection.Inputs.ForwardMass, ejection.Inputs.AftMass, cord);
        if (Breaks($"{harness.Name} breaks", planned.StrengthOf(harness), snap.Tension)) return (At(e.At, $"{harness.Name} breaks as it runs out after {load.Name}", snap.Tension), Apart(rocket, firing.Joint));
        return Jerked(harness, firing.Joint, opened, snap.Tension, body: null, e.At, $"as {harness.Name} runs out after {load.Name}");
    }

    // What an earlier charge left in the same bay is still there. A charge of another bay burns alone.
    private Ejection? Burnt(Firing firing, ChargeLoad load, double time) =>
        shut.TryGetValue(firing.Joint, out var before) && time > before.Time && before.Load.Forward == load.Forward && before.Load.Aft == load.Aft
            ? study.Burn(load, before.Left, time - before.Time)
            : study.Burn(load);

    /// <summary>What follows from a canopy that opens: it is torn away, or it pulls another joint open.</summary>
    private (FailureEvent Event, Rocket Rocket)? Opens(CanopyOpening canopy, HashSet<int> opened)
    {
        var rocket = study.Rocket;
        if (rocket.Firings.FirstOrDefault(f => opened.Contains(f.Joint) && f.Canopies.Any(c => c.Name == canopy.Name)) is not { } firing) return null;
        var force = canopy.PeakForce.Value;
        if (Breaks($"{canopy.Name} tears", planned.StrengthOf(canopy.Name), force)) return (At(canopy.LineStretch, $"{canopy.Name} opens and tears; it is taken as lost", force), Lost(rocket, canopy.Name));
        if ((study.HangingOf(canopy.Name) is { } hanging ? rocket.Separation.Harnesses[hanging.Cord] : rocket.Separation.Harnesses.FirstOrDefault(h => h.Spans(firing.Joint))) is not { } harness) return null;
        var pull = force * HeavierShare(firing.Joint);
        if (Breaks($"{harness.Name} breaks", planned.StrengthOf(harness), pull)) return (At(canopy.LineStretch, $"{canopy.Name} opens and breaks {harness.Name}; it is taken as lost", pull), Lost(rocket, canopy.Name));
        return Jerked(harness, firing.Joint, opened, force, study.Flight.Bodies[canopy.Body].Mass, canopy.LineStretch, $"as {canopy.Name} opens");
    }

    /// <summary>A pull on a cord, and the first joint still shut that it opens: against what holds it as expected, for that is what is flown.</summary>
    private (FailureEvent Event, Rocket Rocket)? Jerked(Harness harness, int joint, HashSet<int> opened, double pull, double? body, FlightSample at, string when)
    {
        var pieces = study.Vehicle.PiecesAfter(opened);
        foreach (var (other, piece, beyond) in study.PulledBy(harness, joint, pieces.First(p => p.Last == joint), pieces.First(p => p.First == joint + 1)))
        {
            var force = SnapOut.AtSection(pull, beyond, body ?? study.PieceProperties(piece).Mass);
            var held = study.Rocket.Separation.Of(other)!;
            Least($"{Label(other)} may be jerked open", "holds-through-drogue.ratio", held.Weakest(study.PinTemperature) / force);
            if (force <= held.Nominal(study.PinTemperature)) continue;

            var liftOff = study.Flight.Events.First(e => e.Kind == FlightEventKind.LiftOff).Time;
            var early = new Firing($"{Label(other)} is jerked open", new AfterLiftOff(at.Time - liftOff), other, study.Rocket.Separation.Harnesses.Any(h => h.Spans(other)), Freed(other));
            return (At(at, $"{Label(other)} is jerked open {when}", force), study.Rocket with { Firings = [early, .. study.Rocket.Firings] });
        }

        return null;
    }

    private bool Breaks(string what, double strength, double load)
    {
        if (load <= strength) return false;
        Least(what, "load-path.factor", strength / load);
        return true;
    }

    // Of a canopy's pull the cord carries on each side what slows the mass there.
    private double HeavierShare(int joint)
    {
        var behind = study.PieceProperties(new Piece(joint + 1, study.Vehicle.Whole.Last)).Mass;
        var whole = study.PieceProperties(study.Vehicle.Whole).Mass;
        return Math.Max(behind, whole - behind) / whole;
    }

    private void Least(string name, string limit, double ratio) => least[(name, limit)] = Math.Min(least.GetValueOrDefault((name, limit), double.PositiveInfinity), ratio);

    // What lies in the bay comes out whether or not its own charge ever burns.
    private ValueList<Resolving.FreedCanopy> Freed(int joint) =>
        (planned.Rocket.Firings.FirstOrDefault(f => f.Joint == joint)?.Canopies ?? []).Where(c => !failure.Unopened.Contains(c.Name)).ToValueList();

    private FailureOutcome Told()
    {
        var flight = study.Flight;
        var pieces = flight.Landings.OrderBy(l => l.Body).SelectMany(Pieces).ToValueList();
        var openings = flight.Openings.Select(o => At(o.LineStretch, $"{o.Name} opens", o.PeakForce.Value));

        // With only the charges that open something, so that what else is asked is asked of them.
        var pruned = Flown(study.Rocket with { Separation = study.Rocket.Separation with { Charges = opening.ToValueList() } });
        var path = pruned.LoadPathOf(pruned.Flight);
        missing.UnionWith(path.Select(e => e.Missing).Where(m => m.Length > 0));
        if (path.Where(e => e.Factor is not null).MinBy(e => e.Factor) is { } weakest) Least($"weakest link: {weakest.Name}", "load-path.factor", weakest.Factor!.Value);
        return new(
            failure, pieces, followed.Concat(openings).OrderBy(e => e.Time).ToValueList(), FailureLimits.Of(pruned, pieces, failure, least).ToValueList(),
            Unburnt().ToValueList(), missing.ToValueList(), flight.Failure == FlightFailure.None && pieces.Count > 0)
        {
            Followed = followed.OrderBy(e => e.Time).ToValueList(),
            Flown = flight.Events,
            Rocket = study.Rocket,
            NoseFirst = noseFirst,
        };
    }

    // Whatever still is to fire when a joint has opened burns too: nothing that would not is left among the firings.
    private IEnumerable<string> Unburnt()
    {
        var burnt = study.Rocket.Firings.Select(f => f.Charge).OfType<string>().Concat(inVain).ToHashSet();
        if (burnt.Contains(string.Join(" and ", failure.Together))) burnt.UnionWith(failure.Together);
        return planned.Rocket.Separation.Charges.Select(c => c.Name).Where(c => !burnt.Contains(c));
    }

    private IEnumerable<FailedPiece> Pieces(Landing landing) => landing.Pieces.Count == 0
        ? [new(study.Vehicle.NameOf(study.Vehicle.Whole), landing.Mass, landing)]
        : landing.Pieces.Select(p => new FailedPiece(p, study.PieceMass(p), landing));

    private string Label(int joint) => $"{study.Vehicle.Parts[joint].Name} to {study.Vehicle.Parts[joint + 1].Name}";

    private static Rocket Without(Rocket rocket, Firing firing) => rocket with { Firings = rocket.Firings.Where(f => f != firing).ToValueList() };

    private static Rocket Lost(Rocket rocket, string canopy) => rocket with
    {
        Firings = rocket.Firings.Select(f => f with { Canopies = f.Canopies.Where(c => c.Name != canopy).ToValueList() }).ToValueList(),
    };

    private static Rocket Apart(Rocket rocket, int joint) => rocket with
    {
        Firings = rocket.Firings.Select(f => f.Joint == joint ? f with { Tethered = false } : f).ToValueList(),
    };

    private static FailureEvent At(FlightSample? at, string what, double? force = null) => new(at?.Time ?? double.NaN, Math.Max(at?.Height ?? 0, 0), at?.Airspeed ?? double.NaN, what, force);
}
