using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Shop;

/// <summary>What a hole is in one of the walls it goes through.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="PartName">As typed.</param>
/// <param name="Diameter">As finished, before a tap, m; NaN where it is not known.</param>
/// <param name="Drill">The drill; null where none of that size is sold.</param>
/// <param name="Depth">Through the wall, m.</param>
/// <param name="Tap">Thread cut into it; null for none.</param>
/// <param name="Countersink">Diameter at the surface, m; 0 for none.</param>
/// <param name="CountersinkAngle">Included, rad; 0 for none.</param>
/// <param name="Remark">What else is done there, such as bonding a nut behind it; may be empty.</param>
public sealed record HoleCut(
    int Part, string PartName, double Diameter, Drill? Drill, double Depth, string? Tap = null, double Countersink = 0, double CountersinkAngle = 0, string Remark = "")
{
    /// <summary>Thread of the captive nut bonded behind it; null for none.</summary>
    public string? Nut { get; init; }
}
