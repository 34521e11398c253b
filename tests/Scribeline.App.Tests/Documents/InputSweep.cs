using System.Globalization;
using System.Text.RegularExpressions;
using Scribeline.App.Documents;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Tables;
using Scribeline.Store;

namespace Scribeline.App.Tests.Documents;

/// <summary>
/// Moves each value of an example by itself, in the text that holds it, asks every question again and tells which answers are others. Knows
/// nothing of the table it is held against.
/// </summary>
internal sealed partial class InputSweep
{
    // Beyond the last digits of iterated results, which another path through the same numbers may change.
    private const double Rounding = 1e-6;

    private const double Step = 0.02, WideStep = 0.15;

    private readonly string file;
    private readonly string text;
    private readonly IReadOnlyList<NamedFile> named;
    private readonly Dictionary<string, string> texts;
    private readonly IReadOnlyList<Question> questions;
    private readonly ResultCache cache = new(depth: 24);
    private readonly Answer[] before;

    public InputSweep(string example, IReadOnlyList<Question> questions)
    {
        file = Path.Combine(Run.Examples, example, "rocket.yaml");
        text = File.ReadAllText(file);
        this.questions = questions;
        named = [.. DesignFile.Read(file).Named];
        texts = named.ToDictionary(n => n.Path, n => File.ReadAllText(n.Path));
        Outline = DesignOutline.Of(text, named.ToDictionary(n => n.Key, n => texts[n.Path]))!;
        before = Answers(text, texts)!;
    }

    /// <summary>Values at which a question was not answered but broke down: faults of the program.</summary>
    public List<string> Faults { get; } = [];

    /// <summary>All values of the example.</summary>
    public OutlineMap Outline { get; }

    /// <summary>Everything typed in the example that can be moved, and one point of the thrust table.</summary>
    public IReadOnlyList<OutlineField> Fields =>
    [
        .. Outline.All.SelectMany(m => m.Fields).Where(f => f.Typed is not null && !f.Names && f.Path is not ("name" or "display" or "motor" or "site" or "weather" or "motor.thrust" or "motor.name" or "site.name")),
        .. named.Where(n => n.Key == "motor.thrust").Select(_ => new OutlineField("motor.thrust", "thrust", "", OutlineKind.Quantity, "")),
    ];

    /// <summary>Whether a value is only a word of the builder's, which no answer rests on.</summary>
    public static bool IsLabel(OutlineField field) => field.Word is "source" or "name" or "what" or "date" or "scribe line" or "scribeline";

    /// <summary>Whether a value is a number.</summary>
    public static bool IsNumeric(OutlineField field) => field.Kind is OutlineKind.Quantity or OutlineKind.Count || field.Path == "motor.thrust";

    /// <summary>Moves one value and tells which answers changed, and by how much against its own change.</summary>
    /// <param name="field">The value.</param>
    /// <param name="wide">Whether a large step is tried instead of a small one.</param>
    /// <returns>Null where it cannot be moved by itself: every step makes a design that contradicts itself.</returns>
    public IReadOnlyList<(string Question, ConcernWeight Weight)>? Move(OutlineField field, bool wide = false)
    {
        foreach (var (value, share) in Candidates(field, wide ? WideStep : Step))
        {
            if (Moved(field, value) is not { } moved) continue;
            Answer[]? after;
            try
            {
                after = Answers(moved.Own, moved.Texts);
            }
            catch (Exception fault) when (fault is InvalidOperationException or ArgumentException or AggregateException or IndexOutOfRangeException or KeyNotFoundException)
            {
                Faults.Add($"{field.Path}: {value}: {(fault as AggregateException)?.InnerException ?? fault}");
                continue;
            }

            if (after is null) continue;
            return [.. questions.Select((q, i) => (q.Id, Weight: Change(before[i], after[i], share))).Where(q => q.Weight is not null).Select(q => (q.Id, q.Weight!.Value))];
        }

        return null;
    }

    private Answer[]? Answers(string own, Dictionary<string, string> held)
    {
        var reading = DesignFile.ReadText(own, file, held);
        return reading.Good && Studies.Of(reading.Design!, 1, cache) is { Problems.Count: 0, Nominal: { } study } ? [.. questions.Select(q => q.Ask(study))] : null;
    }

