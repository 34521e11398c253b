using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>Coefficients of the whole rocket at one condition, on the reference area π d²/4 and the reference diameter d.</summary>
/// <typeparam name="T">Number type.</typeparam>
/// <param name="Axial">C_A, positive aft (negative in rearward flight).</param>
/// <param name="NormalForce">C_N, 0 or more, towards the lee side.</param>
/// <param name="CentreOfPressure">Station where the normal force acts, m; at zero angle the limit.</param>
/// <param name="DampingSum0">Σ C_Nα,i, 1/rad.</param>
/// <param name="DampingSum1">Σ C_Nα,i X_i, m/rad.</param>
/// <param name="DampingSum2">Σ C_Nα,i X_i², m²/rad: C_mq(x) = −2 (S2 − 2 x S1 + x² S0)/d² per q d/2V.</param>
/// <param name="RollForcing">C_l of the canted fins at zero roll rate.</param>
/// <param name="RollDamping">C_lp per p d/2V, 0 or less.</param>
public readonly record struct AeroCoefficients<T>(
    T Axial,
    T NormalForce,
    T CentreOfPressure,
    T DampingSum0,
    T DampingSum1,
    T DampingSum2,
    T RollForcing,
    T RollDamping)
    where T : struct, IReal<T>;
