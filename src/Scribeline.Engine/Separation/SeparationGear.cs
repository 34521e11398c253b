using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Separation;

/// <summary>Everything of a rocket that holds joints, opens them, or ties what has come apart. SI.</summary>
/// <param name="Joints">What holds each separable joint, nose to tail; one that lacks an input is in <paramref name="Missing"/> instead.</param>
/// <param name="Charges">In the order of the file.</param>
/// <param name="Harnesses">In the order of the file.</param>
/// <param name="Screws">Screws of joints that must not let go.</param>
/// <param name="Rods">Rods of altimeter bays.</param>
/// <param name="Bonds">Bonds of joints.</param>
/// <param name="Missing">What to type so that every charge and joint can be answered.</param>
public sealed record SeparationGear(
    ValueList<JointRetention> Joints,
    ValueList<ChargeLoad> Charges,
    ValueList<Harness> Harnesses,
    ValueList<ScrewRow> Screws,
    ValueList<RodRow> Rods,
    ValueList<JointBond> Bonds,
    ValueList<string> Missing)
{
    /// <summary>Of a rocket that has none of it.</summary>
    public static SeparationGear None { get; } = new([], [], [], [], [], [], []);

    /// <summary>What holds a joint; null where it is not separable or not known.</summary>
    /// <param name="joint">Index of the joint.</param>
    public JointRetention? Of(int joint) => Joints.FirstOrDefault(j => j.Joint == joint);
}

/// <summary>Screws of a joint that must not let go.</summary>
/// <param name="Joint">Index of the joint.</param>
/// <param name="Name">Thread as typed.</param>
/// <param name="Count">1 or more.</param>
/// <param name="Thread">Geometry.</param>
/// <param name="Edge">Least distance from the edge of the outer tube to the middle of a screw, m; null where not typed.</param>
/// <param name="Strength">Tensile, Pa; null where unknown.</param>
/// <param name="Source">Of the strength.</param>
public sealed record ScrewRow(int Joint, string Name, int Count, ThreadGeometry Thread, double? Edge, double? Strength, string Source);

/// <summary>Rods between the plates of a bay.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="Name">Thread as typed.</param>
/// <param name="Count">1 or more.</param>
/// <param name="Thread">Geometry.</param>
/// <param name="Strength">Tensile, Pa; null where unknown.</param>
/// <param name="Source">Of the strength.</param>
public sealed record RodRow(int Part, string Name, int Count, ThreadGeometry Thread, double? Strength, string Source);

/// <summary>Bond of a joint.</summary>
/// <param name="Joint">Index of the joint.</param>
/// <param name="Length">Bonded, m.</param>
public sealed record JointBond(int Joint, double Length)
{
    /// <summary>Design shear strength of epoxy on abraded laminate, Pa: common practice.</summary>
    public const double OnLaminate = 5e6;

    /// <summary>The same on wood or an unprepared tube, Pa: common practice.</summary>
    public const double OnWood = 2e6;

    /// <summary>Longest bond that counts, m; longer ones do not share the load evenly: common practice.</summary>
    public const double LongestCounted = 0.025;

    /// <summary>Design shear strength on a material, Pa.</summary>
    /// <param name="material">Its name in the table of materials; empty for a tube of laminate.</param>
    public static double On(string material) =>
        material.Contains("plywood", StringComparison.Ordinal) || material.Contains("wood", StringComparison.Ordinal) || material.Contains("balsa", StringComparison.Ordinal) ? OnWood : OnLaminate;
}

/// <summary>A cord that ties pieces to one another.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Ties">Indices of the parts it ties, nose to tail.</param>
/// <param name="Length">m.</param>
/// <param name="Strength">Breaking load, N; null where unknown.</param>
/// <param name="Stretch">At the breaking load, as a share of the length; null where unknown.</param>
/// <param name="Nylon">Whether it is woven nylon of tabled stretch, which stretches along two lines.</param>
/// <param name="At">Where it is typed.</param>
public sealed record Harness(string Name, ValueList<int> Ties, double Length, double? Strength, double? Stretch, bool Nylon, string At)
{
    /// <summary>Whether it ties the two sides of a joint.</summary>
    /// <param name="joint">Index of the joint.</param>
    public bool Spans(int joint) => Ties.Count > 1 && Ties[0] <= joint && Ties[^1] > joint;

    /// <summary>How it stretches; null where its strength or stretch is not known.</summary>
    public StretchingCord? Stretching => (Strength, Stretch) is not ({ } strength, { } stretch) ? null
        : Nylon ? StretchingCord.Nylon(strength, stretch, Length)
        : StretchingCord.Linear(strength, stretch, Length);
}
