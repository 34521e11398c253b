using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns a typed canopy into its drag area and nominal diameter.</summary>
internal static class CanopyResolver
{
    /// <summary>The canopy; null where what is needed is missing (named in <paramref name="missing"/>).</summary>
    /// <param name="design">As typed.</param>
    /// <param name="part">Name of the part it lies in.</param>
    /// <param name="draw">Value to take for a measure.</param>
    /// <param name="missing">Added to.</param>
    public static Canopy? Resolve(CanopyDesign design, string part, Func<IMeasure, double> draw, List<string> missing)
    {
        var kind = CanopyKind.Of(design.Type);
        if (design.DragArea is { } area)
        {
            var measured = draw(area);
            var nominal = design.Diameter is { } d ? draw(d) : Canopy.NominalOf(measured / (kind?.Drag ?? FlatCircularDrag));
            return new(design.Name, kind, measured, nominal, part, area.Known) { FillConstant = Fill(design, kind, draw) };
        }

        if (design.Diameter is not { } diameter)
        {
            missing.Add($"stowed: {design.Name}: diameter");
            return null;
        }

        var D = draw(diameter);
        if (design.DragCoefficient is { } coefficient)
        {
            return new(design.Name, kind, draw(coefficient) * Math.PI * D * D / 4, D, part, coefficient.Known) { FillConstant = Fill(design, kind, draw) };
        }

        if (kind is null)
        {
            missing.Add($"stowed: {design.Name}: drag coefficient, or a measured drag area");
            return null;
        }

        // The table's coefficient belongs to the nominal area: bring a projected diameter back to it.
        var D0 = design.ReferenceArea == ReferenceAreaWord.Projected ? D / ((kind.ProjectedLow + kind.ProjectedHigh) / 2) : D;
        return new(design.Name, kind, kind.Drag * Math.PI * D0 * D0 / 4, D0, part, Basis.Estimated) { FillConstant = Fill(design, kind, draw) };
    }

    // Only to guess the size of a canopy of unknown type from its drag area, for the time it takes to fill (Knacke 1991, table 5-1, from memory).
    private const double FlatCircularDrag = 0.775;

    private static double? Fill(CanopyDesign design, CanopyKind? kind, Func<IMeasure, double> draw) => design.FillConstant is { } typed ? draw(typed) : kind?.FillConstant;
}
