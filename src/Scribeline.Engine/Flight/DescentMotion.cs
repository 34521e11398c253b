using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>A body on cords and canopies between two changes, as the integration sees it.</summary>
/// <param name="Model">The day.</param>
/// <param name="Mass">kg.</param>
/// <param name="BodyDragArea">Of its pieces, m².</param>
/// <param name="Canopies">Those whose lines are stretched.</param>
/// <param name="Watch">What ends it, besides a time.</param>
internal readonly record struct DescentMotion<TModel>(
    TModel Model, double Mass, double BodyDragArea, OpenCanopy[] Canopies, Watch Watch) : IOdeSystem, IEventFunctions
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public int Dimension => DescentEquations.Size;

    /// <inheritdoc/>
    public int Count => Watch.Count;

    /// <inheritdoc/>
    public EventRule Rule(int index) => new(Crossing.Rising, Terminal: true);

    /// <summary>m², of everything, at a time.</summary>
    public double DragArea(double time)
    {
        double sum = BodyDragArea;
        foreach (OpenCanopy canopy in Canopies) sum += canopy.DragArea(time);
        return sum;
    }

    /// <inheritdoc/>
    public void Derivative(double time, ReadOnlySpan<double> state, Span<double> rate)
    {
        Vector3<Scalar> position = new(state[0], state[1], state[2]), velocity = new(state[3], state[4], state[5]);
        Vector3<Scalar> a = DescentEquations.Acceleration<Scalar, TModel>(Model, position, velocity, Mass, DragArea(time));
        (rate[0], rate[1], rate[2]) = (state[3], state[4], state[5]);
        (rate[3], rate[4], rate[5]) = (a.X, a.Y, a.Z);
    }

    /// <inheritdoc/>
    public double Value(int index, double time, ReadOnlySpan<double> state) => Watch.Value(Model, index, state[2], state[5]);
}

/// <summary>A canopy whose lines are stretched.</summary>
/// <param name="Canopy">The canopy.</param>
/// <param name="LineStretch">s after ignition.</param>
/// <param name="FillTime">s.</param>
internal readonly record struct OpenCanopy(FlightCanopy Canopy, double LineStretch, double FillTime)
{
    public double Full => LineStretch + FillTime;

    /// <summary>m² at a time.</summary>
    public double DragArea(double time) => Inflation.DragArea(Canopy, time - LineStretch, FillTime);
}
