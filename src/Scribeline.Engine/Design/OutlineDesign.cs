using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>The outline of a field and what on it must be kept clear, typed in place or read from a file of places.</summary>
public sealed record OutlineDesign : Placed
{
    [Key("Corners of the field in order, each as [east, north] of the pad.", Required = true)]
    public ValueList<FieldCornerDesign> Corners { get; init; } = ValueList<FieldCornerDesign>.Empty;

    [Key("Areas nothing may come down on.", Name = "no-go")]
    public ValueList<NoGoDesign> NoGo { get; init; } = ValueList<NoGoDesign>.Empty;

    /// <summary>Areas by latitude and longitude, where it was read from a file; the corners above are then empty.</summary>
    public ValueList<PlacedArea> Areas { get; init; } = ValueList<PlacedArea>.Empty;
}

/// <summary>A corner of an outline.</summary>
[InOrder]
public sealed record FieldCornerDesign : Placed
{
    [Key("East of the pad; negative to the west.", Required = true)]
    public required Measure<Length> East { get; init; }

    [Key("North of the pad; negative to the south.", Required = true)]
    public required Measure<Length> North { get; init; }
}

/// <summary>An area nothing may come down on.</summary>
public sealed record NoGoDesign : Placed
{
    [Key("Name.", Required = true, Example = "County road")]
    public required string Name { get; init; }

    [Key("What is there.")]
    public AreaKind Kind { get; init; } = AreaKind.Other;

    [Key("Corners in order, each as [east, north] of the pad.", Required = true)]
    public ValueList<FieldCornerDesign> Corners { get; init; } = ValueList<FieldCornerDesign>.Empty;
}

/// <summary>What is in an area of a site.</summary>
public enum AreaKind
{
    /// <summary>Something else that must be kept clear.</summary>
    Other,

    /// <summary>People who watch, wait or park.</summary>
    Crowd,

    /// <summary>A road or railway.</summary>
    Road,

    /// <summary>Buildings.</summary>
    Buildings,

    /// <summary>Ground that must not be entered, such as crops or water.</summary>
    Ground,
}

/// <summary>An area by places, as a file gives it.</summary>
/// <param name="Name">As in the file; may be empty.</param>
/// <param name="Kind">What is there; null for the field itself.</param>
/// <param name="Ring">Corners in order, the last not repeated.</param>
public sealed record PlacedArea(string Name, AreaKind? Kind, ValueList<PlacedCorner> Ring);

/// <summary>A corner by its place.</summary>
/// <param name="Latitude">Degrees, north positive.</param>
/// <param name="Longitude">Degrees, east positive.</param>
public readonly record struct PlacedCorner(double Latitude, double Longitude);
