namespace Scribeline.Engine.Numerics;

/// <summary>Nobody is told.</summary>
public readonly record struct NoSink : IStepSink
{
    /// <inheritdoc/>
    public void Accept(DenseStep step)
    {
    }

    /// <inheritdoc/>
    public void Pass(int index, double time, ReadOnlySpan<double> state)
    {
    }
}
