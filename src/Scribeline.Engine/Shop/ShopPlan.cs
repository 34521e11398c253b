using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>What the bench needs of a design, resolved.</summary>
/// <param name="Holes">Every hole; the diameter of a row that the program chooses is NaN until it has chosen.</param>
/// <param name="Plates">Bulk plates and rings, nose to tail, what the builder left open not yet placed.</param>
/// <param name="Missing">What to type so that every plate is known.</param>
public sealed record ShopPlan(HoleSchedule Holes, ValueList<PlateDraft> Plates, ValueList<string> Missing)
{
    /// <summary>Bonds, nose to tail.</summary>
    public ValueList<BondLine> Bonds { get; init; } = [];

    /// <summary>Joints that the builder says are keyed by something else than their holes, or unkeyed on purpose, by index.</summary>
    public ValueList<JointKey> Keys { get; init; } = [];

    /// <summary>How the bench works.</summary>
    public BenchPractice Practice { get; init; } = BenchPractice.Usual;

    /// <summary>Of a rocket without parts.</summary>
    public static ShopPlan None { get; } = new(new([], [], [], []), [], []);
}

/// <summary>What the builder says of the key of a joint.</summary>
/// <param name="Joint">Index of the joint.</param>
/// <param name="Keyed">Something else than the holes makes it close one way only.</param>
/// <param name="Unkeyed">It may close more than one way, on purpose.</param>
/// <param name="At">Where it is typed.</param>
public sealed record JointKey(int Joint, bool Keyed, bool Unkeyed, string At);
