using Scribeline.Engine.Questions;

namespace Scribeline.App.Json;

/// <summary>The SI unit a value is held in.</summary>
internal static class UnitSymbol
{
    /// <summary>Its symbol; empty for plain numbers.</summary>
    public static string Of(Unit unit) => unit switch
    {
        Unit.Ratio or Unit.Share or Unit.Calibre or Unit.Count or Unit.Mach => "",
        Unit.Length or Unit.Height => "m",
        Unit.Mass => "kg",
        Unit.Inertia => "kg·m²",
        Unit.Time or Unit.WorkTime => "s",
        Unit.Area => "m²",
        Unit.Volume => "m³",
        Unit.Speed => "m/s",
        Unit.Acceleration => "m/s²",
        Unit.Force => "N",
        Unit.Pressure => "Pa",
        Unit.Energy => "J",
        Unit.Angle => "rad",
        Unit.Frequency => "Hz",
        Unit.Temperature => "K",
        Unit.Density => "kg/m³",
        Unit.Powder => "kg",
        Unit.Impulse => "N·s",
        Unit.Stiffness => "N·m²",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "has no symbol"),
    };
}
