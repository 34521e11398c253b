using System.Globalization;
using System.Text.RegularExpressions;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A battery: a map, or one line such as <c>1S lithium 300 mAh</c> or <c>9 V alkaline</c>.</summary>
public sealed partial record Supply : Placed, IReadable<Supply>
{
    [Key("What it is made of, such as lithium or alkaline.")]
    public string? Chemistry { get; init; }

    [Key("Cells in series.", Sign = Sign.Above)]
    public int? Cells { get; init; }

    [Key("Voltage without load.", Sign = Sign.Above)]
    public Measure<ElectricPotential>? Voltage { get; init; }

    [Key("Resistance of the whole battery, cold.", Sign = Sign.NotBelow)]
    public Measure<ElectricResistance>? InternalResistance { get; init; }

    [Key("Capacity.", Sign = Sign.Above)]
    public Measure<ElectricCharge>? Capacity { get; init; }

    /// <inheritdoc/>
    public static ValueList<string> Examples => ["1S lithium 300 mAh", "9 V alkaline"];

    /// <inheritdoc/>
    public static Reading<Supply> Read(string text, string at = "")
    {
        var line = Line().Match(text.Trim());
        if (!line.Success) return new TextProblem(0, $"'{text.Trim()}' does not say cells, chemistry and capacity.", "Write it as 1S lithium 300 mAh, or as a map of chemistry, voltage, internal resistance and capacity.");
        var voltage = line.Groups["volts"].Success ? Measure.Read<ElectricPotential>(line.Groups["volts"].Value, at: at) : null;
        var capacity = line.Groups["charge"].Success ? Measure.Read<ElectricCharge>(line.Groups["charge"].Value, at: at) : null;
        if ((voltage?.Problem ?? capacity?.Problem) is { } problem) return problem;
        return new Supply
        {
            At = at,
            Cells = line.Groups["cells"].Success ? int.Parse(line.Groups["cells"].Value, CultureInfo.InvariantCulture) : null,
            Chemistry = line.Groups["kind"].Value.Trim(),
            Voltage = voltage?.Value,
            Capacity = capacity?.Value,
        };
    }

    [GeneratedRegex(@"^(?:(?<cells>[1-9]\d?)\s*[sS]|(?<volts>[\d.]+\s*m?V))\s+(?<kind>[A-Za-z][A-Za-z -]*?)(?:\s+(?<charge>[\d.]+\s*m?Ah))?$")]
    private static partial Regex Line();
}
