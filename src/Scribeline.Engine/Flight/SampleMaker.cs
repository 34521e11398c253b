using System.Runtime.InteropServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Makes samples out of states, by the same equations that moved them.</summary>
internal static class SampleMaker
{
    /// <summary>Of the whole rocket.</summary>
    public static FlightSample Whole<TModel>(
        in FlightEquations<TModel> equations, double time, FlightPhase phase, bool burning, ReadOnlySpan<double> y, in RailGeometry rail)
        where TModel : struct, IFlightModel
    {
        FlightState<Scalar> s = FlightState<Scalar>.Read(MemoryMarshal.Cast<double, Scalar>(y));
        s = phase == FlightPhase.Dive ? equations.IntoTheAir(s) : s with { Attitude = s.Attitude.Normalised() };
        FlightLoads<Scalar> loads = equations.Loads<Scalar>(time, s, burning ? 1 : 0);
        double x = loads.Mass.Station, d = equations.Model.Calibre, area = equations.Model.Area, v = loads.Airspeed;
        FlightCoefficients<Scalar> c = loads.Coefficients;

        Vector3<Scalar> felt = (1 / loads.Mass.Mass) * loads.Force;
        if (phase is FlightPhase.Held or FlightPhase.OnRail or FlightPhase.Pivoting)
        {
            felt = s.Attitude.ToBody(Constrained(equations, time, phase, burning, y, rail) + new Vector3<Scalar>(0, 0, loads.Gravity));
        }

        // Textbook C1 and C2 (Mandell, Caporaso and Bengen); the pair of a body pivoted at its centre of mass.
        double va = 0.5 * loads.Air.Density * v * area, arm = equations.Model.Nozzle.Station - x;
        double c1 = va * v * (c.Sum1 - x * c.Sum0);
        double c2 = va * (c.Sum2 - 2 * x * c.Sum1 + x * x * c.Sum0) + loads.Outflow * arm * arm + loads.TransverseInertiaRate;
        double across = (loads.Mass.Inertia.Yy + loads.Mass.Inertia.Zz) / 2;
        double qa = va * v, sine = Math.Sin(loads.AngleOfAttack), cosine = Math.Cos(loads.AngleOfAttack);
        return new FlightSample
        {
            Time = time,
            Phase = phase,
            Position = s.Position,
            Velocity = s.Velocity,
            Attitude = s.Attitude,
            Rate = s.Rate,
            Wind = loads.Wind,
            ProperAcceleration = felt,
            AltimeterHeight = equations.Model.AltimeterHeight(s.Position.Z),
            Airspeed = v,
            Mach = v / loads.Air.SoundSpeed,
            DynamicPressure = 0.5 * loads.Air.Density * v * v,
            AngleOfAttack = loads.AngleOfAttack,
            Tilt = Tilt(s.Attitude),
            Mass = loads.Mass.Mass,
            CentreOfMass = x,
            CentreOfPressure = c.CentreOfPressure,
            StaticMargin = (c.CentreOfPressure - x) / d,
            Thrust = loads.Thrust,
            Drag = qa * (c.Axial * cosine + c.NormalForce * sine),
            NormalForce = qa * c.NormalForce,
            PitchFrequency = c1 > 0 ? Math.Sqrt(c1 / across) : double.NaN,
            PitchDamping = c1 > 0 ? c2 / (2 * Math.Sqrt(c1 * across)) : double.NaN,
        };
    }

    /// <summary>Of a body on cords and canopies.</summary>
    public static FlightSample Descent<TModel>(in DescentMotion<TModel> motion, double time, ReadOnlySpan<double> y, Quaternion<Scalar> attitude)
        where TModel : struct, IFlightModel
    {
        Vector3<Scalar> position = new(y[0], y[1], y[2]), velocity = new(y[3], y[4], y[5]);
        TModel model = motion.Model;
        model.Around<Scalar>(position.Z, out FlightAir<Scalar> air, out Vector3<Scalar> wind);
        Vector3<Scalar> flow = velocity - wind;
        double v = flow.Length, q = 0.5 * air.Density * v * v, drag = q * motion.DragArea(time);
        return new FlightSample
        {
            Time = time,
            Phase = FlightPhase.Descent,
            Position = position,
            Velocity = velocity,
            Attitude = attitude,
            Rate = Vector3<Scalar>.Zero,
            Wind = wind,
            ProperAcceleration = v > 0 ? -(drag / (motion.Mass * v)) * flow : Vector3<Scalar>.Zero,
            AltimeterHeight = model.AltimeterHeight(position.Z),
            Airspeed = v,
            Mach = v / air.SoundSpeed,
            DynamicPressure = q,
            AngleOfAttack = double.NaN,
            Tilt = double.NaN,
            Mass = motion.Mass,
            CentreOfMass = double.NaN,
            CentreOfPressure = double.NaN,
            StaticMargin = double.NaN,
            Thrust = 0,
            Drag = drag,
            NormalForce = double.NaN,
            PitchFrequency = double.NaN,
            PitchDamping = double.NaN,
        };
    }

    /// <summary>Between the body's long axis and the vertical, rad.</summary>
    private static double Tilt(Quaternion<Scalar> attitude)
    {
        Vector3<Scalar> axis = attitude.ToFrame(new(1, 0, 0));
        return Math.Atan2(double.Hypot(axis.X, axis.Y), axis.Z);
    }

    private static Vector3<Scalar> Constrained<TModel>(
        in FlightEquations<TModel> equations, double time, FlightPhase phase, bool burning, ReadOnlySpan<double> y, in RailGeometry rail)
        where TModel : struct, IFlightModel
    {
        Span<double> rates = stackalloc double[FlightState<Scalar>.Size];
        new WholeMotion<TModel>(equations, phase, burning, rail, default).Derivative(time, y, rates);
        return new(rates[3], rates[4], rates[5]);
    }
}
