namespace Scribeline.Engine.Numerics;

/// <summary>Many runs of one system of equations, taken into lanes one after another. Implement it as a struct.</summary>
/// <typeparam name="T">The pack of lanes.</typeparam>
internal interface ILaneRuns<T> : IOdeSystem<T>
    where T : struct, IReal<T>
{
    /// <summary>Number of event functions; each ends a run where it rises through zero, which it does once at most.</summary>
    int EventCount { get; }

    /// <summary>Takes the next run that waits into a lane.</summary>
    /// <param name="lane">The lane, empty.</param>
    /// <param name="state">Receives the state at the start.</param>
    /// <param name="run">Times and first step.</param>
    /// <returns>False when none waits.</returns>
    bool Load(int lane, Span<double> state, out LaneRun run);

    /// <summary>The first time after this at which a step must end; infinite for none.</summary>
    double NextStop(int lane, double time);

    /// <summary>Value of an event function.</summary>
    double Event(int lane, int index, ReadOnlySpan<double> state);

    /// <summary>Takes a run out of a lane: at the end of its time, at an event, or given up.</summary>
    void Unload(int lane, ReadOnlySpan<double> state, in LaneEnd end);
}

/// <summary>A run on its way into a lane.</summary>
/// <param name="From">s.</param>
/// <param name="To">s, after <paramref name="From"/>.</param>
/// <param name="FirstStep">s, more than 0.</param>
internal readonly record struct LaneRun(double From, double To, double FirstStep);

/// <summary>How a run left its lane.</summary>
/// <param name="Time">s.</param>
/// <param name="Event">Index, or -1 where its time was up.</param>
/// <param name="Step">Width last asked for, s.</param>
/// <param name="Failed">Whether it was given up: too many steps, or numbers that are not finite.</param>
internal readonly record struct LaneEnd(double Time, int Event, double Step, bool Failed);
