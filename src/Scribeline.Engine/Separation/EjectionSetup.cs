using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Separation;

/// <summary>What an ejection takes from the geometry of its bay.</summary>
public static class EjectionSetup
{
    /// <summary>Leak of a closed joint per metre of bore, m: an assumption, 20 mm² at 100 mm.</summary>
    public const double Leak = 0.2e-3;

    /// <summary>Wall that takes heat: the cylinder and both ends, m². The cloth that is stowed is left out.</summary>
    /// <param name="bay">The bay.</param>
    public static double WallArea(Bay bay) => (Math.PI * bay.Bore * bay.Length) + (Math.PI / 2 * bay.Bore * bay.Bore);

    /// <summary>Holes of a bay and the leaks of the joints that open it, m².</summary>
    /// <param name="vehicle">The airframe.</param>
    /// <param name="holes">All of its holes.</param>
    /// <param name="bay">The bay.</param>
    /// <param name="inch">Whether a hole the program chooses is drilled with an inch drill.</param>
    public static double VentArea(Vehicle vehicle, ValueList<HoleRow> holes, Bay bay, bool inch) =>
        holes.Where(h => h.Opens(bay)).Sum(h => h.AreaAt(h.DiameterIn(VentRules.AirOf(vehicle, bay), inch)))
        + bay.Opens.Sum(j => Leak * vehicle.Joints[j].BoreDiameter);
}
