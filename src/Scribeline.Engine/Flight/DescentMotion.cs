using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>A body on cords and canopies between two changes, as the integration sees it.</summary>
/// <param name="Model">The day.</param>
/// <param name="Mass">kg.</param>
/// <param name="BodyDragArea">Of its pieces, m².</param>
/// <param name="Canopies">Those whose lines are stretched.</param>
/// <param name="Watch">What ends it, besides a time.</param>
internal readonly record struct DescentMotion<TModel>(
    TModel Model, double Mass, double BodyDragArea, OpenCanopy[] Canopies, Watch Watch) : IMotion
    where TModel : struct, IFlightModel
{
    /// <inheritdoc/>
    public int Events => 3;

    /// <summary>m², of everything, at a time.</summary>
    public double DragArea(double time)
    {
        double sum = BodyDragArea;
        foreach (OpenCanopy canopy in Canopies) sum += canopy.DragArea(time);
        return sum;
    }

    /// <inheritdoc/>
    public void Rates(double time, ReadOnlySpan<double> y, Span<double> rates)
    {
        Vector3<Scalar> position = new(y[0], y[1], y[2]), velocity = new(y[3], y[4], y[5]);
        Vector3<Scalar> a = DescentEquations.Acceleration<Scalar, TModel>(Model, position, velocity, Mass, DragArea(time));
        (rates[0], rates[1], rates[2]) = (y[3], y[4], y[5]);
        (rates[3], rates[4], rates[5]) = (a.X, a.Y, a.Z);
    }

    /// <inheritdoc/>
    public void Settle(Span<double> y)
    {
    }

    /// <inheritdoc/>
    public void EventFunctions(double time, ReadOnlySpan<double> y, Span<double> values) => Watch.Functions(Model, y[2], y[5], values);
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
