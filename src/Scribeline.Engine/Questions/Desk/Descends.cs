using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>How fast does it come down? Descent rate under each stage, at height and at the ground.</summary>
public sealed class Descends() : Question("descends", "How fast does it come down?", Place.Desk)
{
    private const string Steady = "Knacke (1991) ch. 4";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(study.CanopyBasis);
        foreach (var missing in study.Rocket.RecoveryMissing) draft.Miss(missing);
        if (study.Rocket.RecoveryMissing.Count > 0) return draft.Done();
        if (study.Plan.Actions.All(a => a.Canopies.Count == 0))
        {
            draft.Miss("stowed: a canopy, and firing: what frees it");
            return draft.Done();
        }

        var n = 0;
        Bare(draft, study);
        foreach (var opening in study.Flight.Openings)
        {
            // The last steady moment of this stage: just before the next canopy of the same body, or its landing.
            var after = study.Flight.Openings.Where(o => o.LineStretch.Time > opening.LineStretch.Time).Select(o => o.LineStretch.Time);
            var landing = study.Flight.Landings.FirstOrDefault(l => l.Body == opening.Body);
            var end = after.Append(landing?.At.Time ?? study.Flight.End).Min();
            var start = Min(opening.LineStretch.Time + opening.FillTime + 3, end);
            n++;
            var lands = landing is not null && end == landing.At.Time;
            Stage(draft, study, opening, n, study.Flight.At(start, opening.Body), study.Flight.At(end, opening.Body), lands);
            if (lands) Last(draft, study, opening, landing!, n);
        }

        foreach (var landing in study.Flight.Landings)
        {
            draft.Find($"landing: {string.Join(" and ", landing.Pieces)}", landing.DescentRate, Unit.Speed, "descends.landing");
            if (study.Flight.Apogee is { } apogee) draft.Find($"time from apogee to landing: {string.Join(" and ", landing.Pieces)}", landing.At.Time - apogee.Time, Unit.Time);
        }

