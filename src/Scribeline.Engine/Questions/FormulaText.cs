using System.Text.RegularExpressions;

namespace Scribeline.Engine.Questions;

/// <summary>Turns the text of a computing expression into the notation shown to people.</summary>
public static partial class FormulaText
{
    /// <summary>Functions in lower case, π as pi, one space between words.</summary>
    public static string Shown(string expression)
    {
        var text = Spaces().Replace(expression, " ").Replace("Math.", "", StringComparison.Ordinal);
        text = Functions().Replace(text, m => m.Value.ToLowerInvariant());
        return PiName().Replace(text, "pi");
    }

    /// <summary>The names a shown formula uses, without functions and pi.</summary>
    public static IEnumerable<string> Names(string formula) =>
        Identifiers().Matches(formula).Where(m => !Known.Contains(m.Value)).Select(m => m.Value).Distinct();

    /// <summary>The expression with one name replaced by another.</summary>
    public static string Rename(string expression, string name, string by) =>
        Identifiers().Replace(expression, m => m.Value == name ? by : m.Value);

    private static readonly HashSet<string> Known = ["sqrt", "pow", "exp", "log", "sin", "cos", "tan", "asin", "acos", "atan", "abs", "min", "max", "pi"];

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"\b(Sqrt|Pow|Exp|Log|Sin|Cos|Tan|Asin|Acos|Atan|Abs|Min|Max)(?=\()")]
    private static partial Regex Functions();

    [GeneratedRegex(@"\bPI\b")]
    private static partial Regex PiName();

    [GeneratedRegex(@"[\p{L}_][\p{L}\p{N}_]*")]
    private static partial Regex Identifiers();
}
