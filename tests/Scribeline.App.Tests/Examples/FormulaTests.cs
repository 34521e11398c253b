using NCalc;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Tests.Examples;

/// <summary>
/// Every formula a working shows is arithmetic over values shown before it, and an expression library gets the shown value from it.
/// </summary>
public class FormulaTests
{
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Every_shown_formula_gives_the_shown_value(string example)
    {
        var study = Example.Nominal(example).Flying(120, null, TestContext.Current.CancellationToken);
        var formulas = 0;
        foreach (var question in Questionnaire.All) formulas += Check(question.Ask(study));
        Assert.True(formulas > 40, $"only {formulas} formulas were shown");
    }

    /// <summary>Evaluates every formula of an answer.</summary>
    /// <returns>How many there were.</returns>
    internal static int Check(Answer answer)
    {
        var formulas = 0;
        Dictionary<string, double> known = [];
        foreach (var step in answer.Working.Steps)
        {
            if (step.Kind == StepKind.Formula)
            {
                formulas++;
                var value = Evaluate(step.Formula, known);
                Assert.True(
                    Math.Abs(value - step.Value) <= 1e-9 * Math.Max(1e-12, Math.Abs(step.Value)),
                    $"{answer.Question.Id}: {step.Symbol} = {step.Formula} gives {value}, shown is {step.Value}");
            }

            known[step.Symbol] = step.Value;
        }

        return formulas;
    }

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Every_step_says_what_it_is_and_where_it_comes_from(string example)
    {
        var study = Example.Nominal(example);
        foreach (var question in Questionnaire.All)
        {
            foreach (var step in question.Ask(study).Working.Steps)
            {
                Assert.False(string.IsNullOrWhiteSpace(step.Meaning), $"{question.Id}: {step.Symbol}");
                Assert.False(string.IsNullOrWhiteSpace(step.Source), $"{question.Id}: {step.Symbol}");
            }
        }
    }

    // NCalc calls the natural logarithm Ln; everything else is the same word.
    private static double Evaluate(string formula, Dictionary<string, double> known)
    {
        foreach (var name in FormulaText.Names(formula)) Assert.True(known.ContainsKey(name), $"{name} in {formula} is not shown before it");
        var expression = new Expression(formula.Replace("log(", "ln(", StringComparison.Ordinal), ExpressionOptions.IgnoreCaseAtBuiltInFunctions);
        expression.Parameters["pi"] = Math.PI;
        foreach (var (name, value) in known) expression.Parameters[name] = value;
        return Convert.ToDouble(expression.Evaluate(), System.Globalization.CultureInfo.InvariantCulture);
    }
}
