using Scribeline.Engine.Design;
using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Resolving;

/// <summary>Shots as typed, in SI.</summary>
internal static class ShotResolver
{
    public static ValueList<Shot> Resolve(RocketDesign design) => (design.Records?.Shots ?? []).Select((s, i) => Of(s, i + 1)).ToValueList();

    private static Shot Of(ShotDesign typed, int number) => new(
        typed.At.StartsWith("records", StringComparison.Ordinal) ? $"file {number}" : typed.At, typed.Charge, typed.Powder.Si, OutcomeOf(typed.Happened))
    {
        GrainRadius = typed.Grain is { } grain ? Powder.RadiusOf(grain) : null,
        Pins = typed.Pins,
        Screw = typed.Screw?.ToString(),
        Volume = typed.Volume?.Si,
        Temperature = typed.Temperature?.Si,
        Held = typed.Held,
        Distance = typed.Distance?.Si,
        Speed = typed.Speed is { } speed ? new(speed.Si, ShareOf(speed, ShotReading.UsualSpeed))
            : typed.Filmed is { } film ? ShotReading.Filmed(film.Distance.Si, ShareOf(film.Distance, 0), film.Frames, film.Rate.Si)
            : null,
        Pressure = typed.Pressure is { } pressure ? new(pressure.Si, ShareOf(pressure, ShotReading.UsualPressure)) : null,
        Wadding = typed.Wadding ?? "",
        Note = typed.Note ?? "",
        Date = typed.Date ?? "",
        Revision = typed.Revision ?? "",
    };

    private static double ShareOf(IMeasure measure, double usual) => measure.Sigma > 0 ? measure.Sigma / measure.Si : usual;

    private static ShotOutcome OutcomeOf(ShotWord word) => word switch
    {
        ShotWord.Stayed => ShotOutcome.Stayed,
        ShotWord.GearIn => ShotOutcome.GearIn,
        ShotWord.Parted => ShotOutcome.Clean,
        ShotWord.Hard => ShotOutcome.Hard,
        _ => ShotOutcome.Broke,
    };
}
