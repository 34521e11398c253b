using System.Runtime.CompilerServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Rotation of a body whose mass may be leaving it.
/// Source: Thomson, Introduction to Space Dynamics, variable mass and jet damping; Meirovitch, J. Spacecraft 7 (1970) (from memory).
/// </summary>
internal static class RigidBody
{
    /// <summary>Angular acceleration in body axes: I ω' = M − ω × (I ω), rad/s².</summary>
    public static void AngularAcceleration<T>(in Inertia<T> inertia, in Vector3<T> rate, in Vector3<T> moment, out Vector3<T> angular)
        where T : struct, IReal<T> => angular = inertia.Solve(moment - Vector3<T>.Cross(rate, inertia * rate));

    /// <summary>
    /// Moment of the leaving gas and the shrinking inertia, N·m:
    /// −İω − ṁ l_e² (ω − ω_x e_x) − ṁ k_e² ω_x e_x.
    /// </summary>
    /// <param name="rate">ω, rad/s, body axes.</param>
    /// <param name="outflow">ṁ, kg/s, more than 0 while mass leaves.</param>
    /// <param name="arm">l_e, centre of mass to nozzle exit, m.</param>
    /// <param name="exitGyration">k_e², half the exit radius squared, m².</param>
    /// <param name="axialRate">İ about the long axis, kg·m²/s.</param>
    /// <param name="transverseRate">İ across it, kg·m²/s.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3<T> JetDamping<T>(Vector3<T> rate, T outflow, T arm, T exitGyration, T axialRate, T transverseRate)
        where T : struct, IReal<T>
    {
        T across = transverseRate + outflow * arm * arm;
        return -new Vector3<T>((axialRate + outflow * exitGyration) * rate.X, across * rate.Y, across * rate.Z);
    }
}
