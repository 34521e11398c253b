using System.Runtime.CompilerServices;
namespace Scribeline.Engine.Questions;

/// <summary>
/// The steps from the inputs to an answer, recorded as they are computed. The formula of a step is the text of the very expression
/// that computed it, so the two cannot differ; its names are the symbols of earlier steps.
/// </summary>
public sealed class Working
{
    private readonly List<WorkingStep> steps = [];

    /// <summary>The steps so far, in order.</summary>
    public IReadOnlyList<WorkingStep> Steps => steps;

    /// <summary>Records an input.</summary>
    /// <param name="symbol">Name used in later formulas: the local variable it is kept in.</param>
    /// <param name="value">SI.</param>
    /// <param name="unit">SI unit as text, empty for a ratio.</param>
    /// <param name="meaning">In plain words.</param>
    /// <param name="source">Where the value comes from.</param>
    /// <returns>The value.</returns>
    public double Given(string symbol, double value, string unit, string meaning, string source) =>
        Add(new WorkingStep(StepKind.Given, symbol, "", value, unit, meaning, source));

    /// <summary>Records a short formula with its value.</summary>
    /// <param name="symbol">Name used in later formulas: the local variable it is kept in.</param>
    /// <param name="value">The expression, over symbols recorded before, in SI.</param>
    /// <param name="unit">SI unit as text.</param>
    /// <param name="meaning">In plain words.</param>
    /// <param name="source">Publication with equation, or "definition".</param>
    /// <param name="expression">Written by the compiler.</param>
    /// <returns>The value.</returns>
    public double Step(
        string symbol, double value, string unit, string meaning, string source, [CallerArgumentExpression(nameof(value))] string expression = "") =>
        Add(new WorkingStep(StepKind.Formula, symbol, expression, value, unit, meaning, source));

    /// <summary>Records what a long computation gave, which no short formula can show.</summary>
    /// <param name="symbol">Name used in later formulas.</param>
    /// <param name="value">SI.</param>
    /// <param name="unit">SI unit as text.</param>
    /// <param name="meaning">In plain words.</param>
    /// <param name="method">Method and source.</param>
    /// <returns>The value.</returns>
    public double Simulated(string symbol, double value, string unit, string meaning, string method) =>
        Add(new WorkingStep(StepKind.Simulated, symbol, "", value, unit, meaning, method));

    /// <summary>Records a short formula whose local variables stand for numbered symbols, as when one formula serves many pieces.</summary>
    /// <param name="symbol">Name used in later formulas.</param>
    /// <param name="value">The expression, over locals, in SI.</param>
    /// <param name="unit">SI unit as text.</param>
    /// <param name="meaning">In plain words.</param>
    /// <param name="source">As in <see cref="Step"/>.</param>
    /// <param name="local">Which symbol a local stands for.</param>
    /// <param name="expression">Written by the compiler.</param>
    /// <returns>The value.</returns>
    public double StepOf(
        string symbol,
        double value,
        string unit,
        string meaning,
        string source,
        ReadOnlySpan<(string Local, string Symbol)> local,
        [CallerArgumentExpression(nameof(value))] string expression = "")
    {
        foreach (var (name, standsFor) in local) expression = FormulaText.Rename(expression, name, standsFor);
        return Add(new WorkingStep(StepKind.Formula, symbol, expression, value, unit, meaning, source));
    }

    /// <summary>Records a sum of many given terms, each under its own symbol.</summary>
    /// <param name="symbol">Name used in later formulas.</param>
    /// <param name="terms">Symbols recorded before.</param>
    /// <param name="unit">SI unit as text.</param>
    /// <param name="meaning">In plain words.</param>
    /// <param name="source">As in <see cref="Step"/>.</param>
    /// <returns>The sum.</returns>
    public double Sum(string symbol, IReadOnlyList<string> terms, string unit, string meaning, string source)
    {
        var value = terms.Sum(Of);
        return Add(new WorkingStep(StepKind.Formula, symbol, string.Join(" + ", terms), value, unit, meaning, source));
    }

    /// <summary>Records a mean of many given values by given weights, each under its own symbol.</summary>
    /// <param name="symbol">Name used in later formulas.</param>
    /// <param name="weights">Symbols recorded before.</param>
    /// <param name="values">Symbols recorded before, as many.</param>
    /// <param name="unit">SI unit as text.</param>
    /// <param name="meaning">In plain words.</param>
    /// <param name="source">As in <see cref="Step"/>.</param>
    /// <returns>The mean.</returns>
    public double Mean(string symbol, IReadOnlyList<string> weights, IReadOnlyList<string> values, string unit, string meaning, string source)
    {
        double total = 0, moment = 0;
        for (var i = 0; i < weights.Count; i++)
        {
            var weight = Of(weights[i]);
            total += weight;
            moment += weight * Of(values[i]);
        }

        var formula = $"({string.Join(" + ", weights.Zip(values, (w, v) => $"{w} * {v}"))}) / ({string.Join(" + ", weights)})";
        return Add(new WorkingStep(StepKind.Formula, symbol, formula, moment / total, unit, meaning, source));
    }

    private double Of(string symbol) => steps.Last(s => s.Symbol == symbol).Value;

    private double Add(WorkingStep step)
    {
        steps.Add(step);
        return step.Value;
    }
}

/// <summary>How the value of a step came about.</summary>
public enum StepKind
{
    /// <summary>Read from the design, a table or a record.</summary>
    Given,

    /// <summary>Computed by the shown formula.</summary>
    Formula,

    /// <summary>Result of a simulation or search described in words.</summary>
    Simulated,
}

/// <summary>A step of a working.</summary>
/// <param name="Kind">How the value came about.</param>
/// <param name="Symbol">Its name in later formulas.</param>
/// <param name="Expression">The computing expression as compiled; empty unless a formula.</param>
/// <param name="Value">SI.</param>
/// <param name="Unit">SI unit as text.</param>
/// <param name="Meaning">In plain words.</param>
/// <param name="Source">Publication, file, table or method.</param>
public sealed record WorkingStep(StepKind Kind, string Symbol, string Expression, double Value, string Unit, string Meaning, string Source)
{
    /// <summary>The formula as shown: arithmetic over symbols with + - * / ( ), sqrt, pow, exp, log, sin, cos, tan, atan, abs, min, max and pi.</summary>
    public string Formula => FormulaText.Shown(Expression);
}
