namespace Scribeline.Engine.Air;

/// <summary>One row of a winds-aloft table.</summary>
/// <param name="Height">m above ground.</param>
/// <param name="Speed">m/s, 0 or more.</param>
/// <param name="From">Direction the wind comes from, rad clockwise from north.</param>
public readonly record struct WindLayer(double Height, double Speed, double From);
