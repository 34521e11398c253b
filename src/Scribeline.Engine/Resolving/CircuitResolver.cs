using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>The firing circuit of each altimeter. Nothing stands in for what was not typed, save the nominal voltage of a known cell.</summary>
internal static class CircuitResolver
{
    /// <summary>In the order of the file; motors' own delays have none.</summary>
    public static ValueList<FiringCircuit> Circuits(RocketDesign design, Func<IMeasure, double> draw) =>
        design.Firing.Where(f => f.Altimeter is not null).Select(f => Circuit(f, draw)).ToValueList();

    private static FiringCircuit Circuit(FiringDesign firing, Func<IMeasure, double> draw)
    {
        double? Si(IMeasure? typed) => typed is null ? null : draw(typed);
        var (supply, match) = (firing.Supply, firing.Match);
        var cell = Cell.Find(supply?.Chemistry);
        double? cells = supply?.Cells is { } count && cell is not null ? count * cell.Voltage : null;
        return new(
            firing.Altimeter!, Si(supply?.Voltage) ?? cells, Si(supply?.InternalResistance), Si(firing.LeadResistance), Si(match?.Resistance),
            Si(match?.AllFire), Si(match?.NoFire), Si(match?.TestCurrent), match?.Parallel ?? 1)
        {
            VoltageSource = supply?.Voltage is null && cell is not null ? $"nominal, {cell.Source}" : "design",
        };
    }
}
