using System.Text.RegularExpressions;
using Scribeline.App.Documents;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Tests;

/// <summary>Shots from the terminal and the screen to the answers, on a copy of an example whose own shots are taken out.</summary>
public sealed partial class ShotTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 5, 9, 10, 0, 0, TimeSpan.Zero);

    private readonly ScratchFolder scratch = ScratchFolder.WithExamples();
    private readonly string text;

    public ShotTests()
    {
        text = OwnShots().Replace(File.ReadAllText(Design), "");
        File.WriteAllText(Design, text);
    }

    private string Design => scratch.At("night-heron/rocket.yaml");

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_shot_is_kept_at_the_terminal_with_what_the_design_has_and_let_count_and_set_aside()
    {
        var run = Run.Of("shot", Design, "--charge", "main a", "--powder", "0.50 g", "--happened", "parted", "--filmed", "24 in, 9 frames, 240 fps", "--note", "=SUM(1), \"clean\"");
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains("Nose to Payload: of them let go", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        var body = Shots().Single().Body;
        Assert.StartsWith("{charge: \"Main A\", powder: \"0.50 g\", happened: \"parted\", filmed: {distance: \"24 in\", frames: \"9\", rate: \"240 Hz\"}, pins: \"3\", screw: \"#2-56 nylon\", grain: \"4F\", note: ", body, StringComparison.Ordinal);
        Assert.Matches("volume: \"61\\d\\.\\d cm³\"", body);
        Assert.EndsWith($"revision: \"{Logbook.HashOf(text)[..12]}\"}}", body, StringComparison.Ordinal);

        Assert.Equal(0, Run.Of("shot", Design, "--charge", "Main A", "--powder", "0.50 g", "--happened", "parted", "--let-count", "--csv", scratch.At("shots.csv")).Code);
        Assert.Contains("shots count: yes", File.ReadAllText(Design), StringComparison.Ordinal);
        var csv = File.ReadAllLines(scratch.At("shots.csv"));
        Assert.Equal(3, csv.Length);
        Assert.Contains("\"'=SUM(1), \"\"clean\"\"\"", csv[1], StringComparison.Ordinal);
        var told = Run.Of("answer", Design, "--samples", "0", "-q", "lets-go");
        Assert.Contains("rocket.yaml and 2 shots of its logbook", Spaces().Replace(told.Output, " "), StringComparison.Ordinal);
        Assert.Contains("Main A: lets go, by 2 shots", told.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Drogue A: lets go, by", told.Output, StringComparison.Ordinal);

        Assert.Equal(0, Run.Of("shot", Design, "--take-out", "1", "--set-aside").Code);
        Assert.Equal(text, File.ReadAllText(Design));
        Assert.Equal([true, false], Shots().Select(s => s.Out));
        var wrong = Run.Of("shot", Design, "--put-back", "9");
        Assert.Equal((2, $"The logbook has no shot '9' of this design. Type the number that stands before it in the list.{Environment.NewLine}"), (wrong.Code, wrong.Error));
    }

    [Fact]
    public async Task On_screen_a_shot_that_cannot_be_is_refused_and_one_that_can_is_undone()
    {
        using var document = DesignDocument.Open("heron", Design, 0, TimeSpan.Zero).Document!;
        await document.Settled;
        Refused(document, "There is no charge 'Mian A'. Did you mean 'Main A'?", ("charge", "Mian A"));
        Refused(document, "60 g is more than any recovery charge.", ("powder", "60 g"));
        Refused(document, "'powder': 0.5 mm is a length", ("powder", "0.5 mm"));
        Refused(document, "A joint that did not part has no speed.", ("happened", "did not part"));
        Refused(document, "'happened' is missing", ("happened", ""));
        Refused(document, "305 m/s is faster than pieces come apart.", ("speed", "1000 ft/s"));
        Assert.Empty(document.Shots);

        var (shot, problems) = document.Shoot(document.Drawn!, Typed(), Now);
        Assert.Empty(problems);
        await document.Settled;
        Assert.Single(document.Answers.Study!.Rocket.Shots);
        Assert.Equal(Verdict.Open, document.Answers.Of("test-says")!.Verdict);
        Assert.Empty(document.MarkShot(shot!, takeOut: true, Now));
        await document.Settled;
        Assert.Empty(document.Answers.Study!.Rocket.Shots);
        Assert.Null(document.CountShots(true));
        Assert.True(document.ShotsCount);
        document.Undo();
        Assert.Equal(text, document.Reading.Text);
    }

    [Fact]
    public void A_single_shot_counts_nowhere_and_two_count_until_set_aside()
    {
        var plain = Findings("");
        Assert.Equal(plain, Findings("shots count: yes"));
        Assert.Equal(plain, Findings(Shot() + "  shots count: yes\n"));
        Assert.Equal(plain, Findings(Shot() + Shot("0.5 g", "12 m/s").Split('\n')[1] + "\n"));
        var counted = Findings(Shot() + Shot("0.5 g", "12 m/s").Split('\n')[1] + "\n  shots count: yes\n");
        Assert.NotEqual(plain, counted);
    }

    // A design with too little powder for its pins is stopped by the margin; the fastest shots there can be do not lift that.
    [Fact]
    public void No_shots_lift_a_stop_of_the_margin()
    {
        var weak = text.Replace("into: Payload, powder: 4F, mass: auto", "into: Payload, powder: 4F, mass: 0.25 g", StringComparison.Ordinal);
        var two = Shot("0.25 g", "14 m/s") + Shot("0.25 g", "14 m/s").Split('\n')[1] + "\n  shots count: yes\n";
        Answer Ask(string records) => Questionnaire.Named("lets-go")!.Ask(Study(weak, records));
        Assert.Equal(Verdict.Stop, Ask("").Verdict);
        Assert.Equal(Verdict.Stop, Ask(Shot("0.25 g", "14 m/s") + "  shots count: yes\n").Verdict);
        Assert.Equal(Verdict.Stop, Ask(two).Verdict);
        double Push(string records) => Ask(records).Findings.Single(f => f.Name == "Main A: push over strongest pins and friction").Value;
        Assert.True(Push(two) <= Push(""));
    }

    [Theory]
    [InlineData("volume: 700 cm³", "the bay had 700 cm³ free, now 616 cm³")]
    [InlineData("pins: 2", "2 pins, now 3")]
    [InlineData("screw: \"M3 nylon\"", "pins M3 nylon, now #2-56 nylon")]
    [InlineData("grain: 3F", "powder of another grain")]
    public void A_shot_of_another_joint_is_shown_and_does_not_count(string other, string why)
    {
        var study = Study(text, Shot(more: $", {other}"));
        var judged = study.JointTests.SelectMany(t => t.Shots).Single();
        Assert.Null(judged.Evidence);
        Assert.Equal(why, judged.Why);
        var answer = Questionnaire.Named("test-says")!.Ask(study);
        Assert.Equal(Verdict.Open, answer.Verdict);
        Assert.Contains(answer.Tables.Single(t => t.Title == "Shots").Rows[0].Cells, c => c.Words == $"no longer of this joint: {why}");
    }

    [Fact]
    public void A_speed_no_one_would_expect_is_shown_as_a_conflict_and_what_happened_still_counts()
    {
        var judged = Study(text, Shot("0.5 g", "110 m/s ± 1 m/s")).JointTests.SelectMany(t => t.Shots).Single();
        Assert.Null(judged.Evidence!.Speed);
        Assert.True(judged.Evidence.LetGo);
        Assert.Contains("standard deviations from what was expected and is not averaged in", judged.Why, StringComparison.Ordinal);
    }

    // Clamped behind: only the nose moves, so the same energy gives it less speed than two free pieces part with (m1 against m1 m2/(m1 + m2)).
    [Fact]
    public void On_the_ground_the_motor_is_out_and_a_held_piece_does_not_move()
    {
        var study = Study(text, "");
        var firing = study.ChargeFirings.Single(f => f.Charge.Name == "Drogue A");
        EjectionOf free = new(study.OnGround(firing, 5e-4)), held = new(study.OnGround(firing, 5e-4, held: true));
        Assert.True(free.Inputs.AftMass < firing.Fired.Inputs.AftMass);
        Assert.Equal(firing.Fired.Inputs.ForwardMass, free.Inputs.ForwardMass, 1e-12);
        Assert.Equal(free.Inputs.ForwardMass, held.Inputs.ReducedMass);
        Assert.True(free.Inputs.AmbientPressure > firing.Fired.Inputs.AmbientPressure);
        Assert.True(held.Speed < free.Speed);
    }

    // 13.95 m/s carries a part 19.84 m (range of a throw v²/g); half as far again is kept clear.
    [Fact]
    public void The_clear_distance_is_one_and_a_half_throws()
    {
        var steps = Questionnaire.Named("test-plan")!.Ask(Study(text, "")).Working.Steps;
        foreach (var clear in steps.Where(s => s.Symbol.StartsWith("c_", StringComparison.Ordinal)))
        {
            var speed = steps.Single(s => s.Symbol == "v_" + clear.Symbol[2..]).Value;
            Assert.Equal(Math.Max(5, 1.5 * 19.84 * speed * speed / (13.95 * 13.95)), clear.Value, 0.002 * clear.Value);
        }
    }

    private sealed record EjectionOf(Engine.Separation.EjectionInputs Inputs)
    {
        public double Speed => Inputs.Fire().SeparationSpeed;
    }

    private static Dictionary<string, string> Typed(params (string Key, string Value)[] other)
    {
        Dictionary<string, string> typed = new() { ["charge"] = "Main A", ["powder"] = "0.5 g", ["happened"] = "parted", ["speed"] = "17 m/s" };
        foreach (var (key, value) in other) typed[key] = value;
        return typed;
    }

    private static void Refused(DesignDocument document, string why, params (string Key, string Value)[] other)
    {
        var (shot, problems) = document.Shoot(document.Drawn!, Typed(other), Now);
        Assert.Null(shot);
        Assert.Contains(problems, p => $"{p.Message} {p.Suggestion}".Contains(why, StringComparison.Ordinal));
    }

    private static string Shot(string powder = "0.5 g", string speed = "17 m/s", string more = "") => $"  shots:\n    - {{charge: Main A, powder: {powder}, happened: parted, speed: {speed}{more}}}\n";

    private Study Study(string design, string records)
    {
        var reading = DesignFile.ReadText(design.TrimEnd() + "\n" + (records.Length > 0 && records[0] != ' ' ? $"  {records}\n" : records), Design);
        Assert.Empty(reading.Problems);
        return Studies.Of(reading.Design!).Nominal!;
    }

    private ValueList<Finding> Findings(string records) => Questionnaire.Named("lets-go")!.Ask(Study(text, records)).Findings;

    private ValueList<LoggedShot> Shots()
    {
        using var book = Logbook.OpenExisting(Design).Value!;
        return book.Shots().Value!;
    }

    [GeneratedRegex(@"^  shots:.*\n(    - \{charge:.*\n)+", RegexOptions.Multiline)]
    private static partial Regex OwnShots();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
