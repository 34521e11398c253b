using System.Globalization;
using System.Text;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Commands;

/// <summary>Every shot as CSV: SI with units in the header, empty where nothing was typed.</summary>
internal static class ShotCsv
{
    /// <summary>The whole file.</summary>
    public static string Of(Study study)
    {
        // Without a flight nothing can be judged.
        var judged = (study.Missing.Count > 0 ? [] : study.JointTests).SelectMany(t => t.Shots.Select(s => (t.Name, Shot: s))).ToDictionary(s => s.Shot.Shot);
        StringBuilder text = new("shot,date,joint,charge,powder_kg,happened,pins,screw,temperature_K,wadding,held,speed_m_s,speed_standard_uncertainty_m_s,pressure_Pa,distance_m,free_volume_m3,counts,why,note,revision\n");
        foreach (var shot in study.Rocket.Shots)
        {
            var found = judged.TryGetValue(shot, out var known);
            text.AppendJoin(',', (string[])
            [
                Quoted(shot.Name), Quoted(shot.Date), Quoted(found ? known.Name : ""), Quoted(shot.Charge), Number(shot.Powder), shot.Outcome.ToString(),
                Number(shot.Pins), Quoted(shot.Screw ?? ""), Number(shot.Temperature), Quoted(shot.Wadding), shot.Held ? "yes" : "no",
                Number(shot.Speed?.Value), Number(shot.Speed is { } s ? s.Value * s.Share : null), Number(shot.Pressure?.Value), Number(shot.Distance), Number(shot.Volume),
                found && known.Shot.Evidence is not null ? "yes" : "no", Quoted(found ? known.Shot.Why : "no such charge"), Quoted(shot.Note), Quoted(shot.Revision),
            ]).Append('\n');
        }

        return text.ToString();
    }

    private static string Number(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    // A cell that a spreadsheet would take for a formula is kept as text.
    private static string Quoted(string text)
    {
        var safe = text is [('=' or '+' or '-' or '@'), ..] ? $"'{text}" : text;
        return safe.AsSpan().ContainsAny(",\"\n\r") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
