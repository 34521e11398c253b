using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>The outside of the rocket, all that the air sees. SI units; stations in metres aft of the nose tip.</summary>
/// <param name="Body">Sections in order from the tip, without gaps: nose, cylinders, transitions.</param>
/// <param name="Fins">Fin sets.</param>
/// <param name="Protuberances">Guides, lugs, screw heads, bands.</param>
/// <param name="Roughness">Equivalent sand roughness of the surface, m, 0 or more.</param>
/// <param name="BaseOpening">Diameter of the motor nozzle exit in the base, m; 0 if unknown.</param>
public sealed record OuterShape(
    ValueList<BodySection> Body,
    ValueList<FinSet> Fins,
    ValueList<Protuberance> Protuberances,
    double Roughness,
    double BaseOpening)
{
    /// <summary>Largest body diameter, m: the calibre and the reference length of every coefficient.</summary>
    public double ReferenceDiameter => Body.Max(s => Math.Max(s.FrontDiameter, s.RearDiameter));

    /// <summary>π d²/4 of the reference diameter, m².</summary>
    public double ReferenceArea => Math.PI * ReferenceDiameter * ReferenceDiameter / 4;

    /// <summary>Station of the base, m.</summary>
    public double Length => Body[^1].Front + Body[^1].Length;
}

/// <summary>Part of the body of revolution between two stations.</summary>
/// <param name="Name">Name of the part it belongs to.</param>
/// <param name="Profile">How the radius runs from front to rear.</param>
/// <param name="Front">Station of the front, m.</param>
/// <param name="Length">m, more than 0.</param>
/// <param name="FrontDiameter">m, 0 at a pointed nose.</param>
/// <param name="RearDiameter">m.</param>
public sealed record BodySection(string Name, BodyProfile Profile, double Front, double Length, double FrontDiameter, double RearDiameter);

/// <summary>Family of profiles of a body section.</summary>
public enum BodyShape
{
    /// <summary>Straight from front to rear radius: cone, cylinder, conical transition.</summary>
    Conical,

    /// <summary>Circular arc tangent to the cylinder behind.</summary>
    TangentOgive,

    /// <summary>Circular arc of radius Parameter times the tangent ogive's, Parameter &gt;= 1.</summary>
    SecantOgive,

    /// <summary>Half ellipsoid.</summary>
    Ellipsoid,

    /// <summary>Parabolic series, Parameter K' from 0 (cone) to 1 (full parabola).</summary>
    Parabola,

    /// <summary>Power series, Parameter n between 0 and 1.</summary>
    Power,

    /// <summary>Haack series, Parameter C: 0 von Kármán, 1/3 least drag for length and volume.</summary>
    Haack,
}

/// <summary>A profile family with its parameter.</summary>
/// <param name="Shape">The family.</param>
/// <param name="Parameter">Its parameter, see <see cref="BodyShape"/>; 0 where the family has none.</param>
public readonly record struct BodyProfile(BodyShape Shape, double Parameter = 0);

/// <summary>A set of equal fins, evenly spaced.</summary>
/// <param name="Name">Name, for messages.</param>
/// <param name="Count">3 to 8.</param>
/// <param name="Outline">Planform, in the plane of one fin.</param>
/// <param name="RootLeadingEdge">Station of the root chord's leading edge, m.</param>
/// <param name="BodyRadius">Radius of the body where the root sits, m.</param>
/// <param name="Thickness">Thickness at the root, m.</param>
/// <param name="LeadingEdge">Section of the leading edge.</param>
/// <param name="TrailingEdge">Section of the trailing edge.</param>
/// <param name="Bevel">Chordwise length of a bevelled or sharpened edge, m; 0 where it has none. A wedge section has a bevel as long as its chord.</param>
/// <param name="Cant">Cant angle, rad; positive rolls the rocket clockwise looking forward from the tail.</param>
/// <param name="FirstClock">Clock angle of the first fin, rad from the scribe line, clockwise looking forward from the tail.</param>
/// <param name="ShearModulus">Of the fin material, Pa; NaN where unknown.</param>
public sealed record FinSet(
    string Name,
    int Count,
    FinOutline Outline,
    double RootLeadingEdge,
    double BodyRadius,
    double Thickness,
    FinEdge LeadingEdge,
    FinEdge TrailingEdge,
    double Bevel,
    double Cant,
    double FirstClock,
    double ShearModulus);

/// <summary>Section of a fin's edge.</summary>
public enum FinEdge
{
    /// <summary>Cut square.</summary>
    Square,

    /// <summary>Half round.</summary>
    Rounded,

    /// <summary>Bevelled or sharpened to a thin edge.</summary>
    Sharp,
}

/// <summary>Planform of one fin: x aft of the root leading edge, y outboard from the root, m.</summary>
public abstract record FinOutline;

/// <summary>Trapezoid.</summary>
/// <param name="Root">Root chord, m.</param>
/// <param name="Tip">Tip chord, m, 0 or more.</param>
/// <param name="Span">Exposed semi-span root to tip, m.</param>
/// <param name="Sweep">Tip leading edge aft of the root leading edge, m.</param>
public sealed record TrapezoidFin(double Root, double Tip, double Span, double Sweep) : FinOutline;

/// <summary>Half ellipse on the root chord.</summary>
/// <param name="Root">Root chord, m.</param>
/// <param name="Span">Exposed semi-span, m.</param>
public sealed record EllipticalFin(double Root, double Span) : FinOutline;

/// <summary>Free outline: corners from the root leading edge (0, 0) round to the root trailing edge (root, 0).</summary>
/// <param name="Corners">At least three corners.</param>
public sealed record FreeFin(ValueList<FinCorner> Corners) : FinOutline;

/// <summary>A corner of a free outline.</summary>
/// <param name="X">Aft of the root leading edge, m.</param>
/// <param name="Y">Outboard of the root, m, 0 or more.</param>
public readonly record struct FinCorner(double X, double Y);

/// <summary>Something small that sticks out of the body.</summary>
/// <param name="Name">For messages.</param>
/// <param name="Station">m aft of the tip.</param>
/// <param name="Height">Out of the surface, m.</param>
/// <param name="Width">Across the flow, m.</param>
/// <param name="Count">How many.</param>
/// <param name="Faired">Whether it is streamlined.</param>
public sealed record Protuberance(string Name, double Station, double Height, double Width, int Count, bool Faired = false);
