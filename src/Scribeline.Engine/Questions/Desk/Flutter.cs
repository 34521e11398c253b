using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Will the fins stay on? Least ratio of flutter speed to airspeed along the climb, and the bending stress at the root.</summary>
public sealed class Flutter() : Question("flutter", "Will the fins stay on?", Place.Desk)
{
    private const string Martin = "D. J. Martin, NACA TN 4197, 1958 (from memory; constant recomputed)";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var samples = study.FreeAscent;
        foreach (var (fins, i) in study.Shape.Fins.Select((f, i) => (f, i)))
        {
            var n = study.Shape.Fins.Count > 1 ? $"_{i + 1}" : "";
            if (double.IsNaN(fins.ShearModulus)) draft.Miss($"materials: shear modulus of the material of {fins.Name}");
            else if (samples.Count > 0) Ratio(draft, study, fins, n, samples);
            if (samples.Count > 0) RootStress(draft, study, fins, n, samples);
        }

        if (study.Shape.Fins.Count == 0) draft.Miss("parts: fins");
        if (samples.Count == 0) draft.Find("flutter speed over airspeed, least", double.NaN, Unit.Ratio, "flutter.ratio");
        draft.Note("A screening value for a solid fin on a rigid root. Sandwich and composite fins: measure their stiffness in torsion.");
        return draft.Done();
    }

    private static void Ratio(Draft draft, Study study, FinSet fins, string n, ValueList<FlightSample> samples)
    {
        var plan = FinPlanform.Of(fins.Outline);
        double Speed(FlightSample sample) => FinFlutter.Speed(fins.ShearModulus, fins.Thickness, plan, Max((2 * plan.Area / plan.Span) - plan.RootChord, 0), AirAt(study, sample).Pressure, AirAt(study, sample).SoundSpeed);
        var worst = samples.MinBy(x => Speed(x) / x.Airspeed)!;
        var air = AirAt(study, worst);
        var w = draft.Working;
        var s = w.Given("s" + n, plan.Span, "m", $"span of {fins.Name}, root to tip", "design");
        var S = w.Given("S" + n, plan.Area, "m²", "area of one fin", "design");
        var c = w.Given("c" + n, plan.RootChord, "m", "root chord", "design");
        var t = w.Given("t" + n, fins.Thickness, "m", "thickness", "design");
        var G = w.Given("G" + n, fins.ShearModulus, "Pa", "shear modulus", "material table, or the design");
        var a = w.Simulated("a" + n, air.SoundSpeed, "m/s", $"speed of sound {worst.Height:F0} m above the pad, where the ratio is least", "air of the day");
        var p = w.Simulated("p" + n, air.Pressure, "Pa", "pressure there", "air of the day");
        var V = w.Simulated("V" + n, worst.Airspeed, "m/s", $"airspeed there, {worst.Time:F2} s after ignition", "flown");
        (string, string)[] names = [("s", "s" + n), ("S", "S" + n), ("c", "c" + n), ("t", "t" + n), ("G", "G" + n), ("a", "a" + n), ("p", "p" + n), ("V", "V" + n), ("A", "A" + n), ("k", "k" + n), ("Vf", "Vf" + n)];
        var A = w.StepOf("A" + n, s * s / S, "", "aspect ratio of one fin", Martin, names);
        var k = w.StepOf("k" + n, Max((2 * S / (c * s)) - 1, 0), "", "taper: tip chord over root chord of the trapezoid of the same root, span and area", Martin, names);
        var Vf = w.StepOf("Vf" + n, a * Sqrt(G * (A + 2) * Pow(t / c, 3) / (12 * 0.25 * 1.4 / PI * p * Pow(A, 3) * (k + 1))), "m/s", "flutter speed", Martin, names);
        var r = w.StepOf("r" + n, Vf / V, "", "flutter speed over airspeed", "definition", names);
        draft.Find($"{fins.Name}: flutter speed over airspeed, least", r, Unit.Ratio, "flutter.ratio");
        draft.Find($"{fins.Name}: flutter speed there", Vf, Unit.Speed);
        draft.Draw(() => new Plot(
            $"{fins.Name}: flutter speed and airspeed",
            new Axis("time", Unit.Time),
            new Axis("speed", Unit.Speed),
            [FlightPlots.Line("flutter speed", samples, Speed), FlightPlots.Line("airspeed", samples, x => x.Airspeed)],
            FlightPlots.Marks(study)));
    }

    private static AirState<Scalar> AirAt(Study study, FlightSample sample) => study.Air.At<Scalar>(study.Air.Elevation + sample.Height);

    // The side force of one fin at the worst product of dynamic pressure and incidence flown, carried as bending by the root section.
    private static void RootStress(Draft draft, Study study, FinSet fins, string n, ValueList<FlightSample> samples)
    {
        var worst = samples.MaxBy(x => x.DynamicPressure * Abs(x.AngleOfAttack))!;
        var plan = FinPlanform.Of(fins.Outline);
        var slope = AeroBreakdown.Of(study.Shape, worst.Mach, study.ReynoldsPerMetreAt(worst)).Lift.Where(l => l.OfFins && l.Name.StartsWith(fins.Name, StringComparison.Ordinal)).Sum(l => l.Slope);
        var w = draft.Working;
        var q = w.Simulated("q" + n, worst.DynamicPressure, "Pa", $"dynamic pressure {worst.Time:F2} s after ignition, when the side force is greatest", "flown");
        var i = w.Simulated("i" + n, worst.AngleOfAttack, "rad", "angle to the air then", "flown");
        var d = w.Given("d" + n, study.Shape.ReferenceDiameter, "m", "reference diameter", "design");
        var C = w.Simulated("C" + n, slope, "1/rad", "normal-force slope of the whole set", "aerodynamic build-up");
        var N = w.Given("N" + n, fins.Count, "", "number of fins", "design");
        var y = w.Given("y" + n, plan.SpanwiseCentre, "m", "centre of the force out from the root", "Barrowman (1966)");
        var c = w.Given("cr" + n, plan.RootChord, "m", "root chord", "design");
        var t = w.Given("tr" + n, fins.Thickness, "m", "thickness", "design");
        (string, string)[] names = [("q", "q" + n), ("i", "i" + n), ("d", "d" + n), ("C", "C" + n), ("N", "N" + n), ("y", "y" + n), ("c", "cr" + n), ("t", "tr" + n), ("F", "F" + n)];
        var F = w.StepOf("F" + n, q * PI / 4 * d * d * C * i / (N / 2), "N", "side force of the fin most across the flow", "sum of sin² over the fins is N/2, Barrowman (1966) eq. 58", names);
        var stress = w.StepOf("b" + n, 6 * F * y / (c * t * t), "Pa", "bending stress at the root", "Beer & Johnston, Mechanics of Materials: rectangular section, from memory", names);
        draft.Find($"{fins.Name}: bending stress at the root", stress, Unit.Pressure);
    }
}
