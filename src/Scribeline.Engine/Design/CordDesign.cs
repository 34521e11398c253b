using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Harness or shock cord.</summary>
public sealed record CordDesign : Placed
{
    [Key("Name; needed where two lie in one part.", Names = true)]
    public string? Name { get; init; }

    [Key("What it is made of, with its size, such as tubular nylon 9/16 in.", Required = true)]
    public required string Material { get; init; }

    [Key("Length, tie to tie.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("What it ties, front first: parts, plates, or Motor.", Required = true)]
    public ValueList<string> Ties { get; init; } = ValueList<string>.Empty;

    [Key("Mass of the whole cord.", Sign = Sign.Above)]
    public Measure<Mass>? Mass { get; init; }

    [Key("Mass per length.", Sign = Sign.Above)]
    public Measure<LinearDensity>? MassPerLength { get; init; }

    [Key("Breaking load.", Sign = Sign.Above)]
    public Measure<Force>? Strength { get; init; }

    [Key("Stretch at the breaking load, as a share of the length.", Sign = Sign.Above)]
    public Measure<Ratio>? Stretch { get; init; }

    [Key("Width, for the pressure on the edge of a tube.", Sign = Sign.Above)]
    public Measure<Length>? Width { get; init; }

    [Key("Share of its strength that knots or seams leave.", Sign = Sign.Above)]
    public Measure<Ratio>? JointEfficiency { get; init; }

    [Key("How its ends are made: sewn, figure-eight, bowline, overhand, larks head, clove hitch or splice; what they leave of the strength follows.")]
    public string? Ends { get; init; }

    [Key("Whether a sleeve or an aramid leader keeps the flame off it within a metre of the charge.")]
    public bool Sleeved { get; init; }

    [Key("Length it takes in the bay.", Sign = Sign.Above)]
    public Measure<Length>? PackedLength { get; init; }

    [Key("Volume it takes.", Sign = Sign.Above)]
    public Measure<Volume>? PackedVolume { get; init; }
}
