namespace Scribeline.Engine.Numerics;

/// <summary>Evenly spaced points.</summary>
/// <param name="Start">The first point; finite.</param>
/// <param name="End">The last point; above the first.</param>
/// <param name="Count">Number of points, at least 2.</param>
public sealed record UniformAxis(double Start, double End, int Count)
{
    /// <summary>Distance between points.</summary>
    public double Step => (End - Start) / (Count - 1);

    /// <summary>One point.</summary>
    public double Point(int index) => index == Count - 1 ? End : Start + index * Step;

    /// <summary>The point below x and the part of a step beyond it, x held to the axis; the last step holds the last point.</summary>
    internal T Find<T>(T x, out T part)
        where T : struct, IReal<T>
    {
        var place = (x - T.From(Start)) * T.From((Count - 1) / (End - Start));
        place = T.Min(T.Max(place, T.From(0)), T.From(Count - 1));
        var below = T.Min(T.Floor(place), T.From(Count - 2));
        part = place - below;
        return below;
    }

    internal bool IsSound => Count >= 2 && double.IsFinite(Start) && double.IsFinite(End) && End > Start;
}
