namespace Scribeline.Engine.Shop;

/// <summary>How far a drill and a print go astray. Plane geometry.</summary>
public static class DrillWander
{
    /// <summary>Far side of a hole drilled off square, m: D tan α.</summary>
    /// <param name="depth">D, m.</param>
    /// <param name="tilt">α, rad.</param>
    public static double Aside(double depth, double tilt) => depth * Math.Tan(tilt);

    /// <summary>Slope a tip meets that lands off the crown of a tube, rad: sin φ = 2 e/D.</summary>
    /// <param name="off">e, m.</param>
    /// <param name="diameter">D, m.</param>
    public static double Slope(double off, double diameter) => Math.Asin(2 * off / diameter);

    /// <summary>Relative standard uncertainty of a print's scale read off a bar: √2 u/L.</summary>
    /// <param name="reading">u, of one end, m.</param>
    /// <param name="bar">L, m.</param>
    public static double Scale(double reading, double bar) => Math.Sqrt(2) * reading / bar;

    /// <summary>Turns per second at which a circle cutter's edge moves at a speed: v/(π D).</summary>
    /// <param name="diameter">Of the circle, m.</param>
    /// <param name="speed">m/s; 1 m/s at most in plywood, common practice.</param>
    public static double CutterTurns(double diameter, double speed = 1) => speed / (Math.PI * diameter);
}
