namespace Scribeline.Engine.Air;

/// <summary>One row of a table of the air aloft.</summary>
/// <param name="Height">Geopotential height above sea, m, as soundings and forecasts give it.</param>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa, or null to follow from hydrostatic balance.</param>
public readonly record struct SoundingLevel(double Height, double Temperature, double? Pressure = null);
