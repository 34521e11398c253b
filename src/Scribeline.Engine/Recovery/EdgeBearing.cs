namespace Scribeline.Engine.Recovery;

/// <summary>
/// A taut cord bent over the edge of a tube: N = 2T sin(θ/2) on an area of the cord's width times the wall. Tubes are split by it. SI.
/// </summary>
public static class EdgeBearing
{
    /// <summary>Edgewise compressive strength of glass-epoxy sheet, Pa: NEMA LI 1 G10 grade data, 35 ksi.</summary>
    public const double GlassEpoxy = 241e6;

    /// <summary>Share of it for paper, wood and other tubes: common practice.</summary>
    public const double WeakTubeShare = 0.1;

    /// <summary>Strength is divided by this before the pressure is held against it: common practice.</summary>
    public const double Divisor = 4;

    /// <summary>Angle the cord is taken to bend by, rad: 60°, an assumption.</summary>
    public const double Bend = Math.PI / 3;

    /// <summary>Pressure on the edge, Pa.</summary>
    /// <param name="tension">T, N.</param>
    /// <param name="bend">θ, rad.</param>
    /// <param name="width">Of the cord, m.</param>
    /// <param name="wall">Of the tube, m.</param>
    public static double Pressure(double tension, double bend, double width, double wall) => 2 * tension * Math.Sin(bend / 2) / (width * wall);
}
