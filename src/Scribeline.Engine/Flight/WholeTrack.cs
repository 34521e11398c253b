namespace Scribeline.Engine.Flight;

/// <summary>Motion of the whole rocket. Marks of the trajectory hold the phase, doubled, plus one while the motor burns.</summary>
internal sealed class WholeTrack<TModel>(FlightEquations<TModel> equations, Trajectory trajectory, RailGeometry rail) : FlightTrack
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public override double Start => trajectory.Start;

    /// <inheritdoc/>
    public override double End => trajectory.End;

    /// <summary>The mark of a phase.</summary>
    public static int Mark(FlightPhase phase, bool burning) => 2 * (int)phase + (burning ? 1 : 0);

    /// <inheritdoc/>
    public override FlightSample At(double time)
    {
        double t = Math.Clamp(time, Start, End);
        return At(trajectory.Find(t), t);
    }

    /// <inheritdoc/>
    public override IEnumerable<(double Start, double End)> Steps
    {
        get
        {
            for (int i = 0; i < trajectory.Count; i++) yield return (trajectory[i].Start, trajectory[i].End);
        }
    }

    private FlightSample At(int step, double time)
    {
        Span<double> y = stackalloc double[trajectory.Size];
        trajectory.Evaluate(step, time, y);
        int mark = trajectory[step].Mark;
        return SampleMaker.Whole(equations, time, (FlightPhase)(mark / 2), mark % 2 == 1, y, rail);
    }
}
