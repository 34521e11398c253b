using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>Gathers problems while a vehicle is looked over.</summary>
internal sealed class Findings
{
    private readonly List<Problem> problems = [];

    public ValueList<Problem> All => problems.ToValueList();

    /// <summary>Notes a problem unless something holds. NaN never holds.</summary>
    public bool Require(bool holds, string at, FormattableString message, FormattableString? suggestion = null)
    {
        if (!holds) problems.Add(new(at, message.ToString(CultureInfo.InvariantCulture), suggestion?.ToString(CultureInfo.InvariantCulture) ?? ""));
        return holds;
    }

    /// <summary>Notes a problem unless a dimension is a number above 0.</summary>
    public bool Positive(double value, string at, string what) =>
        Require(value > 0 && double.IsFinite(value), at, $"The {what} must be above 0, not {Mm(value)}.");

    /// <summary>A length as messages show it.</summary>
    public static string Mm(double metres) => (1000 * metres).ToString("0.## mm", CultureInfo.InvariantCulture);
}
