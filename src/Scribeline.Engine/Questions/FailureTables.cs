using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>The failures as tables to hand over.</summary>
public static class FailureTables
{
    /// <summary>Title of the table with one row for each failure.</summary>
    public const string EndingsTitle = "How each failure ends";

    /// <summary>One row for each failure: how its hardest piece lands, and which limits it breaks.</summary>
    public static AnswerTable Endings(ValueList<FailureOutcome> outcomes) => new(
        EndingsTitle,
        [new("failure"), new("breaks"), new("lands hardest"), new("falls at", Unit.Speed), new("energy", Unit.Energy), new("away", Unit.Height)],
        outcomes.Select(o => TableRow.Of(
            o.Verdict, o.Failure.Name, Breaks(o), o.Hardest?.Name ?? "", o.Hardest?.Landing.DescentRate, o.Hardest?.Energy, o.Hardest?.Away)).ToValueList());

    /// <summary>One row for each failure: what is wrong in it, how many things that takes, and which charges lie on the ground live.</summary>
    public static AnswerTable Causes(ValueList<FailureOutcome> outcomes) => new(
        "What is wrong in each",
        [new("failure"), new("what is wrong"), new("things", Unit.Count), new("left unburnt")],
        outcomes.Skip(1).Select(o => TableRow.Of(null, o.Failure.Name, o.Failure.Says, o.Failure.Things, o.Unburnt.Count == 0 ? "none" : string.Join(", ", o.Unburnt))).ToValueList());

    /// <summary>One row for each piece of each failure: when, where and how it comes to the ground.</summary>
    public static AnswerTable Landings(ValueList<FailureOutcome> outcomes) => new(
        "Where every piece comes down",
        [new("failure"), new("piece"), new("after", Unit.Time), new("away", Unit.Height), new("bearing", Unit.Angle), new("falls at", Unit.Speed), new("energy", Unit.Energy)],
        outcomes.SelectMany(o => o.Pieces.Select(p => TableRow.Of(
            null, o.Failure.Name, p.Name, p.Landing.At.Time, p.Away, p.Bearing, p.Landing.DescentRate, p.Energy))).ToValueList());

    /// <summary>One row for each canopy that opens and for each thing that follows from a failure.</summary>
    public static AnswerTable OnTheWay(ValueList<FailureOutcome> outcomes) => new(
        "What happens on the way",
        [new("failure"), new("what"), new("time", Unit.Time), new("height", Unit.Height), new("airspeed", Unit.Speed), new("force", Unit.Force)],
        outcomes.SelectMany(o => o.Events.Select(e => TableRow.Of(null, o.Failure.Name, e.What, e.Time, e.Height, e.Airspeed, e.Force))).ToValueList());

    /// <summary>One row for each piece of one flight: when, where and how it comes to the ground.</summary>
    public static AnswerTable Ground(FailureOutcome outcome) => new(
        "What reaches the ground",
        [new("piece"), new("after", Unit.Time), new("falls at", Unit.Speed), new("energy", Unit.Energy), new("away", Unit.Height), new("bearing", Unit.Angle)],
        outcome.Pieces.Select(p => TableRow.Of(null, p.Name, p.Landing.At.Time, p.Landing.DescentRate, p.Energy, p.Away, p.Bearing)).ToValueList());

    /// <summary>The limits a flight breaks, in words.</summary>
    public static string Breaks(FailureOutcome outcome) => !outcome.Computed ? "not computed"
        : !outcome.Broken.Any() ? "no limit"
        : string.Join("; ", outcome.Broken.Select(f => f.Limit!.Id switch
        {
            "descends.landing" => "landing speed",
            "lands-soft.energy" => "landing energy",
            "if-it-fails.field" => "outside the field",
            _ => f.Name,
        }).Distinct());
}
