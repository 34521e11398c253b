using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Is it stable all the way up? Least static margin at the Mach number and angle of attack flown.</summary>
public sealed class Stable() : Question("stable", "Is it stable all the way up?", Place.Desk)
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
            draft.Find("least static margin", double.NaN, Unit.Calibre, "stable.margin");
            draft.Note("It does not leave the rail.");
            return draft.Done();
        }

        var least = ascent.MinBy(s => s.StaticMargin)!;
        var first = ascent[0];
        var w = draft.Working;
        const string Table = "aerodynamic table: Barrowman (1966) with Mach and cross-flow terms";
        var d = w.Given("d", study.Shape.ReferenceDiameter, "m", "largest body diameter: the calibre", "design");
        var L = w.Given("L", study.Length, "m", "length", "design");
        var X = w.Simulated("X", least.CentreOfPressure, "m", $"centre of pressure aft of the tip {least.Time:F2} s after ignition, at Mach {least.Mach:F2} and {least.AngleOfAttack * 180 / Math.PI:F1}° to the air", Table);
        var x = w.Simulated("x", least.CentreOfMass, "m", "balance aft of the tip, then", "question weight");
        var margin = w.Step("M", (X - x) / d, "cal", "least static margin", "definition");
        var share = w.Step("s", (X - x) / L, "", "the same as a share of the length", "definition");
        var X_e = w.Simulated("X_e", first.CentreOfPressure, "m", $"centre of pressure as the last guide leaves, at {first.AngleOfAttack * 180 / Math.PI:F1}° to the air", Table);
        var x_e = w.Simulated("x_e", first.CentreOfMass, "m", "balance there", "question weight");
        w.Step("M_e", (X_e - x_e) / d, "cal", "static margin leaving the rail", "definition");
        draft.Find("least static margin", margin, Unit.Calibre, "stable.margin");
        draft.Find("the same as a share of the length", share, Unit.Share);
        draft.Find("margin leaving the rail", first.StaticMargin, Unit.Calibre, study.WindIsKnown ? "stable.rail-exit-margin" : null);
        draft.Note($"From the rail until the airspeed falls below {Shown.Text(Study.SlowAirspeed, Unit.Speed, study.Rocket.Inch)} before apogee; slower than that the air no longer steers it.");
        draft.Draw(() => FlightPlots.Free("Static margin on the way up", "static margin", Unit.Calibre, study, s => s.StaticMargin, study.Limits["stable.margin"].Value));
        draft.Draw(() => new Plot(
            "Balance and centre of pressure",
            new Axis("time", Unit.Time),
            new Axis("station", Unit.Length),
            [FlightPlots.Line("centre of pressure", ascent, s => s.CentreOfPressure), FlightPlots.Line("balance", ascent, s => s.CentreOfMass)],
            FlightPlots.Marks(study)));
        return draft.Done();
    }
}
