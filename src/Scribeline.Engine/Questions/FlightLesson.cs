using Scribeline.Engine.Evidence;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>What one recorded flight says by itself, against the design as it was before any flight taught anything.</summary>
/// <param name="Climb">Of drag, impulse and the ports; null where the climb could not be fitted.</param>
/// <param name="Canopies">Of each canopy whose descent was steady and alone.</param>
/// <param name="Motor">Name of its motor.</param>
/// <param name="Notes">What it does not say, and why.</param>
public sealed record FlightLesson(AscentFit? Climb, ValueList<CanopyLesson> Canopies, string Motor, ValueList<string> Notes)
{
    // The air of a day is known to this; common practice.
    private const double TemperatureSigma = 1.5, PressureSigma = 120, MassShare = 0.005;

    /// <summary>Learns.</summary>
    /// <param name="flown">The flight.</param>
    /// <param name="reading">Its record; it reaches apogee.</param>
    /// <param name="study">The design as it flew, untaught.</param>
    public static FlightLesson Of(FlownFlight flown, FlightReading reading, Study study)
    {
        List<string> notes = [];
        AscentFit? climb = null;
        if (reading.Burnout is not null && study.Flight.Inputs is { } inputs)
        {
            climb = AscentFit.Of(reading, inputs, study.Aero, new(new(study.Rocket.PortLag ?? 0, 0.1), flown.LeanSigma));
            if (!climb.Converged)
            {
                notes.Add("The climb could not be fitted: drag and thrust stay as they are.");
                climb = null;
            }
        }

        var canopies = study.Flight.Landings.Count == 1 ? Under(flown, reading, study, notes) : [];
        if (study.Flight.Landings.Count > 1) notes.Add("It comes down in several pieces; which one the altimeter rides in is not known, so canopies stay as they are.");
        return new(climb, canopies, study.Motor.Name, notes.ToValueList());
    }

    // What hangs besides counts as predicted; what an earlier canopy gives counts as this flight just showed.
    private static ValueList<CanopyLesson> Under(FlownFlight flown, FlightReading reading, Study study, List<string> notes)
    {
        List<CanopyLesson> learnt = [];
        DescentPath path = new(study.Flight);
        var early = CanopiesOf(study, a => a.Trigger is not DescendingThrough);
        var late = CanopiesOf(study, a => a.Trigger is DescendingThrough).Except(early).ToArray();
        foreach (var seen in reading.Descents)
        {
            var meant = seen.Main && (early.Length == 0 || late.Length > 0) ? late : early;
            if (meant.Length != 1 || path.Descending(seen.Fit.Height) is not { } predicted)
            {
                notes.Add(meant.Length == 0 ? "A descent in the record belongs to no canopy of the design." : $"Several canopies open together ({string.Join(", ", meant)}): what each gives cannot be told apart.");
                continue;
            }

            var canopy = study.Rocket.Canopies.First(c => c.Name == meant[0]);
            var air = study.Air.At<Scalar>(study.Air.Elevation + seen.Fit.Height);
            DragAreaEstimate all = new(
                new(predicted.Mass, MassShare * predicted.Mass), new(air.Temperature, TemperatureSigma), new(air.Pressure, PressureSigma),
                new(seen.Fit.Rate, Math.Max(seen.Fit.Uncertainty, 0.01)), Math.Max(1, seen.Fit.Blocks.Count - 1));

            // Open canopies are counted at the prediction's own height; if it is not yet under this one there, it says nothing.
            var whole = study.DragAreaAt(predicted);
            var besides = whole - canopy.DragArea;
            if (besides < -0.02 * canopy.DragArea)
            {
                notes.Add($"{canopy.Name}: at {seen.Fit.Height:F0} m the prediction is under another canopy, so this descent says nothing of it.");
                continue;
            }

            if (seen.Main && learnt.FirstOrDefault(l => early.Contains(l.Name)) is { } drogue) besides += drogue.Area.Value - study.Rocket.Canopies.First(c => c.Name == drogue.Name).DragArea;
            learnt.Add(new(canopy.Name, canopy.DragArea, flown.CanopySigma(canopy.Name) * canopy.DragArea, new(all.Corrected.Value - besides, all.Corrected.Sigma), all, besides, seen));
        }

        return learnt.ToValueList();
    }

    private static string[] CanopiesOf(Study study, Func<RecoveryAction, bool> which) =>
        [.. study.Plan.Actions.Where(which).SelectMany(a => a.Canopies).Select(c => c.Name).Distinct()];
}

/// <summary>What a flight says of a canopy.</summary>
/// <param name="Name">Of the canopy.</param>
/// <param name="Planned">Its drag area before any flight, m².</param>
/// <param name="PlannedSigma">Standard uncertainty of that, m².</param>
/// <param name="Area">Its drag area by this flight alone, m².</param>
/// <param name="Everything">Drag area of all that fell.</param>
/// <param name="Besides">Of what fell besides the canopy, m².</param>
/// <param name="Seen">The descent.</param>
public sealed record CanopyLesson(string Name, double Planned, double PlannedSigma, Estimate Area, DragAreaEstimate Everything, double Besides, SteadyDescentSeen Seen);
