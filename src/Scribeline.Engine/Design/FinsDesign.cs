using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A set of equal fins, evenly spaced.</summary>
public sealed record FinsDesign : Placed
{
    [Key("How many, 3 to 8.", Required = true, Sign = Sign.Above)]
    public required int Count { get; init; }

    [Key("Planform.", Required = true)]
    public required FinShape Shape { get; init; }

    [Key("Root chord; not for a free outline.", Sign = Sign.Above)]
    public Measure<Length>? Root { get; init; }

    [Key("Tip chord of a trapezoid.", Sign = Sign.NotBelow)]
    public Measure<Length>? Tip { get; init; }

    [Key("Exposed span, root to tip; not for a free outline.", Sign = Sign.Above)]
    public Measure<Length>? Span { get; init; }

    [Key("Tip leading edge aft of the root's, for a trapezoid.")]
    public Measure<Length>? Sweep { get; init; }

    [Key("Corners of a free outline, each [aft, out] from the root's leading edge; the first is [0, 0], the last is [root, 0].")]
    public ValueList<CornerDesign> Corners { get; init; } = ValueList<CornerDesign>.Empty;

    [Key("Thickness.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Thickness { get; init; }

    [Key("Both edges, unless typed apart.")]
    public EdgeWord? Edge { get; init; }

    [Key("Leading edge.")]
    public EdgeWord? LeadingEdge { get; init; }

    [Key("Trailing edge.")]
    public EdgeWord? TrailingEdge { get; init; }

    [Key("Length of a bevel along the chord.", Sign = Sign.Above)]
    public Measure<Length>? Bevel { get; init; }

    [Key("Cant; positive rolls the rocket clockwise looking forward from the tail.")]
    public Measure<Angle>? Cant { get; init; }

    [Key("From the tube's aft end to the root's trailing edge.", Required = true)]
    public required Measure<Length> FromAftEnd { get; init; }

    [Key("Clock angle of the first fin; needed to check guides and holes against fins.")]
    public Measure<Angle>? FirstClock { get; init; }

    [Key("What they are made of, if not of what the tube is.")]
    public string? Material { get; init; }

    [Key("Tab through the wall.")]
    public TabDesign? Tab { get; init; }

    [Key("Adhesive of root and fillets.")]
    public string? Adhesive { get; init; }

    [Key("Radius of the fillet at the root.", Sign = Sign.Above)]
    public Measure<Length>? Fillet { get; init; }
}

/// <summary>Planforms.</summary>
public enum FinShape
{
    /// <summary>Root, tip, span, sweep.</summary>
    Trapezoid,

    /// <summary>Half ellipse: root, span.</summary>
    Elliptical,

    /// <summary>Corners.</summary>
    Free,
}

/// <summary>Sections of a fin's edge.</summary>
public enum EdgeWord
{
    /// <summary>Cut square.</summary>
    Square,

    /// <summary>Half round.</summary>
    Rounded,

    /// <summary>Bevelled to a thin edge; needs a bevel.</summary>
    Sharp,
}

/// <summary>Corner of a fin.</summary>
[InOrder]
public sealed record CornerDesign : Placed
{
    [Key("Aft of the root's leading edge.", Required = true)]
    public required Measure<Length> Aft { get; init; }

    [Key("Out from the root.", Required = true, Sign = Sign.NotBelow)]
    public required Measure<Length> Out { get; init; }
}

/// <summary>Tab of a fin through the wall.</summary>
public sealed record TabDesign : Placed
{
    [Key("Along the root.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("From the tube's outside inwards.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Depth { get; init; }

    [Key("From the root's leading edge to the tab's front.", Sign = Sign.NotBelow)]
    public Measure<Length>? FromLeadingEdge { get; init; }
}
