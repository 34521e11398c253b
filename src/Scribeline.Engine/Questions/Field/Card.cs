using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Questions.Field;

/// <summary>What do I hand in? What a range safety officer reads in a minute, from the other answers.</summary>
public sealed class Card() : Question("card", "What do I hand in?", Place.Field)
{
    private const string Blank = "________";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    public override bool TellsOfAll => true;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        var others = Questionnaire.All.Where(q => q.Id != Id && q.Place != Place.Log).Select(q => q.Ask(study)).ToArray();
        int stop = others.Count(a => a.Verdict == Verdict.Stop), open = others.Count(a => a.Verdict == Verdict.Open);
        draft.Judged("of verdict stop", stop, Unit.Count, stop > 0 ? Verdict.Watch : Verdict.Clear);
        draft.Judged("of verdict open", open, Unit.Count, open > 0 ? Verdict.Watch : Verdict.Clear);
        draft.Judged("of verdict watch", others.Count(a => a.Verdict == Verdict.Watch), Unit.Count, Verdict.Clear);
        draft.List(() => new("Rocket and motor", [new("line"), new("entry")], new Lines(study, others).Rocket().ToValueList()));
        draft.List(() => new("Recovery", [new("line"), new("entry")], new Lines(study, others).Recovery().ToValueList()));
        draft.List(() => new("Range", [new("line"), new("entry")], new Lines(study, others).Range().ToValueList()));
        draft.Note("Blank lines are filled in by hand: this program keeps no names. Verdicts are those as typed; the packet adds those over the tolerances.");
        draft.Note(Cautions.Everything);
        return draft.Done();
    }

    private sealed class Lines(Study study, Answer[] answers)
    {
        private bool Inch => study.Rocket.Inch;

        public IEnumerable<TableRow> Rocket()
        {
            yield return Row("rocket", study.Rocket.Name);
            yield return Row("flyer, level held", Blank);
            yield return Row("length, diameter", $"{Text(study.Length, Unit.Length)}, {Text(study.Shape.ReferenceDiameter, Unit.Length)}");
            if (study.HasMotor)
            {
                var impulse = study.Motor.Curve.TotalImpulse;
                yield return Row("motor", $"{study.Motor.Name}, {Text(impulse, Unit.Impulse)}, {Text(study.Motor.Curve.AverageThrust, Unit.Force)} on average over {Text(study.Motor.Curve.BurnTime, Unit.Time)}");
                yield return Row("class, level needed", $"{study.Motor.Class?.Letter ?? "none"}, {(RuleClass.Level(impulse) is { } level ? $"level {level}" : "above every level")}");
            }
            else
            {
                yield return Row("motor", "open", Verdict.Open);
            }

            yield return Figure("mass on the pad", "weight", 0);
            yield return Row("balance and centre of pressure", $"{Value("weight", 1)} and {(study.SideView.CentreOfPressure is { } cp ? Text(cp.Station, Unit.Length) : "open")} aft of the tip");
            yield return Figure("thrust over weight", "thrust-to-weight", 0);
            yield return Figure("speed leaving the rail", "rail-exit", 0);
            yield return Figure("least static margin", "stable", 0);
            yield return Figure("expected height", "how-high", 0);
            yield return Row("greatest speed, Mach number", $"{Value("how-fast", 0)}, {Value("how-fast", 1)}", Of("how-fast")?.Verdict);
        }

        public IEnumerable<TableRow> Recovery()
        {
            foreach (var altimeter in LaunchDay.Altimeters(study))
            {
                yield return Row(altimeter, string.Join("; ", study.Rocket.Firings.Where(f => f.Altimeter == altimeter).Select(f => $"{f.Charge} {LaunchDay.Trigger(f.Trigger, Inch)}")));
            }

            foreach (var motor in study.Rocket.Firings.Where(f => f.Altimeter is null)) yield return Row("motor's own charge", $"{motor.Charge} {LaunchDay.Trigger(motor.Trigger, Inch)}");
            foreach (var charge in study.Rocket.Separation.Charges) yield return Row($"charge {charge.Name}", charge.Mass is { } mass ? Text(mass, Unit.Powder) : "open", charge.Mass is null ? Verdict.Open : null);
            foreach (var canopy in study.Rocket.Canopies) yield return Row(canopy.Name, $"{Text(canopy.NominalDiameter, Unit.Length)} across a disc of all its cloth");
            if (study.Missing.Count > 0) yield break;
            foreach (var opening in study.Flight.Openings)
            {
                yield return Row($"{opening.Name} opens", $"{Text(opening.LineStretch.Height, Unit.Height)} up at {Text(opening.LineStretch.Airspeed, Unit.Speed)}");
            }

            foreach (var landing in study.Flight.Landings)
            {
                yield return Row($"lands: {string.Join(", ", landing.Pieces)}", $"{Text(landing.DescentRate, Unit.Speed)}; {string.Join(", ", landing.Pieces.Select(p => Text(0.5 * study.PieceMass(p) * landing.DescentRate * landing.DescentRate, Unit.Energy)))}", Of("lands-soft")?.Verdict);
            }
        }

        public IEnumerable<TableRow> Range()
        {
            if (study.Missing.Count == 0)
            {
                yield return Row("site, rules", $"{study.Day.Site.Name}: {(study.Day.Site.Rules.Count > 0 ? string.Join(", ", study.Day.Site.Rules) : "open")}", study.Day.Site.Rules.Count > 0 ? null : Verdict.Open);
                yield return Row("ceiling above the pad, above sea level", study.Ceiling is { } ceiling ? $"{Text(ceiling, Unit.Height)}, {Text(ceiling + study.Air.Elevation, Unit.Height)}" : "open", study.Ceiling is null ? Verdict.Open : Of("how-high")?.Verdict);
                yield return Row("waiver or notice", Blank);
                yield return Row("rail", $"{Text(study.Day.Rail.Length, Unit.Length)} usable, {Text((Math.PI / 2) - study.Day.Rail.Elevation, Unit.Angle)} off the vertical towards {Text(study.Day.Rail.Azimuth, Unit.Angle)}");
                yield return Row("people back; cleared across", study.PeopleBack is [var (rules, row), ..] ? $"{Text(row.People(false)!.Value, Unit.Height)}; {(row.Cleared is { } cleared ? Text(cleared, Unit.Height) : "no figure")} ({rules.Name})" : "open", Of("keep-back")?.Verdict);
                yield return Row("wind planned for", study.WindIsKnown ? $"{Text(study.WindAt(10), Unit.Speed)} at {Text(10, Unit.Height)}{(study.Day.Gust is { } gust ? $", gusts {Text(gust, Unit.Speed)}" : "")}" : "open", study.WindIsKnown ? null : Verdict.Open);
                yield return Row("conditions of the rules", Conditions(), Of("allowed")?.Verdict);
            }

            yield return Row("verdicts, as typed", AnswerText.Count(answers));
            foreach (var answer in answers.Where(a => a.Verdict is Verdict.Stop or Verdict.Open)) yield return Row(answer.Question.Id, answer.Question.Text, answer.Verdict);
            yield return Row("pad, rack", Blank);
            yield return Row("range safety officer", Blank);
            yield return Row("time, result", Blank);
        }

        private string Conditions()
        {
            var checks = study.RuleChecks;
            int Count(RuleState state) => checks.Count(c => c.State == state);
            return $"{Count(RuleState.Met)} met, {Count(RuleState.NotMet)} not met, {Count(RuleState.Confirmed)} confirmed by a person, {Count(RuleState.ToConfirm)} to be confirmed, {Count(RuleState.Missing)} not known";
        }

        private Answer? Of(string id) => answers.FirstOrDefault(a => a.Question.Id == id);

        private string Value(string id, int index) => Of(id) is { } answer && answer.Findings.Count > index ? Shown.Text(answer.Findings[index].Value, answer.Findings[index].Unit, Inch) : "open";

        private TableRow Figure(string line, string id, int index) => Row(line, Value(id, index), Of(id)?.Verdict);

        private string Text(double value, Unit unit) => Shown.Text(value, unit, Inch);

        private static TableRow Row(string line, string entry, Verdict? verdict = null) => TableRow.Of(verdict, line, entry);
    }
}
