using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>Pressure drag of shoulders and boat tails on the ring between their two discs.</summary>
public static class TransitionDrag
{
    private const double Degree = Math.PI / 180;

    /// <summary>Growing section: the pressure of a cone of the same half-angle (an upper estimate: the flow ahead is already slowed).</summary>
    public static double Shoulder(BodySection section, double mach)
    {
        var half = Math.Min(Math.Atan((section.RearDiameter - section.FrontDiameter) / 2 / section.Length), 60 * Degree);
        return NoseDrag.At(new("", new(BodyShape.Conical), 0, 1, 0, 2 * Math.Tan(half)), mach);
    }

    /// <summary>
    /// Narrowing section. Subsonic: none to 8° half-angle (common practice), from there to 20° rising to the pressure of a base.
    /// Supersonic: the Prandtl–Meyer pressure at the corner as an upper bound, no lower than that of a base.
    /// </summary>
    public static double BoatTail(BodySection section, double mach)
    {
        var half = Math.Atan((section.FrontDiameter - section.RearDiameter) / 2 / section.Length);
        var slow = Bridge.Step(half, 8 * Degree, 20 * Degree) * BaseDrag.Handbook(mach);
        if (mach <= 0.85) return slow;
        var m = Math.Max(mach, 1.2);
        var fast = Math.Min(-CompressibleFlow.ExpansionPressure(m, half), BaseDrag.Handbook(m));
        return slow + (fast - slow) * Bridge.Step(mach, 0.85, 1.2);
    }
}
