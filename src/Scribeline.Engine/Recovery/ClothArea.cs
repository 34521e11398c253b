namespace Scribeline.Engine.Recovery;

/// <summary>
/// The areas a canopy's coefficient may belong to. Nominal area S0 is all its cloth, vent and slots included (Cockrell, AGARDograph 295,
/// 1987); constructed and projected areas are discs of the made and of the inflated diameter. SI.
/// </summary>
public static class ClothArea
{
    /// <summary>Vent that counts as part of the nominal area of handbook canopies, as a share of it (from memory).</summary>
    public const double HandbookVent = 0.01;

    /// <summary>A disc, m²: S0 of a flat circular canopy by its diameter.</summary>
    /// <param name="diameter">m.</param>
    public static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;

    /// <summary>S0 of a flat regular polygon, m²: (N/4) d² tan(π/N).</summary>
    /// <param name="sides">N, 3 or more.</param>
    /// <param name="acrossFlats">d, side to opposite side (not corner to corner), m.</param>
    public static double Polygon(int sides, double acrossFlats) => sides / 4.0 * acrossFlats * acrossFlats * Math.Tan(Math.PI / sides);

    /// <summary>S0 of a cross of two strips, m²: 2LW - W². The length of an arm is not a diameter.</summary>
    /// <param name="length">L of a strip, m.</param>
    /// <param name="width">W of a strip, m.</param>
    public static double Cross(double length, double width) => (2 * length * width) - (width * width);

    /// <summary>S0 of a hemisphere, m²: πd²/2. Its nominal diameter is √2 times that of its mouth.</summary>
    /// <param name="mouth">d across the mouth, m.</param>
    public static double Hemisphere(double mouth) => Math.PI / 2 * mouth * mouth;

    /// <summary>D0 = √(4 S0/π), m.</summary>
    /// <param name="nominalArea">S0, m².</param>
    public static double NominalDiameter(double nominalArea) => Math.Sqrt(4 * nominalArea / Math.PI);

    /// <summary>The same drag told by another area.</summary>
    /// <param name="coefficient">On the old area.</param>
    /// <param name="oldArea">m².</param>
    /// <param name="newArea">m².</param>
    public static double Rebased(double coefficient, double oldArea, double newArea) => coefficient * oldArea / newArea;

    /// <summary>
    /// Drag area of a canopy with a hole cut in its crown, m²: CD0 (S0 - Sv), only what exceeds the handbook's vent being taken off; for
    /// holes up to a tenth of the area (common practice).
    /// </summary>
    /// <param name="coefficient">CD0 on the nominal area.</param>
    /// <param name="nominalArea">S0, hole included, m².</param>
    /// <param name="holeArea">Sv, m².</param>
    public static double DragAreaWithHole(double coefficient, double nominalArea, double holeArea) =>
        coefficient * (holeArea > HandbookVent * nominalArea ? nominalArea - holeArea : nominalArea);

    /// <summary>Half angle of the cone of the lines, rad: sin φ = Dp/(2 ls).</summary>
    /// <param name="projected">Dp: inflated diameter, m.</param>
    /// <param name="line">ls: length of a line, m, more than half of Dp.</param>
    public static double ConeAngle(double projected, double line) => Math.Asin(projected / (2 * line));

    /// <summary>Load of one line, N: F/(N cos φ).</summary>
    /// <param name="force">F on all of them, N.</param>
    /// <param name="lines">N.</param>
    /// <param name="coneAngle">φ, rad.</param>
    public static double LineLoad(double force, int lines, double coneAngle) => force / (lines * Math.Cos(coneAngle));
}
