using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// Mass, balance and inertia of a body. Axes: x forward along the centreline (towards the nose), y towards clock angle 90°,
/// z towards clock angle 180° (right-handed; the scribe line at clock 0 is on the -z side). The centre of mass is given by its
/// station (aft of the nose tip) and its lateral offsets; inertia is about the centre of mass.
/// </summary>
/// <param name="Mass">kg, 0 or more.</param>
/// <param name="Station">Centre of mass, m aft of the nose tip.</param>
/// <param name="OffsetY">Lateral offset of the centre of mass, m.</param>
/// <param name="OffsetZ">Lateral offset of the centre of mass, m.</param>
/// <param name="Inertia">About the centre of mass, kg·m².</param>
/// <param name="Basis">Weakest basis among what matters.</param>
public readonly record struct MassProperties(double Mass, double Station, double OffsetY, double OffsetZ, InertiaTensor Inertia, Basis Basis)
{
    /// <summary>A body without mass; adding it changes nothing.</summary>
    public static MassProperties None(double station = 0) => new(0, station, 0, 0, default, Basis.Estimated);

    /// <summary>A point mass.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="station">m.</param>
    /// <param name="offsetY">m.</param>
    /// <param name="offsetZ">m.</param>
    /// <param name="basis">How the mass is known.</param>
    public static MassProperties Point(double mass, double station, double offsetY = 0, double offsetZ = 0, Basis basis = Basis.Estimated) =>
        new(mass, station, offsetY, offsetZ, default, basis);

    /// <summary>Bodies held rigidly together, by parallel axes. The basis is the weakest among those with mass.</summary>
    public static MassProperties Sum(params ReadOnlySpan<MassProperties> bodies)
    {
        double mass = 0, station = 0, y = 0, z = 0;
        Basis? basis = null;
        foreach (ref readonly var body in bodies)
        {
            if (body.Mass == 0) continue;
            mass += body.Mass;
            station += body.Mass * body.Station;
            y += body.Mass * body.OffsetY;
            z += body.Mass * body.OffsetZ;
            basis = basis < body.Basis ? basis : body.Basis;
        }

        if (mass == 0) return None(bodies.IsEmpty ? 0 : bodies[0].Station);
        station /= mass;
        y /= mass;
        z /= mass;
        InertiaTensor inertia = default;
        foreach (ref readonly var body in bodies) inertia += body.InertiaAbout(station, y, z);
        return new(mass, station, y, z, inertia, basis ?? Basis.Estimated);
    }

    /// <inheritdoc cref="Sum(ReadOnlySpan{MassProperties})"/>
    public static MassProperties Sum(IEnumerable<MassProperties> bodies) => Sum([.. bodies]);

    /// <summary>Inertia about another point, axes parallel (Huygens and Steiner), kg·m².</summary>
    /// <param name="station">m.</param>
    /// <param name="offsetY">m.</param>
    /// <param name="offsetZ">m.</param>
    public InertiaTensor InertiaAbout(double station, double offsetY = 0, double offsetZ = 0)
    {
        // Stations run aft while x runs forward, hence the sign of x.
        double x = station - Station, y = OffsetY - offsetY, z = OffsetZ - offsetZ;
        return Inertia + Mass * InertiaTensor.OfPoint(x, y, z);
    }

    /// <summary>The same body moved aft.</summary>
    /// <param name="aft">m.</param>
    public MassProperties Moved(double aft) => this with { Station = Station + aft };

    /// <summary>The same shape with another mass: inertia in proportion.</summary>
    /// <param name="mass">kg.</param>
    public MassProperties WithMass(double mass) => Mass == 0
        ? this with { Mass = mass }
        : this with { Mass = mass, Inertia = mass / Mass * Inertia };
}
