using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// Activities in order with their times: order after Kahn (Topological sorting of large networks, Comm. ACM 5 (1962) 558), times by the
/// critical-path method (Kelley and Walker, Proc. Eastern Joint Computer Conf. 1959, 160), as if there were hands enough for everything.
/// </summary>
/// <param name="Times">Every activity, in an order that keeps all precedences; among those free to choose from, the order given.</param>
/// <param name="Precedences">Those kept.</param>
/// <param name="GivenUp">Soft precedences that the others contradict.</param>
/// <param name="CriticalPath">Ids of the chain that sets the duration, first to last.</param>
/// <param name="Duration">From the beginning to the end of the last activity, s.</param>
public sealed record PrecedenceNetwork(
    ValueList<ActivityTimes> Times, ValueList<Precedence> Precedences, ValueList<Precedence> GivenUp, ValueList<string> CriticalPath, double Duration)
{
    /// <summary>Time of hands, s.</summary>
    public double HandsOn => Times.Where(t => t.Activity.HandsOn).Sum(t => t.Activity.Duration);

    /// <summary>What must or should come before an activity.</summary>
    /// <param name="id">Its id.</param>
    public IEnumerable<Precedence> Before(string id) => Precedences.Where(p => p.After == id);

    /// <summary>What must come right before each activity, by its id: those precedences that do not follow from others.</summary>
    public ILookup<string, Precedence> Directly()
    {
        Dictionary<string, HashSet<string>> earlier = [];
        var before = Precedences.ToLookup(p => p.After);
        foreach (var id in Times.Select(t => t.Activity.Id)) earlier[id] = [.. before[id].SelectMany(p => earlier[p.Before].Append(p.Before))];
        return Precedences.DistinctBy(p => (p.Before, p.After))
            .Where(p => !before[p.After].Any(other => earlier[other.Before].Contains(p.Before))).ToLookup(p => p.After);
    }

    /// <summary>Solves a network.</summary>
    /// <param name="activities">In the order preferred where there is a choice; ids are unique.</param>
    /// <param name="precedences">Between them; those that name an unknown activity are left out.</param>
    public static PrecedenceSolution Solve(ValueList<Activity> activities, ValueList<Precedence> precedences)
    {
        var known = activities.Select(a => a.Id).ToHashSet(StringComparer.Ordinal);
        var links = new Links(known);
        List<Precedence> kept = [], givenUp = [];
        foreach (var hard in precedences.Where(p => p.Hard && known.Contains(p.Before) && known.Contains(p.After))) Keep(hard);
        if (links.Cycle() is { } cycle) return new(null, cycle);
        foreach (var soft in precedences.Where(p => !p.Hard && known.Contains(p.Before) && known.Contains(p.After)))
        {
            if (links.Leads(soft.After, soft.Before)) givenUp.Add(soft);
            else Keep(soft);
        }

        return new(Timed(links.Order(activities), links, kept, givenUp), []);

        void Keep(Precedence precedence)
        {
            links.Add(precedence.Before, precedence.After);
            kept.Add(precedence);
        }
    }

    private static PrecedenceNetwork Timed(List<Activity> order, Links links, List<Precedence> kept, List<Precedence> givenUp)
    {
        Dictionary<string, double> start = [], finish = [];
        foreach (var activity in order)
        {
            start[activity.Id] = links.Before(activity.Id).Select(b => finish[b]).DefaultIfEmpty(0).Max();
            finish[activity.Id] = start[activity.Id] + activity.Duration;
        }

        var end = finish.Values.DefaultIfEmpty(0).Max();
        Dictionary<string, double> late = [];
        var duration = order.ToDictionary(a => a.Id, a => a.Duration);
        foreach (var activity in Enumerable.Reverse(order))
            late[activity.Id] = links.After(activity.Id).Select(a => late[a] - duration[a]).DefaultIfEmpty(end).Min();
        return new(
            order.Select(a => new ActivityTimes(a, start[a.Id], late[a.Id])).ToValueList(), kept.ToValueList(), givenUp.ToValueList(), Critical(), end);

        // Back from the end, always through the one that was waited for.
        ValueList<string> Critical()
        {
            List<string> path = [];
            for (var at = order.Find(a => finish[a.Id] == end)?.Id; at is not null; at = links.Before(at).FirstOrDefault(b => finish[b] == start[at])) path.Insert(0, at);
            return path.ToValueList();
        }
    }

    /// <summary>Who comes before and after whom.</summary>
    private sealed class Links(IEnumerable<string> ids)
    {
        private readonly Dictionary<string, (List<string> Before, List<string> After)> of = ids.ToDictionary(i => i, _ => (new List<string>(), new List<string>()));

        public void Add(string before, string after)
        {
            if (of[before].After.Contains(after)) return;
            of[before].After.Add(after);
            of[after].Before.Add(before);
        }

        public IReadOnlyList<string> Before(string id) => of[id].Before;

        public IReadOnlyList<string> After(string id) => of[id].After;

        public bool Leads(string from, string to)
        {
            Stack<string> open = new([from]);
            HashSet<string> seen = [from];
            while (open.TryPop(out var at))
            {
                if (at == to) return true;
                foreach (var next in of[at].After.Where(seen.Add)) open.Push(next);
            }

            return false;
        }

        /// <summary>The first activities that wait for each other, the first repeated at the end; null where there are none.</summary>
        public ValueList<string>? Cycle()
        {
            // What is left when everything without open predecessors is taken away, again and again, waits for itself.
            var waiting = of.ToDictionary(l => l.Key, l => l.Value.Before.Count);
            Queue<string> free = new(waiting.Where(w => w.Value == 0).Select(w => w.Key));
            while (free.TryDequeue(out var id))
            {
                waiting.Remove(id);
                foreach (var next in of[id].After.Where(n => --waiting[n] == 0)) free.Enqueue(next);
            }

            if (waiting.Count == 0) return null;
            List<string> path = [];
            for (var at = of.Keys.First(waiting.ContainsKey); !path.Contains(at); at = of[at].Before.First(waiting.ContainsKey)) path.Add(at);
            path.Add(of[path[^1]].Before.First(waiting.ContainsKey));
            return Enumerable.Reverse(path[path.IndexOf(path[^1])..]).ToValueList();
        }

        public List<Activity> Order(ValueList<Activity> activities)
        {
            var waiting = activities.ToDictionary(a => a.Id, a => of[a.Id].Before.Count);
            var place = activities.Select((a, i) => (a.Id, i)).ToDictionary(a => a.Id, a => a.i);
            PriorityQueue<Activity, int> free = new(activities.Where(a => waiting[a.Id] == 0).Select(a => (a, place[a.Id])));
            List<Activity> order = [];
            while (free.TryDequeue(out var activity, out _))
            {
                order.Add(activity);
                foreach (var next in of[activity.Id].After.Where(n => --waiting[n] == 0)) free.Enqueue(activities[place[next]], place[next]);
            }

            return order;
        }
    }
}

/// <summary>A solved network, or why it cannot be.</summary>
/// <param name="Network">null where activities wait for each other.</param>
/// <param name="Cycle">Ids of activities that wait for each other in this order, the first repeated at the end; empty where there are none.</param>
public sealed record PrecedenceSolution(PrecedenceNetwork? Network, ValueList<string> Cycle);
