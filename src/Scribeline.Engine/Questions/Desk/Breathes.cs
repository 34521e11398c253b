using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Do the altimeters read true? How far the pressure in their bay lags behind, what the stream does to it, and where the ports stand.</summary>
public sealed class Breathes() : Question("breathes", "Do the altimeters read true?", Place.Desk)
{
    private const string Flow = "isothermal bay, sharp holes, compressible flow (Shapiro ch. 4, from memory)";
    private const string Bernoulli = "Bernoulli and the hydrostatic balance";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var bays = study.BayHistories.Where(b => study.HoldsAltimeters(b.Bay)).ToArray();
        foreach (var (history, i) in bays.Select((b, i) => (b, i + 1)))
        {
            if (study.HolesOf(history.Bay).FirstOrDefault(h => h.StaticPort) is { } ports) Bay(draft, study, history, ports, $"_{i}");
            else draft.Miss($"parts: ports of {history.Bay.Name}");
        }

        if (bays.Length == 0) draft.Miss("parts: an altimeter bay");
        draft.Note($"Near the speed of sound a shock crosses the ports and the reading jumps by hundreds of metres; no port cures that. Beyond Mach {StaticPressure.GoodToMach:F1} nothing is said of the static pressure.");
        draft.Note("Drill square and take off the burr flush; no chamfer.");
        return draft.Done();
    }

    private static void Bay(Draft draft, Study study, BayHistory history, HoleRow ports, string n)
    {
        var (bay, pad) = (history.Bay.Name, study.Air.StationPressure);
        var trueHeight = history.Outside.Select(p => (double)Altimetry.ShownHeight<Scalar>(p, pad)).ToArray();
        var shown = history.Inside.Select(p => (double)Altimetry.ShownHeight<Scalar>(p, pad)).ToArray();
        var apogee = study.Flight.Apogee?.Time ?? study.Flight.End;
        var climb = Enumerable.Range(0, shown.Length).TakeWhile(i => history.Samples[i].Time <= apogee).ToArray();
        var worst = climb.MaxBy(i => Abs(trueHeight[i] - shown[i]));
        draft.Working.Simulated("h_f" + n, trueHeight[worst] - shown[worst], "m", $"behind, {history.Samples[worst].Time:F2} s after ignition, when it is most", Flow);
        draft.Find($"{bay}: behind on the climb, at most", Abs(trueHeight[worst] - shown[worst]), Unit.Height, "breathes.lag-height");
        var late = Top(history.Samples, shown) - Top(history.Samples, trueHeight);
        draft.Find($"{bay}: apogee seen late by", draft.Working.Simulated("t" + n, late, "s", "indicated apogee after the one of the pressure outside", Flow), Unit.Time, "breathes.lag-time");
        foreach (var height in study.Rocket.Firings.Select(f => f.Trigger).OfType<DescendingThrough>().Select(d => d.Height).Distinct())
            Main(draft, study, history, trueHeight, shown, height, apogee);
        Rule(draft, study, history, ports, history.Samples[worst], n);
        Placed(draft, study, history, ports, n);
        draft.Draw(() => new Plot(
            $"{bay}: pressure inside over outside",
            new Axis("time", Unit.Time),
            new Axis("pressure", Unit.Pressure),
            [new Series("inside over outside", climb.Select(i => history.Samples[i].Time).ToValueList(), climb.Select(history.Excess).ToValueList())],
            FlightPlots.Marks(study)));
    }

    /// <summary>The customary rule, and the lag in a steady climb by hand.</summary>
    private static void Rule(Draft draft, Study study, BayHistory history, HoleRow ports, FlightSample at, string n)
    {
        var w = draft.Working;
        var bay = history.Bay.Name;
        var names = Locals.Numbered(n, "V", "N", "d", "A", "A_o", "X", "v", "T", "C", "R", "g", "u");
        var V = w.Given("V" + n, history.Air.Volume, "m³", $"air in the bay of {bay}", "design");
        var N = w.Given("N" + n, ports.Count, "", "ports", "design");
        var d_c = w.StepOf("d_c" + n, 0.00635 * Sqrt(V / (0.0016387064 * N)), "m", "customary diameter of each", "common practice: a quarter inch for each 100 cubic inches, its area shared", names);
        var d = w.Given("d" + n, study.DiameterOf(ports, history.Bay), "m", ports.Diameter is null ? "diameter of each: the next drill" : "diameter of each", ports.Diameter is null ? "drill table" : "design");
        var A_o = w.Given("A_o" + n, history.Air.Area - ports.AreaAt(d), "m²", "other holes", "design");
        var X = w.StepOf("X" + n, V / ((N * PI / 4 * d * d) + A_o), "m", "air over area of its holes", "definition", names);
        var v = w.Simulated("v" + n, at.VerticalSpeed, "m/s", "climb when it is furthest behind", "flown");
        var T = w.Given("T" + n, history.Air.Temperature, "K", "air in the bay, as on the pad", "air of the day");
        var C = w.Given("C" + n, history.Air.DischargeCoefficient, "", "discharge coefficient of a sharp hole", "Weisbach, in Encyclopaedia Britannica, 11th ed., Hydraulics § 63");
        var R = w.Given("R" + n, AirConstants.GasConstant, "J/(kg·K)", "gas constant of air", "U.S. Standard Atmosphere 1976");
        var g = w.Given("g" + n, AirConstants.StandardGravity, "m/s²", "standard gravity", "U.S. Standard Atmosphere 1976");
        var u = w.StepOf("u" + n, X * g * v / (C * R * T), "m/s", "speed of the air through the ports in a steady climb", Bernoulli, names);
        w.StepOf("h" + n, u * u / (2 * g), "m", "behind by hand", Bernoulli, names);
        draft.Find($"{bay}: ports", N, Unit.Count, "breathes.ports");
        draft.Find($"{bay}: diameter of each", d, Unit.Length);
        if (ports.Diameter is null && Drill.NotBelow(d_c, study.Rocket.Inch) is { } drill) draft.Note($"{bay}: auto takes the next drill to the customary diameter, {drill.Name}.");
        draft.Find($"{bay}: customary diameter of each", d_c, Unit.Length);
        draft.Find($"{bay}: air over area of its holes", X, Unit.Height, "breathes.draughty");
    }

    private static void Main(Draft draft, Study study, BayHistory history, double[] trueHeight, double[] shown, double height, double apogee)
    {
        if (Falls(history.Samples, trueHeight, height, apogee) is not { } then || Falls(history.Samples, shown, height, apogee) is not { } seen) return;
        var words = Shown.Text(height, Unit.Height, study.Rocket.Inch);
        draft.Find($"{history.Bay.Name}: {words} on the way down seen late by", seen - then, Unit.Time, "breathes.lag-time");
        var at = history.Samples.Last(s => s.Time <= then);
        draft.Find($"{history.Bay.Name}: lower than {words} by then", Max(0, (seen - then) * -at.VerticalSpeed), Unit.Height, "breathes.lag-height");
    }

    private static void Placed(Draft draft, Study study, BayHistory history, HoleRow ports, string n)
    {
        var (w, bay) = (draft.Working, history.Bay.Name);
        var placed = PortPlacement.Of(ports, study.Shape, study.Rocket.SurfaceThings);
        if (double.IsFinite(placed.BehindShoulder)) draft.Find($"{bay}: ports behind the last shoulder", placed.BehindShoulder, Unit.Calibre, "breathes.behind-shoulder");
        if (double.IsFinite(placed.AheadOfFins)) draft.Find($"{bay}: ports ahead of the fins", placed.AheadOfFins, Unit.Calibre, "breathes.ahead-of-fins");
        if (placed.InLine is not null)
        {
            draft.Find($"{bay}: ports off the line of what stands ahead", placed.OffLine, Unit.Angle, "breathes.off-line");
            if (placed.OffLine < study.Limits["breathes.off-line"].Value) draft.Note($"{bay}: a port stands behind a {placed.InLine}; turn the ports or move it.");
        }

        // Slow enough for a port to measure at all, fast enough for the error to count.
        var slow = study.FreeAscent.Where(s => s.Mach <= StaticPressure.GoodToMach).ToArray();
        if (slow.Length == 0) return;
        var fast = slow.MaxBy(s => s.Airspeed)!;
        var c = w.Simulated("c" + n, StaticPressure.At(study.Shape, ports.Station), "", "pressure coefficient behind the nose", "far field of the nose, within 15 % from 1 to 6 calibres behind its shoulder (potential flow)");
        var v = w.Simulated("v_q" + n, fast.Airspeed, "m/s", $"greatest airspeed up to Mach {StaticPressure.GoodToMach:F1}", "flown");
        var g = AirConstants.StandardGravity;
        var e = w.StepOf("e" + n, -c * v * v / (2 * g), "m", "the stream makes it read high by", "definition of the pressure coefficient", [("v", "v_q" + n), ("c", "c" + n), ("g", "g" + n)]);
        draft.Find($"{bay}: the stream makes it read high by", e, Unit.Height);
        var leaning = slow.MaxBy(s => s.Airspeed * Sin(s.AngleOfAttack))!;
        draft.Find($"{bay}: leaning into the wind, it reads wrong by", Rolled(ports.Count, leaning), Unit.Height);
        draft.Find($"{bay}: the same with a single port", Rolled(1, leaning), Unit.Height);
    }

    // Whichever way it has rolled.
    private static double Rolled(int count, FlightSample at)
    {
        var (low, high) = StaticPressure.AcrossWind(count);
        return Abs(StaticPressure.HeightError(Max(-low, high) * Pow(Sin(at.AngleOfAttack), 2), at.Airspeed));
    }

    /// <summary>Time of the greatest height, by the parabola through the three highest neighbours.</summary>
    private static double Top(ValueList<FlightSample> samples, double[] height)
    {
        var i = Clamp(Array.IndexOf(height, height.Max()), 1, height.Length - 2);
        double a = samples[i - 1].Time, b = samples[i].Time, c = samples[i + 1].Time;
        double down = (height[i] - height[i - 1]) / (b - a), up = (height[i + 1] - height[i]) / (c - b), bend = (up - down) / (c - a);
        return bend < 0 ? Clamp(((a + b) / 2) - (down / (2 * bend)), a, c) : b;
    }

    /// <summary>First time after apogee at which a height is passed, between samples by a straight line; null where it never is.</summary>
    private static double? Falls(ValueList<FlightSample> samples, double[] heights, double height, double apogee)
    {
        for (var i = 1; i < heights.Length; i++)
        {
            if (samples[i].Time <= apogee || heights[i] > height || heights[i - 1] <= height) continue;
            return samples[i - 1].Time + ((samples[i].Time - samples[i - 1].Time) * (heights[i - 1] - height) / (heights[i - 1] - heights[i]));
        }

        return null;
    }
}
