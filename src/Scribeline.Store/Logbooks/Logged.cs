using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>What a logbook gave, or why it could not.</summary>
/// <typeparam name="T">Kind of value.</typeparam>
/// <param name="Value">The value; null with a problem, or where there is none.</param>
/// <param name="Problem">Why nothing was read or written, and what to do; null if all went well.</param>
public sealed record Logged<T>(T? Value, Problem? Problem = null)
    where T : class
{
    /// <summary>Whether the logbook did what was asked.</summary>
    public bool Good => Problem is null;
}
