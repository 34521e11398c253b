using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Motion of a body on cords and canopies. Marks of the trajectory tell which stretch of it holds.</summary>
internal sealed class DescentTrack<TModel>(Trajectory trajectory, List<DescentMotion<TModel>> stretches, Quaternion<Scalar> attitude) : FlightTrack
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public override double Start => trajectory.Start;

    /// <inheritdoc/>
    public override double End => trajectory.End;

    /// <inheritdoc/>
    public override FlightSample At(double time)
    {
        double t = Math.Clamp(time, Start, End);
        int step = trajectory.Find(t);
        Span<double> y = stackalloc double[trajectory.Size];
        trajectory.Evaluate(step, t, y);
        return SampleMaker.Descent(stretches[trajectory[step].Mark], t, y, attitude);
    }

    /// <inheritdoc/>
    public override IEnumerable<(double Start, double End)> Steps
    {
        get
        {
            for (int i = 0; i < trajectory.Count; i++) yield return (trajectory[i].Start, trajectory[i].End);
        }
    }
}
