using System.Runtime.InteropServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>The whole rocket in one phase, as the integration sees it.</summary>
/// <param name="Equations">Rocket and day.</param>
/// <param name="Phase">Which equations hold.</param>
/// <param name="Burning">Whether the motor burns.</param>
/// <param name="Rail">Friction, direction and limits of the rail.</param>
/// <param name="Watch">What ends the phase, besides a time.</param>
internal readonly record struct WholeMotion<TModel>(
    FlightEquations<TModel> Equations, FlightPhase Phase, bool Burning, RailGeometry Rail, Watch Watch) : IMotion
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public int Events => Phase switch
    {
        FlightPhase.Held => 1,
        FlightPhase.OnRail or FlightPhase.Pivoting => 2,
        _ => 3,
    };

    /// <inheritdoc/>
    public void Rates(double time, ReadOnlySpan<double> y, Span<double> rates)
    {
        FlightState<Scalar> s = FlightState<Scalar>.Read(MemoryMarshal.Cast<double, Scalar>(y));
        Scalar burning = Burning ? 1 : 0;
        FlightState<Scalar> rate = Phase switch
        {
            FlightPhase.Held => RailEquations.Held<Scalar, TModel>(Equations, time, burning),
            FlightPhase.OnRail => RailEquations.Guided<Scalar, TModel>(Equations, time, s, burning, Rail.Friction),
            FlightPhase.Pivoting => RailEquations.Pivoting<Scalar, TModel>(
                Equations, time, s, burning, Rail.Friction, Rail.Direction, Rail.AftGuide),
            _ => Equations.Free<Scalar>(time, s, burning),
        };
        rate.Write(MemoryMarshal.Cast<double, Scalar>(rates));
    }

    /// <inheritdoc/>
    public void Settle(Span<double> y)
    {
        Quaternion<Scalar> q = new Quaternion<Scalar>(y[6], y[7], y[8], y[9]).Normalised();
        (y[6], y[7], y[8], y[9]) = (q.W, q.X, q.Y, q.Z);
    }

    /// <inheritdoc/>
    public void EventFunctions(double time, ReadOnlySpan<double> y, Span<double> values)
    {
        switch (Phase)
        {
            case FlightPhase.Held:
                FlightState<Scalar> s = FlightState<Scalar>.Read(MemoryMarshal.Cast<double, Scalar>(y));
                values[0] = RailEquations.NetForce<Scalar>(s, Equations.Loads<Scalar>(time, s, Burning ? 1 : 0), Rail.Friction);
                break;
            case FlightPhase.OnRail or FlightPhase.Pivoting:
                Vector3<Scalar> position = new(y[0], y[1], y[2]), velocity = new(y[3], y[4], y[5]);
                double travel = Vector3<Scalar>.Dot(position - Rail.Start, Rail.Direction);
                values[0] = travel - (Phase == FlightPhase.OnRail ? Rail.ForwardTravel : Rail.AftTravel);
                values[1] = -Vector3<Scalar>.Dot(velocity, Rail.Direction);
                break;
            default:
                Watch.Functions(Equations.Model, y[2], y[5], values);
                break;
        }
    }
}

/// <summary>The rail in the frame of flight.</summary>
/// <param name="Start">Centre of mass at rest, m.</param>
/// <param name="Direction">Unit vector up the rail.</param>
/// <param name="ForwardTravel">Travel at which the forward guide leaves, m.</param>
/// <param name="AftTravel">Travel at which the aft guide leaves, m.</param>
/// <param name="AftGuide">Station of the aft guide, m.</param>
/// <param name="Friction">μ.</param>
internal readonly record struct RailGeometry(
    Vector3<Scalar> Start, Vector3<Scalar> Direction, double ForwardTravel, double AftTravel, double AftGuide, double Friction);

/// <summary>State-known moments of a body in the air: apogee, an altimeter's reading, the ground.</summary>
/// <param name="Apogee">Whether apogee is still to come.</param>
/// <param name="Reading">Reading waited for, m; null where none is.</param>
internal readonly record struct Watch(bool Apogee, double? Reading)
{
    public const int AtApogee = 0, AtReading = 1, AtGround = 2;

    /// <summary>Event functions; one that is not waited for stays negative.</summary>
    public void Functions<TModel>(in TModel model, double height, double climb, Span<double> values)
        where TModel : struct, IFlightModel
    {
        values[AtApogee] = Apogee ? -climb : -1;
        values[AtReading] = Reading is { } reading ? reading - model.AltimeterHeight(height) : -1;
        values[AtGround] = -height;
    }
}
