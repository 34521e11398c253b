namespace Scribeline.Engine.Numerics;

/// <summary>Functions of time and state whose zeros are events. Implement it as a struct.</summary>
public interface IEventFunctions
{
    /// <summary>Number of functions, 0 to 64.</summary>
    int Count { get; }

    /// <summary>The rule of one function.</summary>
    EventRule Rule(int index);

    /// <summary>The value of one function; continuous.</summary>
    double Value(int index, double time, ReadOnlySpan<double> state);
}