    private (string Own, Dictionary<string, string> Texts)? Moved(OutlineField field, string value)
    {
        var holder = named.FirstOrDefault(n => field.Path.StartsWith(n.Key + ".", StringComparison.Ordinal) && n.Key != "motor.thrust");
        if (field.Path == "motor.thrust")
        {
            holder = named.First(n => n.Key == "motor.thrust");
            var middle = ThrustText.Rows(texts[holder.Path], null).Count / 2;
            var row = ThrustText.Rows(texts[holder.Path], null)[middle];
            return Replaced(ThrustText.Replace(texts[holder.Path], null, middle, true, Number(double.Parse(row.Thrust, CultureInfo.InvariantCulture) * double.Parse(value, CultureInfo.InvariantCulture))));
        }

        return Replaced(DesignText.Replace(holder is null ? text : texts[holder.Path], holder is null ? field.Path : field.Path[(holder.Key.Length + 1)..], value));

        (string, Dictionary<string, string>)? Replaced(TextChange change) => change.Problem is not null ? null
            : holder is null ? (change.Text, texts)
            : (text, new(texts) { [holder.Path] = change.Text });
    }

    // What may be typed instead, nearest first, with the share by which that moves the value.
    private static IEnumerable<(string Value, double Share)> Candidates(OutlineField field, double step)
    {
        if (field.Path == "motor.thrust") return [(Number(1 + step), step)];
        var typed = field.Typed!;
        if (field.Kind == OutlineKind.Count)
        {
            var count = int.Parse(typed, CultureInfo.InvariantCulture);
            return new[] { 1, -1, 2, -2 }.Select(by => (Number(count + by), Math.Abs((double)by / count)));
        }

        if (field.Word == "adhesive") return Adhesive.All.Select(a => a.Name).Where(a => a != typed).Take(4).Select(a => (a, 1.0));
        if (field.Kind is OutlineKind.Word or OutlineKind.YesNo) return (field.Kind == OutlineKind.YesNo ? ["yes", "no"] : field.Words.AsEnumerable()).Where(w => w != typed).Take(6).Select(w => (w, 1.0));
        if (FirstNumber().Match(typed) is not { Success: true } number || (!IsNumeric(field) && typed.Any(char.IsLetter) && field.Words.Contains(typed)))
            return field.Words.Where(w => w != typed).Take(6).Select(w => (w, 1.0));
        var value = Value(number);
        return new[] { step, -step, step / 10, -step / 10, step / 100, -step / 100 }
            .Select(s => (typed[..number.Index] + Number(value == 0 ? s * 10 : Math.Round(value * (1 + s), 9)) + typed[(number.Index + number.Length)..], Math.Abs(s)))
            .Concat(IsNumeric(field) ? [] : field.Words.Where(w => w != typed).Take(4).Select(w => (w, 1.0)));
    }

    private static double Value(Match number)
    {
        double Group(string name) => number.Groups[name].Success ? double.Parse(number.Groups[name].Value, CultureInfo.InvariantCulture) : 0;
        return number.Groups["over"].Success ? Group("whole") + (Group("over") / Group("under")) : Group("plain");
    }

    private static ConcernWeight? Change(Answer before, Answer after, double share)
    {
        if (before.Verdict != after.Verdict || before.Findings.Count != after.Findings.Count) return ConcernWeight.Much;
        var most = before.Findings.Zip(after.Findings).Select(f => f.First.Name != f.Second.Name ? 1 : Math.Max(
            Share(f.First.Value, f.Second.Value, f.First.Limit?.Value ?? 0), Share(f.First.Limit?.Value ?? 0, f.Second.Limit?.Value ?? 0, 0))).DefaultIfEmpty().Max();
        if (most > Rounding) return most / share >= 0.1 ? ConcernWeight.Much : most / share >= 0.01 ? ConcernWeight.Some : ConcernWeight.Little;
        return before.Missing.SequenceEqual(after.Missing) && Same(before.Tables, after.Tables) ? null : ConcernWeight.Little;
    }

    private static bool Same(IReadOnlyList<AnswerTable> before, IReadOnlyList<AnswerTable> after) =>
        before.Count == after.Count && before.Zip(after).All(t => t.First.Rows.Count == t.Second.Rows.Count
            && t.First.Rows.Zip(t.Second.Rows).All(r => r.First.Verdict == r.Second.Verdict && r.First.Cells.Zip(r.Second.Cells).All(c => c.First.Words == c.Second.Words && Share(c.First.Value ?? 0, c.Second.Value ?? 0, 0) <= Rounding)));

    // Change against the value or its limit, whichever is larger.
    private static double Share(double before, double after, double limit)
    {
        if (double.IsNaN(before) || double.IsNaN(after)) return double.IsNaN(before) == double.IsNaN(after) ? 0 : 1;
        var size = Math.Max(Math.Max(Math.Abs(before), Math.Abs(after)), Math.Abs(limit));
        return size < 1e-12 ? 0 : Math.Abs(after - before) / size;
    }

    private static string Number(double value) => value.ToString("0.#########", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?:(?<whole>\d+)[- ])?(?<over>\d+)/(?<under>\d+)|-?(?<plain>-?\d+(?:\.\d+)?)")]
    private static partial Regex FirstNumber();
}
