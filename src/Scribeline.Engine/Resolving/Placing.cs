using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Motors;

namespace Scribeline.Engine.Resolving;

/// <summary>Puts a motor into a vehicle and a vehicle on a rail.</summary>
public static class Placing
{
    /// <summary>The motor as a mass in the vehicle's mount.</summary>
    /// <param name="vehicle">With a motor mount.</param>
    /// <param name="motor">The motor.</param>
    public static MotorLoad Holding(this Vehicle vehicle, Motor motor) =>
        vehicle.Load(motor) ?? throw new InvalidOperationException("Asked to hold a motor without a mount.");

    /// <summary>Stations of the rail guides, nose to tail, m.</summary>
    public static double[] GuideStations(this Vehicle vehicle) =>
        [.. vehicle.Parts.SelectMany(p => p.Fittings.OfType<RailGuide>().Select(g => p.Front + g.Offset)).Order()];

    /// <summary>The rail with the vehicle on its two outermost guides.</summary>
    /// <param name="rail">The rail as set up.</param>
    /// <param name="vehicle">With two guides or more.</param>
    public static LaunchRail Holding(this RailOfDay rail, Vehicle vehicle)
    {
        var guides = vehicle.GuideStations();
        return new(rail.Length, rail.Elevation, rail.Azimuth, guides[0], guides[^1], rail.Friction);
    }
}
