using System.Globalization;

namespace Scribeline.Engine.Questions;

/// <summary>How a value is written for people: in the system the design displays, the other one beside it on request.</summary>
public static class Shown
{
    /// <summary>A value with its unit, for example "31.2 m/s".</summary>
    /// <param name="value">SI.</param>
    /// <param name="unit">What it measures.</param>
    /// <param name="inch">True for inch and pound units.</param>
    public static string Text(double value, Unit unit, bool inch)
    {
        if (double.IsNaN(value)) return "not known";
        if (unit == Unit.Share && value is > 0.9994 and < 1) return "> 99.9 %";
        var scale = Scale(unit, inch, value);
        var number = Number((value * scale.Factor) + scale.Offset, scale.Digits, scale.Decimals);
        return scale.Symbol.Length == 0 ? number : scale.Symbol is "°" or "%" ? number + (scale.Symbol == "%" ? " %" : "°") : $"{number} {scale.Symbol}";
    }

    /// <summary>The unit's symbol in the chosen system; the factor and offset that turn SI into it.</summary>
    /// <param name="unit">What is measured.</param>
    /// <param name="inch">True for inch and pound units.</param>
    /// <param name="around">A typical value, SI, which decides between g and kg.</param>
    public static (string Symbol, double Factor, double Offset) In(Unit unit, bool inch, double around)
    {
        var scale = Scale(unit, inch, around);
        return (scale.Symbol, scale.Factor, scale.Offset);
    }

    private readonly record struct Scaling(string Symbol, double Factor, int Digits, int Decimals, double Offset = 0);

    // Factors are the exact international definitions (NIST SP 811): 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N.
    private static Scaling Scale(Unit unit, bool inch, double value) => unit switch
    {
        Unit.Ratio => new("", 1, 3, 2),
        Unit.Share => new("%", 100, 3, 1),
        Unit.Calibre => new("cal", 1, 3, 2),
        Unit.Count => new("", 1, 6, 0),
        Unit.Length => inch ? new("in", 1 / 0.0254, 5, 2) : new("mm", 1000, 5, 1),
        Unit.Height => inch ? new("ft", 1 / 0.3048, 5, 0) : new("m", 1, 5, Math.Abs(value) < 100 ? 1 : 0),
        Unit.Mass => inch
            ? Math.Abs(value) < 0.45359237 ? new("oz", 16 / 0.45359237, 4, 2) : new("lb", 1 / 0.45359237, 4, 2)
            : Math.Abs(value) < 1 ? new("g", 1000, 4, 0) : new("kg", 1, 4, 3),
        Unit.Powder => new("g", 1000, 3, 2),
        Unit.Inertia => new("kg·m²", 1, 4, 6),
        Unit.Time => new("s", 1, 4, 2),
        Unit.WorkTime => Math.Abs(value) < 3570 ? new("min", 1.0 / 60, 3, 0) : Math.Abs(value) < 172_800 ? new("h", 1.0 / 3600, 3, 1) : new("days", 1.0 / 86_400, 3, 1),
        Unit.Area => inch ? new("in²", 1 / (0.0254 * 0.0254), 3, 2) : new("cm²", 1e4, 3, 1),
        Unit.Volume => inch ? new("in³", 1 / (0.0254 * 0.0254 * 0.0254), 3, 2) : new("cm³", 1e6, 3, 1),
        Unit.Speed => inch ? new("ft/s", 1 / 0.3048, 4, 1) : new("m/s", 1, 4, 1),
        Unit.Mach => new("", 1, 4, 3),
        Unit.Acceleration => new("g", 1 / 9.80665, 3, 1),
        Unit.Force => inch ? new("lbf", 1 / 4.4482216152605, 4, 1) : new("N", 1, 4, 0),
        Unit.Pressure => inch ? new("psi", 1 / 6894.757293168, 4, 2) : new("kPa", 1e-3, 4, 1),
        Unit.Energy => inch ? new("ft·lbf", 1 / 1.3558179483314, 4, 1) : new("J", 1, 4, 1),
        Unit.Angle => new("°", 180 / Math.PI, 3, 1),
        Unit.Frequency => new("Hz", 1, 3, 2),
        Unit.Temperature => inch ? new("°F", 1.8, 4, 0, -459.67) : new("°C", 1, 4, 1, -273.15),
        Unit.Density => new("kg/m³", 1, 4, 3),
        Unit.Impulse => new("N·s", 1, 5, 0),
        Unit.Stiffness => new("N·m²", 1, 3, 0),
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    // At most the given significant digits and decimals: more would claim what the methods cannot give.
    private static string Number(double value, int digits, int decimals)
    {
        var whole = value == 0 ? 1 : (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;
        var places = Math.Clamp(digits - whole, 0, decimals);
        var text = Math.Round(value, places).ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.TrimStart('-').All(c => c is '0' or '.') ? text.TrimStart('-') : text.Replace('-', '−');
    }
}
