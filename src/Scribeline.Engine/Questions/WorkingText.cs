using System.Globalization;

namespace Scribeline.Engine.Questions;

/// <summary>How the steps of a working are written, the same on every face.</summary>
public static class WorkingText
{
    /// <summary>A step on one line.</summary>
    public static string Equation(WorkingStep step)
    {
        var formula = step.Kind == StepKind.Formula ? $"{step.Formula} = " : "";
        return $"{step.Symbol} = {formula}{Number(step.Value)} {step.Unit}".TrimEnd();
    }

    /// <summary>A value as a pocket calculator shows it: seven significant digits, powers of ten where it is very small or large.</summary>
    public static string Number(double value)
    {
        if (double.IsNaN(value)) return "not known";
        var size = Math.Abs(value);
        return size is 0 or (>= 1e-4 and < 1e9)
            ? value.ToString(size == 0 ? "0" : Fixed(size), CultureInfo.InvariantCulture)
            : value.ToString("0.######E0", CultureInfo.InvariantCulture);
    }

    private static string Fixed(double size)
    {
        var places = Math.Max(0, 6 - (int)Math.Floor(Math.Log10(size)));
        return places == 0 ? "0" : "0." + new string('#', places);
    }
}
