namespace Scribeline.Engine.Air;

/// <summary>One level of a column of air; temperature is linear in geopotential height between levels.</summary>
/// <param name="Height">Geopotential height above sea, m.</param>
/// <param name="Temperature">K.</param>
/// <param name="VapourExcess">Virtual temperature less temperature, K; 0 in dry air.</param>
/// <param name="Pressure">Measured pressure, Pa, or null to follow from hydrostatic balance.</param>
public readonly record struct AirLevel(double Height, double Temperature, double VapourExcess = 0, double? Pressure = null);
