using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Separation;

/// <summary>Where the equations of an ejection change: burnt out, on to the next phase, stopped, gas out.</summary>
internal readonly struct EjectionEvents(EjectionEquations equations, double webLeft, bool beyond) : IEventFunctions
{
    public const int BurntOut = 0, NextPhase = 1, Stopped = 2, Equalised = 3;

    // Share of the pressure outside at which the gas counts as out. What is left pushes with some hundredths of a newton; nearer to equal
    // pressures the root in the flow law makes any step too long.
    private const double Even = 1e-4;

    public int Count => 4;

    /// <summary>Difference of the pressures as a share of that outside, above what counts as none.</summary>
    public double Unevenness(ReadOnlySpan<double> state) => Math.Abs((equations.Pressure(state) / equations.Inputs.AmbientPressure) - 1) - Even;

    public EventRule Rule(int index) => index == NextPhase ? new(Crossing.Rising, Terminal: true) : new(Crossing.Falling, Terminal: true);

    public double Value(int index, double time, ReadOnlySpan<double> state) => index switch
    {
        BurntOut => equations.Burning ? state[EjectionEquations.Web] - webLeft : 1,
        Equalised => equations.Phase == EjectionPhase.Free && !beyond ? Unevenness(state) : 1,
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