        foreach (var canopy in study.Rocket.Canopies) Coefficient(draft, canopy, ++n);
        draft.Note("What hangs below counts as drag at 0.6 of its broadside; large tubes can give half of that, which the fastest figures have. A canopy that hangs in the wake of another or of the rocket pulls less than alone.");
        return draft.Done();
    }

    private static void Stage(Draft draft, Study study, CanopyOpening opening, int n, FlightSample high, FlightSample low, bool lands)
    {
        var w = draft.Working;
        (string, string)[] names = [("m", $"m_{n}"), ("g", $"g_{n}"), ("rho", $"rho_{n}"), ("CdS", $"CdS_{n}"), ("b", $"b_{n}"), ("k", $"k_{n}")];
        var m = w.Given($"m_{n}", low.Mass, "kg", $"mass under {opening.Name}", "question weight");
        var g = w.Given($"g_{n}", study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)");
        var rho = w.Simulated($"rho_{n}", study.DensityAt(low), "kg/m³", $"air density {low.Height:F0} m above the pad", "U.S. Standard Atmosphere 1976 on the day given");
        var CdS = w.Given($"CdS_{n}", study.DragAreaAt(low), "m²", "drag area of what is open, and of what hangs below", "design, or the canopy table");
        w.StepOf($"v_{n}", Sqrt(2 * m * g / (rho * CdS)), "m/s", "steady descent rate by hand", Steady, names);
        w.Simulated($"f_{n}", -low.VerticalSpeed, "m/s", "descent rate there", "flown");
        draft.Find($"{opening.Name}: descent rate once open", -high.VerticalSpeed, Unit.Speed);
        if (lands) return;
        draft.Find($"{opening.Name}: descent rate before the next canopy", -low.VerticalSpeed, Unit.Speed, "descends.drogue-most");
        draft.Find($"{opening.Name}: the same, not too slow", -low.VerticalSpeed, Unit.Speed, "descends.drogue-least");
        var b = w.Given($"b_{n}", Min(study.Plan.Pieces.Sum(p => p.BodyDragArea), CdS), "m²", "of it, that of the pieces", "η Cn d L; Hoerner, Fluid-Dynamic Drag, 1965, from memory");
        var k = w.Given($"k_{n}", 1 - PieceDrag.LeastShare, "", "share of that which may be missing", "common practice");
        draft.Find($"{opening.Name}: the same at its fastest", w.StepOf($"u_{n}", Sqrt(2 * m * g / (rho * (CdS - (k * b)))), "m/s", "rate if the pieces give the least drag they may", Steady, names), Unit.Speed);
    }

    // The last canopy alone: a drogue above it hangs in its wake, and pieces below may give little.
    private static void Last(Draft draft, Study study, CanopyOpening opening, Landing landing, int n)
    {
        if (study.CanopyLoads.FirstOrDefault(l => l.Flown == opening) is not { } load) return;
        var w = draft.Working;
        (string, string)[] names = [("m", $"m_{n}"), ("g", $"g_{n}"), ("d", $"d_{n}"), ("S", $"S_{n}"), ("e", $"e_{n}"), ("h", $"h_{n}"), ("s", $"s_{n}"), ("f", $"f0_{n}"), ("c", $"c_{n}")];
        var (m, g) = (landing.At.Mass, study.Gravity);
        var d = w.Given($"d_{n}", study.DensityAtPad, "kg/m³", "air density at the pad", "the day given");
        var S = w.Given($"S_{n}", load.Canopy.DragArea, "m²", $"drag area of {opening.Name}", "design, or the canopy table");
        var e = w.StepOf($"e_{n}", Sqrt(2 * m * g / (d * S)), "m/s", $"rate at the ground under {opening.Name} alone", Steady, names);
        draft.Find($"landing under {opening.Name} alone", e, Unit.Speed, "descends.landing");
        var f = w.Simulated($"f0_{n}", load.Integrated.SpeedWhenFull, "m/s", "speed when it is full", "question opens");
        var h = w.Simulated($"h_{n}", load.Integrated.HeightWhenFull, "m", "height lost until it is full", "question opens");
        var s = f > 1.05 * e
            ? w.StepOf($"s_{n}", e * e / (2 * g) * Log(((f * f) - (e * e)) / ((Pow(1.05, 2) - 1) * e * e)), "m", "height lost until it has settled to a twentieth above that", "mechanics, drag at one density", names)
            : w.Given($"s_{n}", 0, "m", "height lost until it has settled: none, it is slow when full", "question opens");
        var c = w.Simulated($"c_{n}", opening.LineStretch.Height, "m", "height at which it opens", "flown");
        draft.Find($"{opening.Name}: height at which it opens over that it needs to settle", w.StepOf($"r_{n}", c / (h + s), "", "height over what it needs", "definition", names), Unit.Ratio, "descends.settles");
    }

    private static void Bare(Draft draft, Study study)
    {
        if (study.CanopyLoads is not [{ Bare: not null } first, ..]) return;
        draft.Find($"falling without a canopy before {first.Canopy.Name}", first.Speed, Unit.Speed, "descends.bare");
        draft.Note("Without a drogue the rate is that of tumbling pieces and cannot be known well: only a flight tells it.");
    }

    // A coefficient for the inflated mouth, told of all the cloth, halves the energy that is expected.
    private static void Coefficient(Draft draft, Canopy canopy, int n)
    {
        var w = draft.Working;
        (string, string)[] names = [("S", $"S_{n}"), ("D", $"D_{n}")];
        var S = w.Given($"S_{n}", canopy.DragArea, "m²", $"drag area of {canopy.Name}", "design, or the canopy table");
        var D = w.Given($"D_{n}", canopy.NominalDiameter, "m", "diameter of a disc of all its cloth", "design");
        var C = w.StepOf($"C_{n}", S / (PI / 4 * D * D), "", "drag coefficient on all of its cloth", "definition", names);
        draft.Find($"{canopy.Name}: drag coefficient on all of its cloth", C, Unit.Ratio, canopy.Basis == Basis.Estimated ? "descends.coefficient" : null);
    }
}
