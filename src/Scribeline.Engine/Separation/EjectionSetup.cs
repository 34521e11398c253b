using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Separation;

/// <summary>What an ejection takes from the geometry of its bay.</summary>
public static class EjectionSetup
{
    /// <summary>Leak of a closed joint per metre of bore, m: an assumption, 20 mm² at 100 mm.</summary>
    public const double Leak = 0.2e-3;

    /// <summary>Wall that takes heat: the cylinder and both ends, m². The cloth that is stowed is left out.</summary>
    /// <param name="bay">The bay.</param>
    public static double WallArea(Bay bay) => (Math.PI * bay.Bore * bay.Length) + (Math.PI / 2 * bay.Bore * bay.Bore);

    /// <summary>Vent holes of a bay and the leaks of the joints that open it, m².</summary>
    /// <param name="vehicle">The airframe.</param>
    /// <param name="gear">Its vents.</param>
    /// <param name="bay">The bay.</param>
    public static double VentArea(Vehicle vehicle, SeparationGear gear, Bay bay) =>
        gear.Vents.Where(v => v.Station > bay.Front && v.Station < bay.Rear).Sum(v => v.Area)
        + bay.Opens.Sum(j => Leak * vehicle.Joints[j].BoreDiameter);
}
