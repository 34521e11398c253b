using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A part of the stack.</summary>
[Kinds("kind", typeof(NoseConeDesign), typeof(TubeDesign), typeof(AltimeterBayDesign), typeof(CouplerDesign), typeof(TransitionDesign))]
public abstract record PartDesign : Placed
{
    [Key("Name, by which joints and stowed things find it.", Required = true, Names = true)]
    public required string Name { get; init; }

    [Key("What it is made of.")]
    public string? Material { get; init; }

    [Key("Weighed or estimated mass of the part with all that is fixed to it, without what is stowed in it and without the motor.", Sign = Sign.Above)]
    public Measure<Mass>? Mass { get; init; }

    [Key("Balance point, aft of the front of its own length (of its tip for a nose cone).")]
    public Measure<Length>? Balance { get; init; }

    [Key("Bulk plates fixed in it.")]
    public ValueList<PlateDesign> Plates { get; init; } = ValueList<PlateDesign>.Empty;

    [Key("Other things fixed in it, as masses: electronics, eye bolts, ballast.")]
    public ValueList<PointMassDesign> Masses { get; init; } = ValueList<PointMassDesign>.Empty;

    [Key("Holes that let the bay's air out.")]
    public ValueList<HolesDesign> Vents { get; init; } = ValueList<HolesDesign>.Empty;

    [Key("Rail guides.")]
    public ValueList<RailGuideDesign> RailGuides { get; init; } = ValueList<RailGuideDesign>.Empty;
}
