using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns a typed canopy into its drag area and nominal diameter.</summary>
internal static class CanopyResolver
{
    // Only to guess the size of a canopy of unknown type from its drag area, for the time it takes to fill (Knacke 1991, table 5-1, from memory).
    private const double FlatCircularDrag = 0.775;

    /// <summary>The canopy; null where what is needed is missing (named in <paramref name="missing"/>).</summary>
    /// <param name="design">As typed.</param>
    /// <param name="part">Name of the part it lies in.</param>
    /// <param name="draw">Value to take for a measure.</param>
    /// <param name="missing">Added to.</param>
    public static Canopy? Resolve(CanopyDesign design, string part, Func<IMeasure, double> draw, List<string> missing) =>
        Sized(design, part, draw, missing) is not { } canopy ? null : canopy with
        {
            FillConstant = design.FillConstant is { } typed ? draw(typed) : canopy.Kind?.FillConstant,
            Lines = Lines(design.Lines, draw),
            Strength = design.Strength is { } strength ? draw(strength) : null,
            Mass = design.Mass is { } mass ? draw(mass) : null,
            At = design.At,
        };

    private static Canopy? Sized(CanopyDesign design, string part, Func<IMeasure, double> draw, List<string> missing)
    {
        var kind = CanopyKind.Of(design.Type);
        if (design.DragArea is { } area)
        {
            var measured = draw(area);
            var cloth = design.Diameter is { } d ? Cloth(design, kind, draw, draw(d)) : measured / (kind?.Drag ?? FlatCircularDrag);
            return new(design.Name, kind, measured, ClothArea.NominalDiameter(cloth), part, area.Known);
        }

        if (design.Diameter is not { } diameter)
        {
            missing.Add($"stowed: {design.Name}: diameter");
            return null;
        }

        var D = draw(diameter);
        var S0 = Cloth(design, kind, draw, D);
        var whole = design.SpillHole is { } hole ? ClothArea.DragAreaWithHole(1, S0, ClothArea.Disc(draw(hole))) / S0 : 1;
        if (design.DragCoefficient is { } coefficient)
        {
            var reference = design.ReferenceArea == ReferenceAreaWord.Nominal ? S0 : ClothArea.Disc(D);
            return new(design.Name, kind, draw(coefficient) * reference * whole, ClothArea.NominalDiameter(S0), part, coefficient.Known);
        }

        if (kind is null)
        {
            missing.Add($"stowed: {design.Name}: drag coefficient, or a measured drag area");
            return null;
        }

        return new(design.Name, kind, kind.Drag * S0 * whole, ClothArea.NominalDiameter(S0), part, Basis.Estimated);
    }

    // S0: all of the cloth, from what was measured across it.
    private static double Cloth(CanopyDesign design, CanopyKind? kind, Func<IMeasure, double> draw, double D) => design switch
    {
        { Sides: { } sides } => ClothArea.Polygon(sides, D),
        { StripWidth: { } width } => ClothArea.Cross(D, draw(width)),
        { ReferenceArea: ReferenceAreaWord.Mouth } => ClothArea.Hemisphere(D),
        { ReferenceArea: ReferenceAreaWord.Projected } => ClothArea.Disc(D / (kind ?? Canopy.FlatCircular).Projected),
        { ReferenceArea: ReferenceAreaWord.Constructed } => ClothArea.Disc(D / (kind ?? Canopy.FlatCircular).Constructed),
        _ => ClothArea.Disc(D),
    };

    private static CanopyLines? Lines(LinesDesign? lines, Func<IMeasure, double> draw)
    {
        if (lines is null) return null;
        var known = lines.Material is { } material ? CordMaterial.Find(material) : null;
        return new(
            lines.Count,
            lines.Length is { } length ? draw(length) : null,
            lines.Strength is { } strength ? draw(strength) : known?.Strength,
            lines.Stretch is { } stretch ? draw(stretch) : known?.Stretch,
            lines.Strength is null ? known?.Source ?? "" : "design");
    }
}
