using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>The state of the air at one height.</summary>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa.</param>
/// <param name="Density">kg/m³, of moist air where humidity is known.</param>
/// <param name="SoundSpeed">m/s.</param>
/// <param name="Viscosity">Dynamic viscosity, Pa·s.</param>
public readonly record struct AirState<T>(T Temperature, T Pressure, T Density, T SoundSpeed, T Viscosity)
    where T : struct, IReal<T>;
