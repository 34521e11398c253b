using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>A wall that a drill going towards the axis meets.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="OuterDiameter">There, m.</param>
/// <param name="InnerDiameter">There, m; 0 where it is solid.</param>
public readonly record struct Wall(int Part, double OuterDiameter, double InnerDiameter)
{
    /// <summary>Square to the axis, m.</summary>
    public double Thickness => (OuterDiameter - InnerDiameter) / 2;

    /// <summary>Every wall at a station, outermost first; empty off the rocket.</summary>
    /// <param name="vehicle">The airframe.</param>
    /// <param name="station">m.</param>
    public static ValueList<Wall> At(Vehicle vehicle, double station) =>
        Enumerable.Range(0, vehicle.Parts.Count).Select(i => Of(vehicle.Parts[i], i, station)).OfType<Wall>().OrderByDescending(w => w.OuterDiameter).ToValueList();

    private static Wall? Of(Part part, int index, double station)
    {
        if (part.BoreAt(station) is not { } bore) return null;
        var outside = station < part.Front ? part.Ahead.OuterDiameter
            : station > part.Rear || part.Length == 0 ? part.Behind.OuterDiameter
            : 2 * (part.Outside.FirstOrDefault(s => station >= s.Front && station <= s.Front + s.Length)?.RadiusAt(station) ?? 0);
        return outside > 2 * bore ? new(index, outside, 2 * bore) : null;
    }
}
