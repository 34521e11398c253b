using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>Drag and normal force by component at one condition, for showing working and for forces in joints.</summary>
/// <param name="Mach">0 or more.</param>
/// <param name="ReynoldsPerMetre">1/m.</param>
/// <param name="Drag">Zero-lift drag by component, thrust off, on the reference area.</param>
/// <param name="Lift">Normal-force slope by component.</param>
public sealed record AeroBreakdown(double Mach, double ReynoldsPerMetre, ValueList<DragPart> Drag, ValueList<LiftPart> Lift)
{
    /// <summary>Sum of the drag components.</summary>
    public double TotalDrag => Drag.Sum(p => p.Coefficient);

    /// <summary>C_Nα, 1/rad.</summary>
    public double NormalForceSlope => Lift.Sum(p => p.Slope);

    /// <summary>Station of the centre of pressure at small angles, m; NaN without lift.</summary>
    public double CentreOfPressure => Lift.Sum(p => p.Slope * p.Centre) / NormalForceSlope;

    /// <summary>The components of an outer shape at a condition.</summary>
    public static AeroBreakdown Of(OuterShape shape, double mach, double reynoldsPerMetre)
    {
        var rocket = new RocketGeometry(shape);
        return new(
            mach,
            reynoldsPerMetre,
            new DragBuildUp(rocket).Parts(mach, reynoldsPerMetre).ToValueList(),
            LiftBuildUp.At(rocket, mach).ToValueList());
    }
}
