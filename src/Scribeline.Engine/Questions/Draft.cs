using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>Collects an answer while a question works it out.</summary>
/// <param name="question">The question being answered.</param>
/// <param name="study">What it is asked of.</param>
internal sealed class Draft(Question question, Study study)
{
    private readonly List<Finding> findings = [];
    private readonly List<Plot> plots = [];
    private readonly List<AnswerTable> tables = [];
    private readonly List<GroundMap> maps = [];
    private readonly List<string> notes = [];
    private readonly List<string> missing = [];
    private Basis basis = Basis.Flown;

    /// <summary>The working, recorded as it is computed.</summary>
    public Working Working { get; } = new();

    /// <summary>Adds a value, judged against a limit of the table where one is named.</summary>
    public void Find(string name, double value, Unit unit, string? limit = null) => Find(name, value, unit, limit is null ? null : study.Limits[limit]);

    /// <summary>Adds a value, judged against a given limit.</summary>
    public void Find(string name, double value, Unit unit, Limit? limit) => findings.Add(Finding.Of(name, value, unit, limit));

    /// <summary>Adds a value whose verdict does not follow from a limit.</summary>
    public void Judged(string name, double value, Unit unit, Verdict verdict) => findings.Add(new(name, value, unit, Verdict: verdict));

    /// <summary>Adds a finding as it is.</summary>
    public void Find(Finding finding) => findings.Add(finding);

    /// <summary>Adds a map; it is not made for sampled cases, which nobody looks at.</summary>
    public void Chart(Func<GroundMap> map)
    {
        if (!study.IsSample) maps.Add(map());
    }

    /// <summary>Whether nothing has been found yet.</summary>
    public bool IsEmpty => findings.Count == 0;

    /// <summary>Number of values so far.</summary>
    public int Count => findings.Count;

    /// <summary>Least value judged against a limit, of those added after the first <paramref name="from"/>; NaN for none.</summary>
    public double Weakest(string limit, int from) => findings.Skip(from).Where(f => f.Limit?.Id == limit).Select(f => f.Value).DefaultIfEmpty(double.NaN).Min();

    /// <summary>Adds a remark.</summary>
    public void Note(string sentence) => notes.Add(sentence);

    /// <summary>Names an input that is not there.</summary>
    public void Miss(string input) => missing.Add(input);

    /// <summary>Adds a picture; its data are not made for sampled cases, which nobody looks at.</summary>
    public void Draw(Func<Plot> plot)
    {
        if (!study.IsSample) plots.Add(plot());
    }

    /// <summary>Adds a schedule or list; it is not made for sampled cases, which nobody reads.</summary>
    public void List(Func<AnswerTable> table)
    {
        if (!study.IsSample) tables.Add(table());
    }

    /// <summary>Names how an input that matters is known; the weakest becomes the answer's.</summary>
    public void RestsOn(Basis known)
    {
        if (known < basis) basis = known;
    }

    /// <summary>The answer as collected.</summary>
    public Answer Done() =>
        new(question, findings.ToValueList(), basis, Working, plots.ToValueList(), notes.ToValueList(), missing.ToValueList()) { Tables = tables.ToValueList(), Maps = maps.ToValueList() };
}
