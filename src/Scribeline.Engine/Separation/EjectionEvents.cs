using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Separation;

/// <summary>Where the equations of an ejection change: burnt out, on to the next phase, stopped.</summary>
internal readonly struct EjectionEvents(EjectionEquations equations, double webLeft) : IEventFunctions
{
    public const int BurntOut = 0, NextPhase = 1, Stopped = 2;

    public int Count => 3;

    public EventRule Rule(int index) => index == NextPhase ? new(Crossing.Rising, Terminal: true) : new(Crossing.Falling, Terminal: true);

    public double Value(int index, double time, ReadOnlySpan<double> state) => index switch
    {
        BurntOut => equations.Burning ? state[EjectionEquations.Web] - webLeft : 1,
        Stopped => equations.Phase is EjectionPhase.Shearing or EjectionPhase.Sliding ? state[EjectionEquations.Speed] : 1,
        _ => equations.Phase switch
        {
            EjectionPhase.Held => double.IsPositiveInfinity(equations.Inputs.PinForce) ? -1 : equations.NetForce(state),
            EjectionPhase.Shearing => state[EjectionEquations.Travel] - Math.Min(equations.Inputs.PinTravel, equations.Inputs.Stroke),
            EjectionPhase.Sliding => state[EjectionEquations.Travel] - equations.Inputs.Stroke,
            _ => -1,
        },
    };
}
