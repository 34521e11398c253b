using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A whole design file.</summary>
public sealed record RocketDesign : Placed
{
    [Key("Version of this file format: 1.", Required = true, Name = "scribeline", Example = "1")]
    public int FormatVersion { get; init; } = 1;

    [Key("Name of the rocket.", Required = true, Example = "Night Heron")]
    public string Name { get; init; } = "";

    [Key("System shown first on screen and paper.")]
    public DisplaySystem Display { get; init; }

    [Key("What the datum line marks.")]
    public string? ScribeLine { get; init; }

    [Key("Finish of the outside.")]
    public SurfaceDesign? Surface { get; init; }

    [Key("Materials of the builder's own, by the names parts use; they come before the tables.")]
    public ValueList<MaterialDesign> Materials { get; init; } = ValueList<MaterialDesign>.Empty;

    [Key("Adhesives of the builder's own, by the names bonds use; they come before the tables.")]
    public ValueList<AdhesiveDesign> Adhesives { get; init; } = ValueList<AdhesiveDesign>.Empty;

    [Key("How the bench works.")]
    public BenchDesign? Bench { get; init; }

    [Key("Parts, nose to tail.", Required = true)]
    public ValueList<PartDesign> Parts { get; init; } = ValueList<PartDesign>.Empty;

    [Key("How each part meets the next, nose to tail.", Required = true)]
    public ValueList<JointDesign> Joints { get; init; } = ValueList<JointDesign>.Empty;

    [Key("What lies loose in the bays: canopies, cords, blankets, links.")]
    public ValueList<StowedDesign> Stowed { get; init; } = ValueList<StowedDesign>.Empty;

    [Key("Altimeters, timers and motor delays with the charges they fire.")]
    public ValueList<FiringDesign> Firing { get; init; } = ValueList<FiringDesign>.Empty;

    [Key("Ejection charges.")]
    public ValueList<ChargeDesign> Charges { get; init; } = ValueList<ChargeDesign>.Empty;

    [Key("Failures of the builder's own, flown besides the standard ones.")]
    public ValueList<FailureDesign> Failures { get; init; } = ValueList<FailureDesign>.Empty;

    [Key("The motor: a motor file or its data in place.")]
    public FileOr<MotorDesign>? Motor { get; init; }

    [Key("The field: a site file or its data in place.")]
    public FileOr<SiteDesign>? Site { get; init; }

    [Key("The air of the day: a weather file or its data in place.")]
    public FileOr<WeatherDesign>? Weather { get; init; }

    [Key("The launch rail.")]
    public RailDesign? Rail { get; init; }

    [Key("Drag over that predicted, from flights; 1 where never flown.", Sign = Sign.Above)]
    public Measure<Ratio>? DragScale { get; init; }

    [Key("Impulse over that printed, from flights of motors of this kind; 1 where never flown.", Sign = Sign.Above)]
    public Measure<Ratio>? ThrustScale { get; init; }

    [Key("Time by which the pressure at the altimeters is behind that outside, from flights; flight records are read with it.", Sign = Sign.NotBelow)]
    public Measure<Duration>? PortLag { get; init; }

    [Key("The builder's own limits in place of the defaults, by id such as stable.margin.")]
    public ValueList<LimitDesign> Limits { get; init; } = ValueList<LimitDesign>.Empty;

    [Key("What was weighed and measured on the finished rocket.")]
    public RecordsDesign? Records { get; init; }
}

/// <summary>Which system of units is shown first.</summary>
public enum DisplaySystem
{
    /// <summary>Millimetres and grams.</summary>
    Metric,

    /// <summary>Inches and ounces.</summary>
    Inch,
}
