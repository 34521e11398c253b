using System.Runtime.CompilerServices;
using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;
using P = Scribeline.Engine.Flight.LaneParameters;

namespace Scribeline.Engine.Flight;

/// <summary>Rockets and days of many flights as the equations of motion ask for them, each lane its own. Heights are true ones, readings too.</summary>
internal readonly struct LaneModel : IFlightModel
{
    private readonly LaneParameters parameters;
    private readonly AeroTable aerodynamics;
    private readonly ThrustHistory curve;
    private readonly SiteGravity gravity;
    private readonly double elevation;
    private readonly HeightTable heights;
    private readonly GustTable gustTable;
    private readonly double[] tables, gusts;

    /// <param name="inputs">What all share.</param>
    /// <param name="parameters">What each lane has.</param>
    /// <param name="heights">How tables of air and wind are laid out.</param>
    /// <param name="tables">Air and wind of all flights.</param>
    /// <param name="gustTable">How tables of turbulence are laid out.</param>
    /// <param name="gusts">Turbulence of all flights.</param>
    public LaneModel(EnsembleInputs inputs, LaneParameters parameters, HeightTable heights, double[] tables, GustTable gustTable, double[] gusts)
    {
        FlightInputs nominal = inputs.Nominal;
        (this.parameters, aerodynamics, curve) = (parameters, inputs.Aerodynamics, nominal.Motor.Curve);
        (gravity, elevation) = (new(nominal.Latitude), nominal.Air.Elevation);
        (this.heights, this.tables, this.gustTable, this.gusts) = (heights, tables, gustTable, gusts);
        RocketModel one = new(nominal, aerodynamics);
        (Nozzle, EarthRate, TotalImpulse) = (one.Nozzle, one.EarthRate, curve.TotalImpulse);
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

    /// <summary>Thrust curve that all share.</summary>
    public ThrustHistory Curve => curve;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T ShareOfImpulse<T>(T impulse)
        where T : struct, IReal<T> => impulse * Of<T>(P.Impulse);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Thrust<T>(T time)
        where T : struct, IReal<T> => Of<T>(P.Thrust) * curve.ThrustAt(time);

    /// <inheritdoc/>
    public void Mass<T>(in T burned, out FlightMass<T> mass)
        where T : struct, IReal<T>
    {
        const int m0 = P.Mass;
        MassLaw<T> law = new(
            Of<T>(m0), Of<T>(m0 + 1), Of<T>(m0 + 2), Of<T>(m0 + 3),
            new(Of<T>(m0 + 4), Of<T>(m0 + 5), Of<T>(m0 + 6), Of<T>(m0 + 7), Of<T>(m0 + 8), Of<T>(m0 + 9)),
            Of<T>(m0 + 10), Of<T>(m0 + 11), Of<T>(m0 + 12), Of<T>(m0 + 13), Of<T>(m0 + 14), Of<T>(m0 + 15));
        MassState<T> m = law.At(burned), rate = law.RateAt(burned);
        MassTensor<T> i = m.Inertia;
        mass = new(
            m.Mass, m.Station, m.OffsetY, m.OffsetZ, new(i.Xx, i.Yy, i.Zz, i.Xy, i.Xz, i.Yz), rate.Mass, rate.Axial, rate.Lateral);
    }

    /// <inheritdoc/>
    public void Around<T>(in T height, out FlightAir<T> air, out Vector3<T> wind)
        where T : struct, IReal<T>
    {
        RowOf<T> row = default;
        Span<T> read = row;
        heights.Read(tables, Of<T>(P.Table), height, read[..HeightTable.Quantities]);
        air = new(read[HeightTable.Pressure], read[HeightTable.Density], read[HeightTable.SoundSpeed], read[HeightTable.Viscosity]);
        wind = new(read[HeightTable.East], read[HeightTable.North], T.From(0));
        if (gustTable.IsStill) return;
        gustTable.Read(gusts, Of<T>(P.Gusts), height, read[..GustTable.Quantities]);
        wind += new Vector3<T>(read[0], read[1], read[2]);
    }

    /// <inheritdoc/>
    public double AltimeterHeight(double height) => height;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Gravity<T>(T height)
        where T : struct, IReal<T> => gravity.At(height + T.From(elevation));

    /// <inheritdoc/>
    public void Aerodynamics<T>(in T mach, in T sine, in T cosine, in T reynoldsPerMetre, in T thrustOn, out FlightCoefficients<T> coefficients)
        where T : struct, IReal<T>
    {
        AeroCoefficients<T> c = aerodynamics.At(mach, sine, cosine, reynoldsPerMetre, thrustOn);
        T n = Of<T>(P.Normal), shift = Of<T>(P.CentreShift);
        T sum1 = c.DampingSum1 + shift * c.DampingSum0;
        coefficients = new(
            Of<T>(P.Axial) * c.Axial, n * c.NormalForce, c.CentreOfPressure + shift, n * c.DampingSum0, n * sum1,
            n * (c.DampingSum2 + shift * (c.DampingSum1 + sum1)), c.RollForcing, c.RollDamping);
    }

    /// <summary>Drag area of what hangs on cords and canopies at a time, m²: <see cref="Inflation"/> for lanes.</summary>
    public T DragArea<T>(T time)
        where T : struct, IReal<T>
    {
        T area = Of<T>(P.DragArea), one = T.From(1);
        for (int k = 0; k < parameters.CanopyCount; k++)
        {
            int at = P.Canopies + (P.Filling * k);
            T share = T.Min(T.Max((time - Of<T>(at + P.Stretched)) * Of<T>(at + P.PerSecond), T.From(1e-12)), one);
            T root = Of<T>(at + P.StartRoot) + Of<T>(at + P.RootGrowth) * T.Exp(Of<T>(at + P.HalfExponent) * T.Log(share));
            area += root * root;
        }

        return area;
    }

    /// <summary>A parameter of every lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Of<T>(int parameter)
        where T : struct, IReal<T> => T.Load(parameters[parameter]);
}
