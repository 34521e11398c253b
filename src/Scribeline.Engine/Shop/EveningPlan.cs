using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// A network laid out over evenings for one pair of hands: at every moment the work that can start soonest, and among those the one that must
/// start soonest, is taken up. This is a rule of thumb (list scheduling), good but not always the best there can be. Waits go on overnight.
/// </summary>
/// <param name="Turns">In order of time.</param>
/// <param name="Hours">Length of an evening, s.</param>
public sealed record EveningPlan(ValueList<PlannedTurn> Turns, double Hours)
{
    /// <summary>From one evening's beginning to the next, s.</summary>
    public const double Day = 86_400;

    /// <summary>From the first evening's beginning to the end of the last wait or work, s.</summary>
    public double Elapsed => Turns.Select(t => t.Finish).DefaultIfEmpty(0).Max();

    /// <summary>Evenings with work, counted from the first to the last.</summary>
    public int Evenings => Turns.Where(t => t.Activity.HandsOn).Select(t => t.Evening).DefaultIfEmpty(0).Max();

    /// <summary>Lays a network out.</summary>
    /// <param name="network">Solved.</param>
    /// <param name="hours">Length of an evening, s, above 0, up to a day.</param>
    public static EveningPlan Of(PrecedenceNetwork network, double hours) => new Layout(network, Math.Clamp(hours, 60, Day)).Plan();

    private sealed class Layout(PrecedenceNetwork network, double hours)
    {
        private readonly List<PlannedTurn> turns = [];
        private readonly Dictionary<string, double> finished = [];
        private readonly List<ActivityTimes> left = [.. network.Times];
        private readonly ILookup<string, string> before = network.Precedences.ToLookup(p => p.After, p => p.Before);
        private double now;

        public EveningPlan Plan()
        {
            while (left.Count > 0)
            {
                if (left.Find(t => !t.Activity.HandsOn && Ready([t]) is not null) is { } wait) Take([wait], Ready([wait])!.Value);
                else Work();
            }

            return new(turns.OrderBy(t => t.Start).ThenBy(t => t.Finish).ToValueList(), hours);
        }

        private void Work()
        {
            var sittings = left.Where(t => t.Activity.HandsOn).GroupBy(t => t.Activity.Sitting ?? t.Activity.Id).Select(g => g.ToArray());
            var open = Startable(sittings);

            // Works of a sitting may wait for one another through something outside it: then they are taken one by one.
            if (open.Count == 0) open = Startable(left.Where(t => t.Activity.HandsOn).Select(t => (ActivityTimes[])[t]));
            var (works, start, _) = open.OrderBy(o => o.Start).ThenBy(o => o.Works.Min(w => w.LateStart)).ThenBy(o => o.Place).First();
            now = Take(works, start);
        }

        private List<(ActivityTimes[] Works, double Start, int Place)> Startable(IEnumerable<ActivityTimes[]> sittings) =>
            [.. sittings.Select((s, i) => (Works: s, Ready: Ready(s), Place: i)).Where(s => s.Ready is not null)
                .Select(s => (s.Works, Start(s.Works, Math.Max(now, s.Ready!.Value)), s.Place))];

        /// <summary>When all that must come before some works from outside them is finished; null where it is not laid out yet.</summary>
        private double? Ready(ActivityTimes[] works)
        {
            double ready = 0;
            foreach (var id in works.SelectMany(w => before[w.Activity.Id]).Where(b => works.All(w => w.Activity.Id != b)))
            {
                if (!finished.TryGetValue(id, out var at)) return null;
                ready = Math.Max(ready, at);
            }

            return ready;
        }

        // Tonight if it fits into what is left of the evening, or is longer than any evening and may be left half done; otherwise next evening.
        private double Start(ActivityTimes[] works, double from)
        {
            var evening = Math.Floor(from / Day) * Day;
            var length = works.Sum(w => w.Activity.Duration);
            var fits = from + length <= evening + hours + 1e-6 || (from == evening && length > hours);
            var parted = works is [{ Activity: { Sitting: null } }] && length > hours && from < evening + hours;
            return fits || parted ? from : evening + Day;
        }

        private double Take(ActivityTimes[] works, double start)
        {
            foreach (var work in works)
            {
                var activity = work.Activity;
                var end = activity is { HandsOn: true, Sitting: null } && activity.Duration > hours ? Parted(activity.Duration, start) : start + activity.Duration;
                turns.Add(new(activity, (int)Math.Floor(start / Day) + 1, start, end));
                finished[activity.Id] = start = end;
                left.Remove(work);
            }

            return start;
        }

        // Work longer than an evening is left each night and taken up again.
        private double Parted(double work, double start)
        {
            var evening = Math.Floor(start / Day) * Day;
            for (var room = evening + hours - start; work > room; room = hours)
            {
                work -= room;
                start = evening += Day;
            }

            return start + work;
        }
    }
}

/// <summary>An activity in its place.</summary>
/// <param name="Activity">Which.</param>
/// <param name="Evening">In which it begins, from 1; for a wait also when it begins after the evening's work.</param>
/// <param name="Start">s from the first evening's beginning.</param>
/// <param name="Finish">s from the first evening's beginning.</param>
public sealed record PlannedTurn(Activity Activity, int Evening, double Start, double Finish);
