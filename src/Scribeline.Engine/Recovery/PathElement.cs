namespace Scribeline.Engine.Recovery;

/// <summary>One element between a canopy and the airframe.</summary>
/// <param name="Path">The canopy or cord it belongs to.</param>
/// <param name="Name">In plain words, unique within a load path.</param>
/// <param name="Load">Greatest pull it sees, N.</param>
/// <param name="Cause">What pulls so.</param>
/// <param name="Capacity">N; null where it is not known.</param>
/// <param name="Source">Of the capacity.</param>
/// <param name="Missing">What to type so that its capacity is known; empty where it is.</param>
public sealed record PathElement(string Path, string Name, double Load, string Cause, double? Capacity, string Source, string Missing = "")
{
    /// <summary>Capacity over load; null where the capacity is not known.</summary>
    public double? Factor => Capacity / Load;
}
