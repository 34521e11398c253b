using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>The air of the day, at the ground and aloft.</summary>
public sealed record WeatherDesign : Placed
{
    [Key("Mean wind speed.", Sign = Sign.NotBelow)]
    public Measure<Speed>? WindSpeed { get; init; }

    [Key("Direction the wind comes from, clockwise from north.")]
    public Measure<Angle>? WindFrom { get; init; }

    [Key("Height above ground at which the wind was measured.", Sign = Sign.Above)]
    public Measure<Length>? MeasuredAt { get; init; }

    [Key("Speed of gusts.", Sign = Sign.NotBelow)]
    public Measure<Speed>? Gust { get; init; }

    [Key("Temperature.")]
    public Measure<Temperature>? Temperature { get; init; }

    [Key("Pressure at the pad itself.", Sign = Sign.Above)]
    public Measure<Pressure>? Pressure { get; init; }

    [Key("Altimeter setting (QNH), reduced to sea level.", Sign = Sign.Above)]
    public Measure<Pressure>? AltimeterSetting { get; init; }

    [Key("Relative humidity.", Sign = Sign.NotBelow)]
    public Measure<Ratio>? Humidity { get; init; }

    [Key("Roughness length of the ground.", Sign = Sign.Above)]
    public Measure<Length>? GroundRoughness { get; init; }

    [Key("Share of the sky that cloud or haze covers.", Sign = Sign.NotBelow)]
    public Measure<Ratio>? CloudCover { get; init; }

    [Key("Height of the lowest cloud above the pad.", Sign = Sign.Above)]
    public Measure<Length>? CloudBase { get; init; }

    [Key("How far one sees level.", Sign = Sign.Above)]
    public Measure<Length>? Visibility { get; init; }

    [Key("The air aloft, lowest first.")]
    public ValueList<LayerDesign> Layers { get; init; } = ValueList<LayerDesign>.Empty;
}

/// <summary>The air at one height.</summary>
public sealed record LayerDesign : Placed
{
    [Key("Height above the pad.", Required = true, Sign = Sign.NotBelow)]
    public required Measure<Length> Height { get; init; }

    [Key("Wind speed.", Sign = Sign.NotBelow)]
    public Measure<Speed>? WindSpeed { get; init; }

    [Key("Direction the wind comes from, clockwise from north.")]
    public Measure<Angle>? WindFrom { get; init; }

    [Key("Temperature.")]
    public Measure<Temperature>? Temperature { get; init; }

    [Key("Pressure at that height.", Sign = Sign.Above)]
    public Measure<Pressure>? Pressure { get; init; }
}
