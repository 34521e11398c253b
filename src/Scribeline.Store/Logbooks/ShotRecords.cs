using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>Shots of a logbook, given to a design as its records.</summary>
public static class ShotRecords
{
    /// <summary>
    /// The design with the logbook's shots after its own, each known by its number; shots taken out are left out. A shot whose charge the design
    /// no longer has stays among them: it is shown, and counts for nothing.
    /// </summary>
    /// <param name="design">As typed.</param>
    /// <param name="logged">Every shot of the logbook.</param>
    public static RocketDesign AddTo(RocketDesign design, ValueList<LoggedShot> logged)
    {
        var read = logged.Where(s => !s.Out).Select(s => ShotText.Read(s.Body, NameOf(s)).Shot is { } shot ? shot with { Date = shot.Date ?? $"{s.At:yyyy-MM-dd}" } : null).OfType<ShotDesign>().ToArray();
        if (read.Length == 0) return design;
        var records = design.Records ?? new RecordsDesign();
        return design with { Records = records with { Shots = [.. records.Shots, .. read] } };
    }

    /// <summary>What a shot of the logbook is called: <c>shot 3</c>.</summary>
    public static string NameOf(LoggedShot shot) => $"shot {shot.Number}";
}
