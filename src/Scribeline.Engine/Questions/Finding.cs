namespace Scribeline.Engine.Questions;

/// <summary>One value of an answer.</summary>
/// <param name="Name">In plain words, unique within the answer.</param>
/// <param name="Value">SI (see <paramref name="Unit"/>); NaN only where <paramref name="Verdict"/> is open.</param>
/// <param name="Unit">What is measured, which decides how a face shows it.</param>
/// <param name="Limit">Bound, or null for a value that is only told.</param>
/// <param name="Spread">Over the tolerances of the design, or null when nothing was sampled.</param>
/// <param name="Verdict">Against the limit; clear where there is none.</param>
public sealed record Finding(string Name, double Value, Unit Unit, Limit? Limit = null, Spread? Spread = null, Verdict Verdict = Verdict.Clear)
{
    /// <summary>Mildest verdict it may have, whatever its value; see <see cref="Taught"/>.</summary>
    internal Verdict Mildest { get; init; } = Verdict.Clear;

    /// <summary>A finding judged against its limit without spread.</summary>
    public static Finding Of(string name, double value, Unit unit, Limit? limit = null) =>
        new(name, value, unit, limit, null, Judge(value, limit, null));

    /// <summary>The same finding with the spread of sampled cases, judged again.</summary>
    public Finding With(Spread spread) =>
        this with { Spread = spread, Verdict = Verdict == Verdict.Open ? Verdict.Open : Graver(Mildest, Judge(Value, Limit, spread.Meets)) };

    private static Verdict Graver(Verdict a, Verdict b) => a > b ? a : b;

    private static Verdict Judge(double value, Limit? limit, double? probability) =>
        double.IsNaN(value) ? Verdict.Open : limit?.Judge(value, probability) ?? Verdict.Clear;
}
