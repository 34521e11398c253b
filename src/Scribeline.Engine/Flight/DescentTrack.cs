using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Motion of a body on cords and canopies. Marks tell which stretch of it holds.</summary>
internal sealed class DescentTrack<TModel>(FlightRecorder recorder, List<DescentMotion<TModel>> stretches, Quaternion<Scalar> attitude) : FlightTrack
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public override double Start => recorder.Start;

    /// <inheritdoc/>
    public override double End => recorder.End;

    /// <inheritdoc/>
    public override IEnumerable<(double Start, double End)> Steps => recorder.Steps;

    /// <inheritdoc/>
    public override FlightSample At(double time)
    {
        Span<double> y = stackalloc double[DescentEquations.Size];
        (double held, int mark) = recorder.StateAt(time, y);
        return SampleMaker.Descent(stretches[mark], held, y, attitude);
    }
}
