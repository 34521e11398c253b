using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>A rocket and a day simple enough to have closed forms. Everything is zero or constant unless set.</summary>
internal readonly record struct BenchModel() : IFlightModel
{
    public double Calibre { get; init; } = 0.1;

    public double Area { get; init; } = Math.PI * 0.1 * 0.1 / 4;

    public NozzleGeometry Nozzle { get; init; }

    public Vector3<Scalar> EarthRate { get; init; }

    public ThrustHistory? Curve { get; init; }

    /// <summary>After burnout, kg.</summary>
    public double BurntMass { get; init; } = 1;

    public double Propellant { get; init; }

    /// <summary>At burnout, kg·m².</summary>
    public Inertia<Scalar> Inertia { get; init; } = new(1, 1, 1, 0, 0, 0);

    /// <summary>Adds k² per kg of propellant to the inertia across, m².</summary>
    public double PropellantGyration { get; init; }

    public double CentreOfMass { get; init; }

    public double? Density { get; init; } = 0;

    public double GravityAtPad { get; init; }

    public Func<double, double>? GravityLaw { get; init; }

    /// <summary>Wind to the east at 10 m, m/s, with the power of height; the same at all heights for power 0.</summary>
    public double EastWind { get; init; }

    public double NorthWind { get; init; }

    public double WindPower { get; init; }

    /// <summary>Roughness length of a logarithmic wind, m; 0 for none.</summary>
    public double Roughness { get; init; }

    /// <summary>East wind linear in height instead: slope, 1/s, added to <see cref="EastWind"/>.</summary>
    public double WindSlope { get; init; }

    /// <summary>Drag against the flow whatever the attitude.</summary>
    public double Cd { get; init; }

    public double CentreOfPressure { get; init; }

    public double Slope { get; init; }

    public double Sum1 { get; init; }

    public double Sum2 { get; init; }

    public double RollForcing { get; init; }

    public double RollDamping { get; init; }

    public double TotalImpulse => Curve?.TotalImpulse ?? 1;

    public double[] Knots => Curve is null ? [] : [.. Curve.Points.Select(p => p.Time)];

    public static ThrustHistory Constant(double thrust, double duration) => new([new(0, thrust), new(duration, thrust)]);

    public T ShareOfImpulse<T>(T impulse)
        where T : struct, IReal<T> => impulse / T.From(TotalImpulse);

    public T Thrust<T>(T time)
        where T : struct, IReal<T> => Curve is null ? T.From(0) : Curve.ThrustAt(time);

    public void Mass<T>(in T burned, out FlightMass<T> mass)
        where T : struct, IReal<T>
    {
        T left = T.From(Propellant) * (T.From(1) - burned), zero = T.From(0), more = T.From(PropellantGyration) * left;
        mass = new(
            T.From(BurntMass) + left, T.From(CentreOfMass), zero, zero,
            new(T.From(Inertia.Xx), T.From(Inertia.Yy) + more, T.From(Inertia.Zz) + more, T.From(Inertia.Xy), T.From(Inertia.Xz), T.From(Inertia.Yz)),
            T.From(-Propellant), zero, T.From(-Propellant * PropellantGyration));
    }

    public void Around<T>(in T height, out FlightAir<T> air, out Vector3<T> wind)
        where T : struct, IReal<T> => (air, wind) = (Air(height), Wind(height));

    public double AltimeterHeight(double height) => height;

    public T Gravity<T>(T height)
        where T : struct, IReal<T>
    {
        if (GravityLaw is null) return T.From(GravityAtPad);
        Span<double> lanes = stackalloc double[T.Width];
        for (int i = 0; i < lanes.Length; i++) lanes[i] = GravityLaw(T.Lane(height, i));
        return T.Load(lanes);
    }

    public void Aerodynamics<T>(in T mach, in T sine, in T cosine, in T reynoldsPerMetre, in T thrustOn, out FlightCoefficients<T> coefficients)
        where T : struct, IReal<T>
    {
        T cd = T.From(Cd);
        coefficients = new(
            cd * cosine, cd * sine + T.From(Slope) * sine, T.From(CentreOfPressure),
            T.From(Slope), T.From(Sum1), T.From(Sum2), T.From(RollForcing), T.From(RollDamping));
    }

    public FlightAir<T> Air<T>(T height)
        where T : struct, IReal<T>
    {
        if (Density is { } density) return new(T.From(101_325), T.From(density), T.From(340), T.From(1.8e-5));
        AirState<T> a = StandardAtmosphere.At(height);
        return new(a.Pressure, a.Density, a.SoundSpeed, a.Viscosity);
    }

    public Vector3<T> Wind<T>(T height)
        where T : struct, IReal<T>
    {
        T east = T.From(EastWind), zero = T.From(0), z = T.Max(height, T.From(1e-9));
        if (WindPower != 0) east *= T.Exp(T.From(WindPower) * T.Log(z / T.From(10)));
        if (Roughness != 0) east *= T.Max(T.Log(z / T.From(Roughness)), zero) / T.From(Math.Log(10 / Roughness));
        return new(east + T.From(WindSlope) * height, T.From(NorthWind), zero);
    }
}
