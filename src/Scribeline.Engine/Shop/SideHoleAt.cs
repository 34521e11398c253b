namespace Scribeline.Engine.Shop;

/// <summary>A hole through the outside, before anybody looks at it.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Name">In plain words.</param>
/// <param name="Station">m.</param>
/// <param name="Clock">rad.</param>
/// <param name="Diameter">m; null where not known.</param>
public sealed record SideHoleAt(SideHoleKind Kind, string Name, double Station, double Clock, double? Diameter);
