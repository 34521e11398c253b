using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// Mass, balance and inertia of a body. Axes: x forward along the centreline (towards the nose), y towards clock angle 90°,
/// z towards clock angle 180° (right-handed; the scribe line at clock 0 is on the -z side). The centre of mass is given by its
/// station (aft of the nose tip) and its lateral offsets; inertia is about the centre of mass.
/// </summary>
/// <param name="Mass">kg, 0 or more.</param>
/// <param name="Station">Centre of mass, m aft of the nose tip.</param>
/// <param name="OffsetY">Lateral offset of the centre of mass, m.</param>
/// <param name="OffsetZ">Lateral offset of the centre of mass, m.</param>
/// <param name="Inertia">About the centre of mass, kg·m².</param>
/// <param name="Basis">Weakest basis among what matters.</param>
public readonly record struct MassProperties(double Mass, double Station, double OffsetY, double OffsetZ, InertiaTensor Inertia, Basis Basis);

/// <summary>Symmetric inertia tensor, kg·m²; products are the integrals of xy, xz, yz (so the tensor's off-diagonals are their negatives).</summary>
/// <param name="Xx">About the long axis: ∫(y²+z²)dm.</param>
/// <param name="Yy">∫(x²+z²)dm.</param>
/// <param name="Zz">∫(x²+y²)dm.</param>
/// <param name="Xy">∫xy dm.</param>
/// <param name="Xz">∫xz dm.</param>
/// <param name="Yz">∫yz dm.</param>
public readonly record struct InertiaTensor(double Xx, double Yy, double Zz, double Xy = 0, double Xz = 0, double Yz = 0);
