using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>What a builder says of shots, checked before any of it is kept.</summary>
/// <param name="study">The design as it is now.</param>
/// <param name="design">As typed.</param>
/// <param name="text">Its text, of which a shot keeps the revision.</param>
/// <param name="now">The time it is.</param>
internal sealed class ShotEntries(Study study, RocketDesign design, string text, DateTimeOffset now)
{
    private const int RevisionDigits = 12;

    /// <summary>Keys of a shot that a person types, in the order of the form, with an example of each.</summary>
    public static IReadOnlyList<(string Key, string Label, string Example)> Keys { get; } =
    [
        ("charge", "Charge whose place it took", "Main A"),
        ("powder", "Powder as weighed", "1.40 g"),
        ("happened", "What happened", "parted"),
        ("speed", "Speed of the pieces from one another", "31 ft/s ± 3 ft/s"),
        ("filmed", "or filmed: distance, frames, rate", "24 in, 10 frames, 240 Hz"),
        ("distance", "How far apart they ended", "19 ft"),
        ("pressure", "Greatest pressure over that outside", "18 psi"),
        ("temperature", "Air temperature", "14 °C"),
        ("wadding", "What filled the room round the powder", "cellulose to the brim"),
        ("pins", "Pins fitted, if not as the design has", "2"),
        ("screw", "Screw of the pins, if another", "#2-56 nylon"),
        ("grain", "Grain, if another", "4F"),
        ("held", "Was the piece behind strapped fast?", "yes"),
        ("note", "Anything else", "harness right out"),
        ("date", "Day, if not today", "2026-05-09"),
    ];

    /// <summary>The words for what happened.</summary>
    public static IReadOnlyList<string> Outcomes { get; } = ["did not part", "gear stayed in", "parted", "parted hard", "broke"];

    /// <summary>Keeps a shot with what the design has for everything that was not typed.</summary>
    /// <param name="book">The logbook.</param>
    /// <param name="typed">Keys with what was typed.</param>
    /// <param name="problems">Why not; nothing is kept then.</param>
    public LoggedShot? Add(Logbook book, IReadOnlyDictionary<string, string> typed, List<Problem> problems)
    {
        var body = ShotText.Of(Filled(typed));
        var (shot, wrong) = ShotText.Read(body, "shot");
        problems.AddRange(wrong);
        if (shot is not null) ShotChecks.In(shot, design.Charges.Select(c => c.Name).ToValueList(), whole: true, problems);
        if (shot is null || problems.Count > 0) return null;
        var kept = book.Shoot(body, now);
        if (kept.Problem is { } problem) problems.Add(problem);
        return kept.Value;
    }

    /// <summary>Takes a shot out, or puts it back.</summary>
    public static void Mark(Logbook book, string number, bool takeOut, DateTimeOffset now, List<Problem> problems)
    {
        var digits = number.Trim().Replace("shot", "", StringComparison.OrdinalIgnoreCase).Trim();
        if (digits.StartsWith("file", StringComparison.OrdinalIgnoreCase))
        {
            problems.Add(new("", $"'{number.Trim()}' stands in the design file.", "Take it out there, under records: shots."));
            return;
        }

        var marked = long.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var which) ? book.Mark(which, takeOut, now) : new(null);
        if (marked.Problem is { } problem) problems.Add(problem);
        else if (marked.Value is null) problems.Add(new("", $"The logbook has no shot '{number.Trim()}' of this design.", "Type the number that stands before it in the list."));
    }

    /// <summary>The text of a design with its shots let count, or set aside.</summary>
    public static TextChange Count(string text, RocketDesign design, bool counts) => (design.Records, counts) switch
    {
        (null, true) => DesignText.Put(text, "records", "{shots count: yes}"),
        (null, false) or ({ ShotsCount: false }, false) => new(text, null),
        (_, true) => DesignText.Put(text, "records.shots count", "yes"),
        (_, false) => DesignText.Remove(text, "records.shots count"),
    };

    private IEnumerable<(string Key, string? Value)> Filled(IReadOnlyDictionary<string, string> typed)
    {
        var charge = design.Charges.FirstOrDefault(c => c.Name.Equals(typed.GetValueOrDefault("charge", "").Trim(), StringComparison.OrdinalIgnoreCase));
        var load = study.Rocket.Separation.Charges.FirstOrDefault(c => c.Name == charge?.Name);
        var pins = load is null ? null : study.Rocket.Separation.Of(load.Joint)?.Pins;
        var bay = load is null ? null : study.BayOf(load);
        foreach (var (key, _, _) in Keys)
        {
            var value = typed.GetValueOrDefault(key, "").Trim();
            yield return (key, value.Length > 0 ? key == "charge" ? charge?.Name ?? value : value : key switch
            {
                "pins" when load is not null => (pins?.Count ?? 0).ToString(CultureInfo.InvariantCulture),
                "screw" when pins is not null && typed.GetValueOrDefault("pins", "").Trim() != "0" => pins.Name,
                "grain" when charge is not null => charge.Powder switch { PowderWord.TwoF => "2F", PowderWord.ThreeF => "3F", _ => "4F" },
                "date" => now.ToLocalTime().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                _ => null,
            });
        }

        if (bay is not null) yield return ("volume", string.Create(CultureInfo.InvariantCulture, $"{bay.FreeVolume * 1e6:F1} cm³"));
        yield return ("revision", Logbook.HashOf(text)[..RevisionDigits]);
    }
}
