using Scribeline.Engine.Flight;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>How fast does it come down? Descent rate under each stage, at height and at the ground.</summary>
public sealed class Descends() : Question("descends", "How fast does it come down?", Place.Desk)
{
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
        foreach (var opening in study.Flight.Openings)
        {
            // The last steady moment of this stage: just before the next canopy of the same body, or its landing.
            var after = study.Flight.Openings.Where(o => o.LineStretch.Time > opening.LineStretch.Time).Select(o => o.LineStretch.Time);
            var landing = study.Flight.Landings.FirstOrDefault(l => l.Body == opening.Body);
            var end = after.Append(landing?.At.Time ?? study.Flight.End).Min();
            var start = Min(opening.LineStretch.Time + opening.FillTime + 3, end);
            n++;
            Stage(draft, study, opening, n, study.Flight.At(start, opening.Body), study.Flight.At(end, opening.Body), landing is not null && end == landing.At.Time);
        }

        foreach (var landing in study.Flight.Landings)
        {
            draft.Find($"landing: {string.Join(" and ", landing.Pieces)}", landing.DescentRate, Unit.Speed, "descends.landing");
        }

        return draft.Done();
    }

    private static void Stage(Draft draft, Study study, CanopyOpening opening, int n, FlightSample high, FlightSample low, bool lands)
    {
        var w = draft.Working;
        var m = w.Given($"m_{n}", low.Mass, "kg", $"mass under {opening.Name}", "question weight");
        var g = w.Given($"g_{n}", study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)");
        var rho = w.Simulated($"rho_{n}", study.DensityAt(low), "kg/m³", $"air density {low.Height:F0} m above the pad", "U.S. Standard Atmosphere 1976 on the day given");
        var CdS = w.Given($"CdS_{n}", study.DragAreaAt(low), "m²", "drag area of what is open, and of what hangs below", "design, or the canopy table");
        w.StepOf($"v_{n}", Sqrt(2 * m * g / (rho * CdS)), "m/s", "steady descent rate by hand", "Knacke (1992) ch. 4", [("m", $"m_{n}"), ("g", $"g_{n}"), ("rho", $"rho_{n}"), ("CdS", $"CdS_{n}")]);
        w.Simulated($"f_{n}", -low.VerticalSpeed, "m/s", "descent rate there", "flown");
        draft.Find($"{opening.Name}: descent rate once open", -high.VerticalSpeed, Unit.Speed);
        if (!lands)
        {
            draft.Find($"{opening.Name}: descent rate before the next canopy", -low.VerticalSpeed, Unit.Speed, "descends.drogue-most");
            draft.Find($"{opening.Name}: the same, not too slow", -low.VerticalSpeed, Unit.Speed, "descends.drogue-least");
        }
    }
}
