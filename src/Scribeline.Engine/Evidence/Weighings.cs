using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>Parts as each is known by itself, and what they make up as it was weighed.</summary>
/// <param name="Parts">In the order of the rocket.</param>
/// <param name="Wholes">In the order of the file.</param>
public sealed record Weighings(ValueList<MassReading> Parts, ValueList<MassSum> Wholes)
{
    /// <summary>Of a rocket that was never weighed.</summary>
    public static Weighings None { get; } = new([], []);

    /// <summary>All of them together.</summary>
    public MassReconciliation Together() => MassReconciliation.Of(Parts, Wholes);

    /// <summary>One whole alone against its parts.</summary>
    /// <param name="whole">Which.</param>
    public MassReconciliation Alone(MassSum whole) => MassReconciliation.Of(Parts, [whole]);
}
