using System.Diagnostics;
using Scribeline.App.Documents;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Tests;

namespace Scribeline.App.Tests.Documents;

/// <summary>
/// The table of what each question rests on, held to the answers themselves. To measure it anew, which takes minutes: SCRIBELINE_MEASURE=1
/// SCRIBELINE_APPROVE=1; with SCRIBELINE_QUESTIONS=a,b only for those questions, such as new ones; with SCRIBELINE_EXAMPLES=a on fewer examples,
/// which adds to the table and takes nothing out.
/// </summary>
public class ConcernsTests(ITestOutputHelper output)
{
    private const string Table = "src/Scribeline.App/Documents/concerns.csv";

    // One value in so many is moved in every run of the tests; all of them where the table is measured.
    private const int OneIn = 6;

    private static readonly string[] Examples = ["night-heron", "mute-swan"];

    private static readonly OutlineMap Root = Whole("night-heron");

    // Those of the log rest on a recorded flight, which no example file holds.
    [Fact]
    public void Every_question_names_inputs_that_are_in_the_example() => Assert.All(
        Questionnaire.All.Where(q => q.Place != Place.Log), q => Assert.NotEmpty(Concerns.FieldsOf(q.Id, Root)));

    [Theory]
    [InlineData("parts[3].fins[0]", "stable")]
    [InlineData("parts[3]", "flutter")]
    [InlineData("joints[0]", "lets-go")]
    [InlineData("charges[0]", "bursts-nothing")]
    [InlineData("joints[0].pins", "lets-go")]
    [InlineData("rail", "rail-exit")]
    [InlineData("motor", "how-high")]
    [InlineData("site", "today")]
    [InlineData("weather", "rail-exit")]
    public void A_thing_leads_to_the_questions_it_touches(string path, string question) => Assert.Contains(question, Concerns.QuestionsOf(path, Root));

    [Theory]
    [InlineData("parts[3].fins[0]", "fires")]
    [InlineData("rail", "engagement")]
    [InlineData("parts[0]", "fires")]
    public void A_thing_does_not_lead_to_others(string path, string question) => Assert.DoesNotContain(question, Concerns.QuestionsOf(path, Root));

    // Moved by values chosen by their place alone.
    [Theory]
    [InlineData("night-heron")]
    [InlineData("mute-swan")]
    public void What_changes_an_answer_is_listed_with_it(string example)
    {
        var before = Environment.CpuUsage.TotalTime;
        InputSweep sweep = new(example, Questionnaire.All);
        var fields = sweep.Fields.Where(InputSweep.IsNumeric).Where((_, i) => i % OneIn == example.Length % OneIn).ToList();
        Assert.True(fields.Count > 10, $"only {fields.Count} values are moved");
        List<string> missing = [];
        var (moved, found) = (0, 0);
        foreach (var field in fields)
        {
            if (sweep.Move(field) is not { } changed) continue;
            moved++;
            foreach (var (question, _) in changed)
            {
                found++;
                if (Concerns.FieldsOf(question, sweep.Outline).All(f => f.Field.Path != field.Path) && field.Path != "motor.thrust") missing.Add($"{question}: {field.Path} is not among its inputs");
                if (!Concerns.QuestionsOf(ThingOf(field.Path), sweep.Outline).Contains(question)) missing.Add($"{question} is not on the panel of {ThingOf(field.Path)} ({field.Path})");
            }
        }

        output.WriteLine($"{moved} of {fields.Count} values moved, {found} answers changed, processor time {(Environment.CpuUsage.TotalTime - before).TotalSeconds:F1} s");
        Assert.Empty(sweep.Faults);
        Assert.True(moved * 10 >= fields.Count * 7, $"only {moved} of {fields.Count} could be moved by themselves");
        Assert.True(found > moved * 2, $"only {found} answers changed");
        Assert.True(missing.Count == 0, "Measure the table anew, see the class. " + string.Join('\n', missing));
    }

