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
    FlightEquations<TModel> Equations, FlightPhase Phase, bool Burning, RailGeometry Rail, Watch Watch) : IOdeSystem, IEventFunctions
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public int Dimension => FlightState<Scalar>.Size;

    /// <inheritdoc/>
    public int Count => Phase switch
    {
        FlightPhase.Held => 1,
        FlightPhase.OnRail or FlightPhase.Pivoting => 2,
        _ => Watch.Count,
    };

    /// <inheritdoc/>
    public EventRule Rule(int index) => new(Crossing.Rising, Terminal: true);

    /// <inheritdoc/>
    public void Derivative(double time, ReadOnlySpan<double> state, Span<double> rate)
    {
        FlightState<Scalar> s = FlightState<Scalar>.Read(MemoryMarshal.Cast<double, Scalar>(state));
        Scalar burning = Burning ? 1 : 0;
        FlightState<Scalar> change = Phase switch
        {
            FlightPhase.Held => RailEquations.Held<Scalar, TModel>(Equations, time, burning),
            FlightPhase.OnRail => RailEquations.Guided<Scalar, TModel>(Equations, time, s, burning, Rail.Friction),
            FlightPhase.Pivoting => RailEquations.Pivoting<Scalar, TModel>(
                Equations, time, s, burning, Rail.Friction, Rail.Direction, Rail.AftGuide),
            FlightPhase.Dive => new(
                s.Velocity, Equations.Dive<Scalar>(s.Position, s.Velocity), new(0, 0, 0, 0), Vector3<Scalar>.Zero, 0),
            _ => Equations.Free<Scalar>(time, s, burning),
        };
        change.Write(MemoryMarshal.Cast<double, Scalar>(rate));
    }

    /// <inheritdoc/>
    public double Value(int index, double time, ReadOnlySpan<double> state)
    {
        switch (Phase)
        {
            case FlightPhase.Held:
                FlightState<Scalar> s = FlightState<Scalar>.Read(MemoryMarshal.Cast<double, Scalar>(state));
                return RailEquations.NetForce<Scalar>(s, Equations.Loads<Scalar>(time, s, Burning ? 1 : 0), Rail.Friction);
            case FlightPhase.OnRail or FlightPhase.Pivoting:
                Vector3<Scalar> position = new(state[0], state[1], state[2]), velocity = new(state[3], state[4], state[5]);
                return index == 1
                    ? -Vector3<Scalar>.Dot(velocity, Rail.Direction)
                    : Vector3<Scalar>.Dot(position - Rail.Start, Rail.Direction)
                        - (Phase == FlightPhase.OnRail ? Rail.ForwardTravel : Rail.AftTravel);
            default:
                return Watch.Value(Equations.Model, index, state[2], state[5]);
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
    public const int AtApogee = 0, AtReading = 1, AtGround = 2, Count = 3;

    /// <summary>Event functions of height and climb rate, rising through zero; one that is not waited for stays negative.</summary>
    public double Value<TModel>(in TModel model, int index, double height, double climb)
        where TModel : struct, IFlightModel => index switch
        {
            AtApogee => Apogee ? -climb : -1,
            AtReading => Reading is { } reading ? reading - model.AltimeterHeight(height) : -1,
            _ => -height,
        };
}
