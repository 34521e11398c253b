using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Does a disturbance die out? Pitch frequency and damping over the climb, and the roll rate against it.</summary>
public sealed class Settles() : Question("settles", "Does a disturbance die out?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(Basis.Estimated);
        var ascent = study.FreeAscent;
        if (ascent.Count == 0)
        {
            draft.Find("least damping ratio", double.NaN, Unit.Ratio, "settles.damping-least");
            draft.Note("It does not leave the rail.");
            return draft.Done();
        }

        // Where it is unstable there is no oscillation, and no damping: a disturbance grows.
        if (ascent.FirstOrDefault(s => double.IsNaN(s.PitchDamping)) is { } unstable)
        {
            draft.Find("least damping ratio", 0, Unit.Ratio, "settles.damping-least");
            draft.Note($"It is unstable {unstable.Time:F2} s after ignition: a disturbance grows.");
            return draft.Done();
        }

        var worst = ascent.MinBy(s => s.PitchDamping)!;
        ByHand(draft.Working, study, worst);
        var w = draft.Working;
        var Z = w.Simulated("Z", worst.PitchDamping, "", "damping ratio then, jet damping included", "linearised equations of the flight");
        var A = w.Step("A", Exp(-2 * PI * Z / Sqrt(1 - (Z * Z))), "", "what is left of a swing after one more", "damped oscillator");
        draft.Find("least damping ratio", worst.PitchDamping, Unit.Ratio, "settles.damping-least");
        draft.Find("greatest damping ratio", ascent.Max(s => s.PitchDamping), Unit.Ratio, "settles.damping-most");
        draft.Find("what is left of a swing after one more", A, Unit.Share);
        draft.Find("pitch frequency then", worst.PitchFrequency / (2 * PI), Unit.Frequency);
        Roll(draft, study, ascent);
        draft.Draw(() => FlightPlots.Free("Pitch oscillation on the way up", "pitch frequency", Unit.Frequency, study, s => s.PitchFrequency / (2 * PI)));
        draft.Draw(() => FlightPlots.Free("Damping on the way up", "damping ratio", Unit.Ratio, study, s => s.PitchDamping));
        return draft.Done();
    }

    private static void ByHand(Working w, Study study, FlightSample s)
    {
        var aero = study.SlopeAt(s);
        var q = w.Simulated("q", s.DynamicPressure, "Pa", $"dynamic pressure {s.Time:F2} s after ignition, when damping is least", "flown");
        var V = w.Simulated("V", s.Airspeed, "m/s", "airspeed then", "flown");
        var d = w.Given("d", study.Shape.ReferenceDiameter, "m", "reference diameter", "design");
        var A_r = w.Step("A_r", PI * d * d / 4, "m²", "reference area", "definition");
        var S_0 = w.Simulated("S_0", aero.Sum0, "1/rad", "slope of the normal force", "aerodynamic table at that Mach number, no incidence");
        var S_1 = w.Simulated("S_1", aero.Sum1, "m/rad", "slopes times stations, summed", "aerodynamic table");
        var S_2 = w.Simulated("S_2", aero.Sum2, "m²/rad", "slopes times stations squared, summed", "aerodynamic table");
        var x = w.Simulated("x", s.CentreOfMass, "m", "balance aft of the tip", "question weight");
        var I = w.Simulated("I", study.LateralInertiaAt(s), "kg·m²", "lateral moment of inertia", "question weight");
        var C_1 = w.Step("C_1", q * A_r * (S_1 - (x * S_0)), "N·m/rad", "corrective moment slope", "Mandell, Caporaso & Bengen (1973), from memory");
        var C_2 = w.Step("C_2", q / V * A_r * (S_2 - (2 * x * S_1) + (x * x * S_0)), "N·m·s", "aerodynamic damping", "Mandell, Caporaso & Bengen (1973), from memory");
        w.Step("w_n", Sqrt(C_1 / I), "rad/s", "natural frequency in pitch", "oscillator");
        w.Step("z_a", C_2 / (2 * Sqrt(C_1 * I)), "", "damping ratio by hand, without jet damping", "oscillator");
    }

    // With no cant the roll rate is nil but for the small asymmetries nobody can predict: nothing is judged then.
    private static void Roll(Draft draft, Study study, IReadOnlyList<FlightSample> ascent)
    {
        if (study.Shape.Fins.All(f => f.Cant == 0))
        {
            draft.Note("The fins are not canted. Real fins are never quite straight: expect a slow roll and film it.");
            return;
        }

        var ratios = ascent.Where(s => s.PitchFrequency > 0).Select(s => (s.Time, Ratio: Abs(s.RollRate) / s.PitchFrequency)).ToArray();
        var last = ratios[^1].Ratio;
        draft.Find("roll rate over pitch frequency, greatest", ratios.Max(r => r.Ratio), Unit.Ratio);
        var low = study.Limits["settles.roll-ratio-low"];
        var high = study.Limits["settles.roll-ratio-high"];
        var inside = ratios.Where(r => r.Ratio > low.Value && r.Ratio < high.Value).ToArray();
        draft.Find("roll rate over pitch frequency, at the end of the climb", last, Unit.Ratio, last < 1 ? low : high);
        if (inside.Length > 0) draft.Note($"Between {low.Value} and {high.Value} times the pitch frequency from {inside[0].Time:F1} s to {inside[^1].Time:F1} s: roll may lock in and the coning grow.");
    }
}
