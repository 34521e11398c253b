using System.Globalization;
using System.Text.RegularExpressions;

namespace Scribeline.Engine.Quantities;

/// <summary>A screw thread by name: <c>#2-56</c>, <c>1/4-20</c>, <c>M4</c>, <c>M4x0.7</c>.</summary>
/// <param name="Size">Size before the pitch: <c>#2</c>, <c>1/4</c>, <c>M4</c>.</param>
/// <param name="Pitch">Threads per inch, or mm for metric threads; empty for the coarse metric pitch.</param>
public sealed partial record ThreadName(string Size, string Pitch) : IReadable<ThreadName>
{
    /// <inheritdoc/>
    public static ValueList<string> Examples => ["#2-56", "1/4-20", "M4", "M4x0.7"];

    /// <summary>Whether it is an ISO metric thread.</summary>
    public bool Metric => Size[0] == 'M';

    /// <summary>As a designation: <c>#2-56</c>, <c>M4x0.7</c>, <c>M4</c>.</summary>
    public string Designation => Pitch.Length == 0 ? Size : Size + (Metric ? "x" : "-") + Pitch;

    /// <summary>Major diameter by name, m: 0.060 in + 0.013 in per number for numbered sizes (ASME B1.1).</summary>
    public double MajorDiameter =>
        Size[0] == '#' ? (0.060 + (0.013 * Number(Size[1..]))) * 0.0254
        : Metric ? Number(Size[1..]) / 1000
        : Size.Split('/') is [var above, var below] ? Number(above) / Number(below) * 0.0254
        : Number(Size) * 0.0254;

    /// <summary>Reads a thread's name; numbered sizes may leave out the number sign.</summary>
    public static Reading<ThreadName> Read(string text, string at = "")
    {
        var plain = Letters.Plain(text).Trim();
        if (NumberSize().Match(plain) is { Success: true } number) return new ThreadName("#" + number.Groups[1].Value, number.Groups[2].Value);
        if (FractionSize().Match(plain) is { Success: true } fraction) return new ThreadName(fraction.Groups[1].Value, fraction.Groups[2].Value);
        if (MetricSize().Match(plain) is { Success: true } metric) return new ThreadName("M" + metric.Groups[1].Value, metric.Groups[2].Value);
        return new TextProblem(0, plain.Length == 0 ? "A thread is missing." : $"'{plain}' is not a thread.", "Write a thread such as \"#2-56\", 1/4-20 or M4x0.7; put quotes round one that begins with #.");
    }

    /// <inheritdoc/>
    public override string ToString() => Designation;

    private static double Number(string digits) => double.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^#?(0|1|2|3|4|5|6|8|10|12)\s*-\s*(\d{2})$")]
    private static partial Regex NumberSize();

    [GeneratedRegex(@"^(1/4|5/16|3/8|7/16|1/2|9/16|5/8|3/4|7/8|1)\s*-\s*(\d{1,2})$")]
    private static partial Regex FractionSize();

    [GeneratedRegex(@"^[Mm](\d{1,2}(?:\.\d)?)(?:\s*[xX]\s*(\d(?:\.\d{1,2})?))?$")]
    private static partial Regex MetricSize();
}
