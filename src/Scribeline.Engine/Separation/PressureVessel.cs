namespace Scribeline.Engine.Separation;

/// <summary>
/// Stresses of tubes, plates, rods and bonds under the pressure of a charge. Plates: Young and Budynas, Roark's Formulas for Stress and
/// Strain, 7th ed. (from memory); thin plates, t under a quarter of the diameter, deflections under t/2.
/// </summary>
public static class PressureVessel
{
    /// <summary>Hoop stress of a thin tube, Pa: Δp r/t.</summary>
    /// <param name="pressure">Gauge, Pa.</param>
    /// <param name="bore">Inside diameter, m.</param>
    /// <param name="wall">m.</param>
    public static double Hoop(double pressure, double bore, double wall) => pressure * bore / (2 * wall);

    /// <summary>Axial stress of a closed thin tube, Pa: Δp r/(2t).</summary>
    /// <inheritdoc cref="Hoop"/>
    public static double Axial(double pressure, double bore, double wall) => pressure * bore / (4 * wall);

    /// <summary>Force on a plate, N.</summary>
    /// <param name="pressure">Gauge, Pa.</param>
    /// <param name="diameter">m.</param>
    public static double Load(double pressure, double diameter) => pressure * Math.PI / 4 * diameter * diameter;

    /// <summary>Bending stress of a plate held at its rim but free to turn there, Pa: 3(3 + ν)/8 Δp (a/t)².</summary>
    /// <param name="pressure">Gauge, Pa.</param>
    /// <param name="diameter">m.</param>
    /// <param name="thickness">m.</param>
    /// <param name="poisson">ν.</param>
    public static double PlateOnRim(double pressure, double diameter, double thickness, double poisson = 0.2) =>
        3 * (3 + poisson) / 8 * pressure * Math.Pow(diameter / 2 / thickness, 2);

    /// <summary>Bending stress of a plate clamped at its rim, Pa: 0.75 Δp (a/t)².</summary>
    /// <inheritdoc cref="PlateOnRim"/>
    public static double PlateClamped(double pressure, double diameter, double thickness) =>
        0.75 * pressure * Math.Pow(diameter / 2 / thickness, 2);

    /// <summary>
    /// Bending stress of a plate pushed off its rim and held by two rods on a diameter, Pa: 2 Δp (a/t)². Half the load acts at 4a/(3π) from
    /// the line through the rods and bends a section 2a wide.
    /// </summary>
    /// <inheritdoc cref="PlateOnRim"/>
    public static double PlateOnTwoRods(double pressure, double diameter, double thickness) =>
        2 * pressure * Math.Pow(diameter / 2 / thickness, 2);

    /// <summary>Deflection of the centre of a plate held at its rim but free to turn there, m: (5 + ν)/(64(1 + ν)) Δp a⁴/D.</summary>
    /// <param name="pressure">Gauge, Pa.</param>
    /// <param name="diameter">m.</param>
    /// <param name="thickness">m.</param>
    /// <param name="modulus">Young's, Pa.</param>
    /// <param name="poisson">ν.</param>
    public static double PlateDeflection(double pressure, double diameter, double thickness, double modulus, double poisson = 0.2)
    {
        var stiffness = modulus * Math.Pow(thickness, 3) / (12 * (1 - (poisson * poisson)));
        return (5 + poisson) / (64 * (1 + poisson)) * pressure * Math.Pow(diameter / 2, 4) / stiffness;
    }

    /// <summary>Shear of a bond round an edge, Pa: F/(π d h).</summary>
    /// <param name="load">N.</param>
    /// <param name="diameter">m.</param>
    /// <param name="height">Bonded, m.</param>
    public static double BondShear(double load, double diameter, double height) => load / (Math.PI * diameter * height);
}
