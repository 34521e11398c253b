namespace Scribeline.Engine.Separation;

/// <summary>
/// Stresses round fasteners that must not let go. Edge distance of at least 3 diameters in composites, 2 in metal; pitch at least 4
/// (MIL-HDBK-17-3F, from memory).
/// </summary>
public static class Fastening
{
    /// <summary>Bearing strength of a glass laminate at an edge distance of 3 diameters or more, Pa: an assumption.</summary>
    public const double LaminateBearing = 200e6;

    /// <summary>Shear strength of woven glass epoxy, Pa (NEMA LI 1 grade data, 19 ksi).</summary>
    public const double LaminateShear = 131e6;

    /// <summary>Tensile strength taken for steel of no stated class, Pa: ISO 898-1 class 4.8, from memory.</summary>
    public const double PlainSteel = 420e6;

    /// <summary>Shear strength over tensile strength of screws: common practice.</summary>
    public const double ShearShare = 0.6;

    /// <summary>Withdrawal of one pronged M6 nut from softwood or plywood, N: the low mean of Skorupińska et al., Drvna industrija 73(3), 2022.</summary>
    public const double ProngedNutInPlywood = 1113.2;

    /// <summary>Bearing of a wall under fasteners, Pa: F/(n d t).</summary>
    /// <param name="load">N.</param>
    /// <param name="count">Fasteners sharing it.</param>
    /// <param name="diameter">m.</param>
    /// <param name="wall">m.</param>
    public static double Bearing(double load, int count, double diameter, double wall) => load / (count * diameter * wall);

    /// <summary>Shear of the wall between fasteners and its edge, Pa: F/(2 n e t).</summary>
    /// <param name="load">N.</param>
    /// <param name="count">Fasteners sharing it.</param>
    /// <param name="edge">From the middle of the hole to the edge, m.</param>
    /// <param name="wall">m.</param>
    public static double ShearOut(double load, int count, double edge, double wall) => load / (2 * count * edge * wall);

    /// <summary>Tension in the wall between the holes of a row, Pa: F/((π D - n d) t).</summary>
    /// <param name="load">N.</param>
    /// <param name="count">Holes.</param>
    /// <param name="diameter">Of a hole, m.</param>
    /// <param name="around">Mean circumference of the wall, m.</param>
    /// <param name="wall">m.</param>
    public static double NetTension(double load, int count, double diameter, double around, double wall) => load / ((around - (count * diameter)) * wall);

    /// <summary>Punching of wood under the flange of a nut, Pa: F/(π d t).</summary>
    /// <param name="load">Of one nut, N.</param>
    /// <param name="flange">Diameter, m.</param>
    /// <param name="thickness">m.</param>
    public static double Punching(double load, double flange, double thickness) => load / (Math.PI * flange * thickness);
}
