using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Recovery;

/// <summary>What ties canopies to pieces: which cord each hangs on, how cords end, links, and what they are tied to. SI.</summary>
/// <param name="Hangings">One for each canopy that hangs on a cord.</param>
/// <param name="Cords">One for each cord, in the order of the file.</param>
/// <param name="Links">Links and swivels.</param>
/// <param name="Anchors">One for each end of each cord.</param>
public sealed record Rigging(ValueList<Hanging> Hangings, ValueList<RiggedCord> Cords, ValueList<RiggedLink> Links, ValueList<Anchor> Anchors)
{
    /// <summary>Names of blankets and other protectors.</summary>
    public ValueList<string> Blankets { get; init; } = [];

    /// <summary>Of a rocket that has none of it.</summary>
    public static Rigging None { get; } = new([], [], [], []);
}

/// <summary>Where a canopy hangs.</summary>
/// <param name="Canopy">Its name.</param>
/// <param name="Cord">Index of the cord.</param>
/// <param name="Along">From the cord's front tie, m; null where not typed.</param>
public sealed record Hanging(string Canopy, int Cord, double? Along);

/// <summary>A cord as rigged; its length, strength and stretch are those of the harness at the same index.</summary>
/// <param name="Name">As typed, or what it is made of.</param>
/// <param name="Part">Name of the part it lies in.</param>
/// <param name="Width">Laid flat, m; null where unknown.</param>
/// <param name="EndShare">Share of its strength that its ends leave, 0 to 1.</param>
/// <param name="EndSource">Where that comes from.</param>
/// <param name="Nylon">Whether it melts: nylon, at 244 °C and above (MIL-T-8363B).</param>
/// <param name="Sleeved">Whether a sleeve or an aramid leader keeps the flame off it.</param>
/// <param name="Source">Of its strength.</param>
/// <param name="At">Where it is typed.</param>
public sealed record RiggedCord(
    string Name, string Part, double? Width, double EndShare, string EndSource, bool Nylon, bool Sleeved, string Source, string At);

/// <summary>A link or swivel.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Part">Name of the part it lies in.</param>
/// <param name="Joins">The canopy or tie it joins to the cord; null for all.</param>
/// <param name="WorkingLoad">In line, N; null where unknown.</param>
/// <param name="Strength">Breaking load, N; null where unknown.</param>
/// <param name="Source">Of the load.</param>
/// <param name="At">Where it is typed.</param>
public sealed record RiggedLink(string Name, string Part, string? Joins, double? WorkingLoad, double? Strength, string Source, string At);

/// <summary>What an end of a cord is tied to.</summary>
/// <param name="Tie">As typed: a plate, a part, or Motor.</param>
/// <param name="Cord">Index of the cord.</param>
/// <param name="Aft">Whether it is the end behind.</param>
/// <param name="Part">Index of the part.</param>
/// <param name="Hardware">As typed; null where none is.</param>
/// <param name="Row">Of the table of rigging, by that name; null where it has none.</param>
/// <param name="WorkingLoad">As stamped, N; null where not typed.</param>
/// <param name="Washer">Outside diameter of what bears on the plate, m; null where unknown.</param>
/// <param name="At">Where plate or mount is typed; that of the cord's tie where there is neither.</param>
public sealed record Anchor(
    string Tie, int Cord, bool Aft, int Part, string? Hardware, RiggingPart? Row, double? WorkingLoad, double? Washer, string At);
