namespace Scribeline.Engine.Numerics;

/// <summary>Is told of each accepted step and of each event that does not end the run.</summary>
public interface IStepSink
{
    /// <summary>One accepted step, cut off at the event that ended the run if one did. The spans live only during the call.</summary>
    void Accept(DenseStep step);

    /// <summary>An event passed on the way, in order of time; told before the step it lies in.</summary>
    void Pass(int index, double time, ReadOnlySpan<double> state);
}