    [Fact]
    public void The_whole_table_is_measured()
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable("SCRIBELINE_MEASURE") == "1", "measured on demand");
        var only = Environment.GetEnvironmentVariable("SCRIBELINE_QUESTIONS")?.Split(',');
        var examples = Environment.GetEnvironmentVariable("SCRIBELINE_EXAMPLES")?.Split(',') ?? Examples;
        var questions = Questionnaire.All.Where(q => only?.Contains(q.Id) != false).ToList();
        Dictionary<(string Question, string Pattern), ConcernWeight> measured = [];
        HashSet<string> unmoved = [], movedOnce = [];
        var clock = Stopwatch.StartNew();
        foreach (var example in examples)
        {
            InputSweep sweep = new(example, questions);
            foreach (var field in sweep.Fields)
            {
                var pattern = Concerns.PatternOf(field.Path);
                var changes = new[] { sweep.Move(field), sweep.Move(field, wide: true) };
                if (changes.Any(c => c is not null)) movedOnce.Add(pattern);
                else if (!InputSweep.IsLabel(field)) unmoved.Add(pattern);
                foreach (var (question, weight) in changes.OfType<IReadOnlyList<(string Question, ConcernWeight Weight)>>().SelectMany(c => c))
                    measured[(question, pattern)] = (ConcernWeight)Math.Max((int)measured.GetValueOrDefault((question, pattern)), (int)weight);
            }

            output.WriteLine(string.Concat(sweep.Faults.Select(f => f + "\n")));
            output.WriteLine($"{example}: {sweep.Fields.Count} values, {clock.Elapsed.TotalSeconds:F0} s so far, processor time {Environment.CpuUsage.TotalTime.TotalSeconds:F0} s");
        }

        // What cannot be moved by itself, such as the number of pins whose places are listed, is listed with the rest of its thing.
        foreach (var pattern in unmoved.Except(movedOnce))
        {
            var thing = pattern[..(pattern.LastIndexOf('.') + 1)];
            foreach (var question in measured.Keys.Where(m => thing.Length > 0 && m.Pattern.StartsWith(thing, StringComparison.Ordinal)).Select(m => m.Question).Distinct().ToList())
                measured[(question, pattern)] = ConcernWeight.Beside;
        }

        output.WriteLine($"never moved by themselves: {string.Join(", ", unmoved.Except(movedOnce).Order(StringComparer.Ordinal))}");
        output.WriteLine($"in the table and not found: {string.Join(", ", Concerns.All.Where(c => questions.Exists(q => q.Id == c.Question) && !measured.ContainsKey((c.Question, c.Pattern))).Select(c => $"{c.Question} {c.Pattern}"))}");
        var kept = Concerns.All.Where(c => (examples.Length < Examples.Length || !questions.Exists(q => q.Id == c.Question)) && Questionnaire.Named(c.Question) is not null).Select(c => (c.Question, c.Pattern, c.Weight));
        var rows = kept.Concat(measured.Select(m => (m.Key.Question, m.Key.Pattern, Weight: m.Value))).GroupBy(r => (r.Question, r.Pattern), (key, same) => (key.Question, key.Pattern, Weight: same.Max(r => r.Weight))).OrderBy(r => r.Question, StringComparer.Ordinal).ThenBy(r => r.Pattern, StringComparer.Ordinal);
        Approved.Check("question,pattern,weight\n" + string.Concat(rows.Select(r => $"{r.Question},{r.Pattern},{r.Weight.ToString().ToLowerInvariant()}\n")), Table);
    }

    // The panel a value is found on: the thing of the list that holds it, or that of the whole design.
    private static string ThingOf(string path) => path[..Math.Max(0, path.IndexOf('.', StringComparison.Ordinal))];

    private static OutlineMap Whole(string example)
    {
        var reading = DesignFile.Read(Path.Combine(Run.Examples, example, "rocket.yaml"));
        return DesignOutline.Of(reading.Text, reading.Named.ToDictionary(n => n.Key, n => File.ReadAllText(n.Path)))!;
    }
}
