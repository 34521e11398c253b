using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// The four integrals along the axis that give volume, centroid and inertia of a homogeneous body of revolution. They add and subtract,
/// so a hollow body is its outside less its inside. Distances s are measured aft from <paramref name="Origin"/>.
/// </summary>
/// <param name="Origin">Station the moments are about, m.</param>
/// <param name="R2">∫r²ds, m³; the volume is π times it.</param>
/// <param name="SR2">∫s·r²ds, m⁴.</param>
/// <param name="S2R2">∫s²·r²ds, m⁵.</param>
/// <param name="R4">∫r⁴ds, m⁵.</param>
/// <remarks>
/// Source: slices of a disc, ∫(y²+z²)dm = (π ρ/2)∫r⁴ds about the axis and (π ρ/4)∫r⁴ds + π ρ∫s²r²ds across it;
/// Beer and Johnston, Vector Mechanics for Engineers: Statics, ch. 9 (thin slabs), from memory.
/// </remarks>
public readonly record struct RevolutionMoments(double Origin, double R2, double SR2, double S2R2, double R4)
{
    /// <summary>m³.</summary>
    public double Volume => Math.PI * R2;

    /// <summary>Station of the centroid, m.</summary>
    public double Centroid => R2 == 0 ? Origin : Origin + SR2 / R2;

    /// <summary>Frustum, cylinder or cone, exactly.</summary>
    /// <param name="front">Station of the front, m.</param>
    /// <param name="length">m.</param>
    /// <param name="frontRadius">m.</param>
    /// <param name="rearRadius">m.</param>
    public static RevolutionMoments Frustum(double front, double length, double frontRadius, double rearRadius)
    {
        // r = a + b u over 0 <= u <= 1, expanded so that b = 0 needs no special case.
        double a = frontRadius, b = rearRadius - frontRadius, L = length;
        return new(
            front,
            L * (a * a + a * b + b * b / 3),
            L * L * (a * a / 2 + 2 * a * b / 3 + b * b / 4),
            L * L * L * (a * a / 3 + a * b / 2 + b * b / 5),
            L * (a * a * a * a + 2 * a * a * a * b + 2 * a * a * b * b + a * b * b * b + b * b * b * b / 5));
    }

    /// <summary>Tube, ring or plate between two radii, exactly.</summary>
    /// <param name="front">Station of the front face, m.</param>
    /// <param name="length">Along the axis, m.</param>
    /// <param name="outerDiameter">m.</param>
    /// <param name="innerDiameter">m; 0 for a full disc.</param>
    public static RevolutionMoments Ring(double front, double length, double outerDiameter, double innerDiameter) =>
        Frustum(front, length, outerDiameter / 2, outerDiameter / 2) - Frustum(front, length, innerDiameter / 2, innerDiameter / 2);

    /// <summary>The same body with its moments about another station.</summary>
    public RevolutionMoments About(double origin)
    {
        double d = Origin - origin;
        return new(origin, R2, SR2 + d * R2, S2R2 + 2 * d * SR2 + d * d * R2, R4);
    }

    /// <summary>Two bodies together.</summary>
    public static RevolutionMoments operator +(RevolutionMoments a, RevolutionMoments b)
    {
        b = b.About(a.Origin);
        return new(a.Origin, a.R2 + b.R2, a.SR2 + b.SR2, a.S2R2 + b.S2R2, a.R4 + b.R4);
    }

    /// <summary>A body with another cut out of it.</summary>
    public static RevolutionMoments operator -(RevolutionMoments a, RevolutionMoments b)
    {
        b = b.About(a.Origin);
        return new(a.Origin, a.R2 - b.R2, a.SR2 - b.SR2, a.S2R2 - b.S2R2, a.R4 - b.R4);
    }

    /// <summary>Mass properties of the body at a density.</summary>
    /// <param name="density">kg/m³.</param>
    public MassProperties Filled(double density)
    {
        if (R2 <= 0) return MassProperties.None(Origin);
        double c = SR2 / R2;
        double axial = density * Math.PI * R4 / 2;
        double lateral = axial / 2 + density * Math.PI * (S2R2 - c * SR2);
        return new(density * Volume, Origin + c, 0, 0, new(axial, lateral, lateral), Basis.Estimated);
    }
}
