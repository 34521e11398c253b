using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Motion of the whole rocket. Marks hold the phase, doubled, plus one while the motor burns.</summary>
internal sealed class WholeTrack<TModel>(FlightEquations<TModel> equations, FlightRecorder recorder, RailGeometry rail) : FlightTrack
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public override double Start => recorder.Start;

    /// <inheritdoc/>
    public override double End => recorder.End;

    /// <summary>The mark of a phase.</summary>
    public static int Mark(FlightPhase phase, bool burning) => 2 * (int)phase + (burning ? 1 : 0);

    /// <inheritdoc/>
    public override IEnumerable<(double Start, double End)> Steps => recorder.Steps;

    /// <inheritdoc/>
    public override FlightSample At(double time)
    {
        Span<double> y = stackalloc double[FlightState<Scalar>.Size];
        (double held, int mark) = recorder.StateAt(time, y);
        return SampleMaker.Whole(equations, held, (FlightPhase)(mark / 2), mark % 2 == 1, y, rail);
    }
}
