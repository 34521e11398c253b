using System.Runtime.CompilerServices;
using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Rocket and day of <see cref="FlightInputs"/> as the equations of motion ask for them.</summary>
internal readonly struct RocketModel : IFlightModel
{
    private readonly AeroTable aerodynamics;
    private readonly MassHistory mass;
    private readonly ThrustHistory curve;
    private readonly DayAir air;
    private readonly AirMotion wind;
    private readonly SiteGravity gravity;
    private readonly double thrustFactor;
    private readonly double timeFactor;
    private readonly double drag;
    private readonly double normal;

    public RocketModel(FlightInputs inputs, AeroTable aerodynamics)
    {
        this.aerodynamics = aerodynamics;
        (mass, curve, air, wind) = (inputs.Mass, inputs.Motor.Curve, inputs.Air, inputs.Wind);
        gravity = new(inputs.Latitude);
        FlightFactors f = inputs.Factors;
        (thrustFactor, timeFactor, drag, normal) = (f.Impulse / f.BurnTime, 1 / f.BurnTime, f.Drag, f.NormalForce);
        TotalImpulse = f.Impulse * curve.TotalImpulse;
        ThrustLine line = inputs.ThrustLine;
        double exit = inputs.Motor.NozzleExitDiameter ?? 0;
        Nozzle = new(
            inputs.Shape.Length, line.OffsetY, line.OffsetZ, line.TiltY, line.TiltZ, Math.PI * exit * exit / 4, AirConstants.SeaLevelPressure);
        double turning = inputs.Options.Coriolis ? Wgs84.RotationRate : 0;
        EarthRate = new(0, turning * Math.Cos(inputs.Latitude), turning * Math.Sin(inputs.Latitude));
    }

    /// <inheritdoc/>
    public double Calibre => aerodynamics.ReferenceDiameter;

    /// <inheritdoc/>
    public double Area => aerodynamics.ReferenceArea;

    /// <inheritdoc/>
    public double TotalImpulse { get; }

    /// <inheritdoc/>
    public NozzleGeometry Nozzle { get; }

    /// <inheritdoc/>
    public Vector3<Scalar> EarthRate { get; }

    /// <summary>Times at which the slope of the thrust changes, s; the last is burnout.</summary>
    public double[] Knots()
    {
        double[] knots = new double[curve.Points.Count];
        for (int i = 0; i < knots.Length; i++) knots[i] = curve.Points[i].Time / timeFactor;
        return knots;
    }

    /// <summary>The rail in the frame of flight, its foot at the origin.</summary>
    public RailGeometry RailGeometry(LaunchRail rail, double length)
    {
        Vector3<Scalar> direction = RailAttitude.Of(rail.Elevation, rail.Azimuth, rail.ScribeHeading).ToFrame(new(1, 0, 0));
        return new(
            (length - mass.At<Scalar>(0).Station) * direction,
            direction,
            rail.Length - (length - rail.ForwardGuide),
            rail.Length - (length - rail.AftGuide),
            rail.AftGuide,
            rail.Friction);
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T ShareOfImpulse<T>(T impulse)
        where T : struct, IReal<T> => impulse / T.From(TotalImpulse);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Thrust<T>(T time)
        where T : struct, IReal<T> => T.From(thrustFactor) * curve.ThrustAt(time * T.From(timeFactor));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Mass<T>(in T burned, out FlightMass<T> mass)
        where T : struct, IReal<T>
    {
        MassState<T> m = this.mass.At(burned), rate = this.mass.RateAt(burned);
        MassTensor<T> i = m.Inertia;
        mass = new(
            m.Mass, m.Station, m.OffsetY, m.OffsetZ, new(i.Xx, i.Yy, i.Zz, i.Xy, i.Xz, i.Yz), rate.Mass, rate.Axial, rate.Lateral);
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Around<T>(in T height, out FlightAir<T> air, out Vector3<T> wind)
        where T : struct, IReal<T>
    {
        AirState<T> a = this.air.At(height + T.From(this.air.Elevation));
        air = new(a.Pressure, a.Density, a.SoundSpeed, a.Viscosity);
        (T east, T north, T up) = this.wind.At(height);
        wind = new(east, north, up);
    }

    /// <inheritdoc/>
    public double AltimeterHeight(double height) => Altimetry.ShownHeight<Scalar>(air, height);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Gravity<T>(T height)
        where T : struct, IReal<T> => gravity.At(height + T.From(air.Elevation));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Aerodynamics<T>(in T mach, in T sine, in T cosine, in T reynoldsPerMetre, in T thrustOn, out FlightCoefficients<T> coefficients)
        where T : struct, IReal<T>
    {
        AeroCoefficients<T> c = aerodynamics.At(mach, sine, cosine, reynoldsPerMetre, thrustOn);
        T n = T.From(normal);
        coefficients = new(
            T.From(drag) * c.Axial, n * c.NormalForce, c.CentreOfPressure, n * c.DampingSum0, n * c.DampingSum1, n * c.DampingSum2,
            c.RollForcing, c.RollDamping);
    }
}
