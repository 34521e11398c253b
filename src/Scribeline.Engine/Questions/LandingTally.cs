using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Questions;

/// <summary>What many flights of one kind say of the field. A flight that could not be computed to the ground counts as outside.</summary>
internal sealed class LandingTally
{
    /// <param name="ends">Of the flights.</param>
    /// <param name="pieces">Names of the pieces of their plan.</param>
    /// <param name="field">The field; null where none is known: nothing is outside then.</param>
    public LandingTally(EnsembleEnd[] ends, ValueList<string> pieces, LandingField? field)
    {
        Ends = ends.Length > MostEnds ? ends[..MostEnds] : ends;
        (Flights, Failed) = (ends.Length, ends.Count(e => e.Failed || e.Landings.Count == 0));
        var sound = ends.Where(e => !e.Failed && e.Landings.Count > 0).ToArray();
        Bodies = sound.SelectMany(e => e.Landings).GroupBy(l => (l.First, l.Last)).OrderBy(g => g.Key).Select(g => new LandingOfBody(
            g.Key.Last < g.Key.First ? "rocket" : string.Join(" and ", pieces.Skip(g.Key.First).Take(g.Key.Last - g.Key.First + 1)),
            g.Select(l => new LandingPoint(l.East, l.North)).ToValueList())).ToValueList();
        if (field is null) return;
        var points = sound.Select(e => e.Landings.Select(l => new LandingPoint(l.East, l.North)).ToArray()).ToArray();
        Outside = new(Failed + points.Count(p => p.Any(field.IsOutside)), Flights);
        Kept = field.Kept.Select(k => (k, new LandingShare(points.Count(p => p.Any(k.Area.Contains)), Flights))).ToValueList();
    }

    /// <summary>Flights that are kept whole, for failures to go on from.</summary>
    public const int MostEnds = 1000;

    /// <summary>The first flights, in order of their cases.</summary>
    public EnsembleEnd[] Ends { get; }

    /// <summary>Flights flown.</summary>
    public int Flights { get; }

    /// <summary>Those that could not be computed to the ground.</summary>
    public int Failed { get; }

    /// <summary>Those with anything outside the field.</summary>
    public LandingShare Outside { get; }

    /// <summary>Those with anything on an area to keep clear of.</summary>
    public ValueList<(KeptArea Area, LandingShare Share)> Kept { get; } = [];

    /// <summary>What comes down as one, nose to tail.</summary>
    public ValueList<LandingOfBody> Bodies { get; }

    /// <summary>All of them for a map, with at most so many points of each.</summary>
    public IEnumerable<LandingCloud> Clouds(string name, int most) => Bodies.Select(b => new LandingCloud(
        Bodies.Count == 1 ? name : $"{name}: {b.Name}",
        b.Points.Take(most).ToValueList(),
        b.Scatter is { } scatter ? [scatter.Ellipse(0.5), scatter.Ellipse(0.95)] : []));
}

/// <summary>Landings of what comes down as one.</summary>
/// <param name="Name">Its pieces.</param>
/// <param name="Points">One for each flight that has it.</param>
internal sealed record LandingOfBody(string Name, ValueList<LandingPoint> Points)
{
    /// <summary>Their scatter; null for a single one.</summary>
    public LandingScatter? Scatter { get; } = Points.Count > 1 ? new(Points) : null;
}
