using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using static System.Math;

namespace Scribeline.Engine.Questions;

/// <summary>Walks from each canopy along its cord to both pieces, and names every element on the way with its load and capacity.</summary>
internal sealed class LoadPathSurvey
{
    private readonly Study study;
    private readonly ValueList<CanopyLoad> loads;
    private readonly Working w;
    private readonly PathPulls pulls;
    private readonly List<PathElement> elements = [];

    /// <param name="study">The rocket.</param>
    /// <param name="flown">A flight of it.</param>
    /// <param name="loads">How hard canopies open in that flight.</param>
    /// <param name="working">Where every step is recorded.</param>
    public LoadPathSurvey(Study study, FlightResult flown, ValueList<CanopyLoad> loads, Working working)
    {
        (this.study, this.loads, w) = (study, loads, working);
        pulls = new(study, flown, loads, working);
    }

    /// <summary>The elements, canopy by canopy, each from the canopy to the airframe.</summary>
    public ValueList<PathElement> Walk()
    {
        pulls.Given();
        HashSet<int> walked = [];
        for (var i = 0; i < loads.Count; i++)
        {
            Canopy(i);
            if (study.HangingOf(loads[i].Canopy.Name) is not { } hanging)
                elements.Add(new(loads[i].Canopy.Name, $"{loads[i].Canopy.Name}: what it hangs on", loads[i].Worst, $"{loads[i].Canopy.Name} opens", null, "", $"stowed: {loads[i].Canopy.Name}: on, the cord it hangs on"));
            else if (walked.Add(hanging.Cord)) Cord(hanging.Cord);
        }

        foreach (var jerk in study.Jerks.Where(j => !walked.Contains(j.Cord))) Cord(jerk.Cord);
        Strays();
        return elements.ToValueList();
    }

    private void Canopy(int load)
    {
        var canopy = loads[load].Canopy;
        var pull = pulls.AtCanopy(load);
        if (canopy.Lines is { } lines) Lines(canopy, lines, pull);
        if (canopy.Strength is { } whole) Add(canopy.Name, $"{canopy.Name}: canopy and seams", pull, Number("strength of canopy and seams", whole, "design"), "design");
        if (canopy is { Lines: null, Strength: null })
            Lacks(canopy.Name, $"{canopy.Name}: lines and seams", pull, $"stowed: {canopy.Name}: lines, with count and strength, or the strength of the whole");
        foreach (var link in study.Rocket.Rigging.Links)
        {
            if (link.Joins == canopy.Name) Link(canopy.Name, link, canopy.Name, pull);
            else if (link.Joins is null && link.Part == canopy.Part) Link(canopy.Name, link, $"{canopy.Name}, or wherever pulled hardest", Hardest(canopy, pull));
        }
    }

    private PathPull Hardest(Canopy canopy, PathPull pull) => study.HangingOf(canopy.Name) is not { } hanging ? pull
        : new[] { pulls.AtEnd(hanging.Cord, aft: false), pulls.AtEnd(hanging.Cord, aft: true) }.OfType<PathPull>().Append(pull).MaxBy(p => p.Force);

    // A link that lies with no canopy and says not what it joins is on no path: nobody knows what it carries.
    private void Strays()
    {
        foreach (var link in study.Rocket.Rigging.Links.Where(l => l.Joins is null && loads.All(x => x.Canopy.Part != l.Part)))
            elements.Add(new(link.Name, $"{link.Name} in {link.Part}", 0, "", null, "", $"{link.At}.joins: the canopy or tie that {link.Name} joins to a cord"));
    }

    private void Lines(Canopy canopy, CanopyLines lines, PathPull pull)
    {
        var name = $"{canopy.Name}: lines";
        if (lines.Strength is not { } strength)
        {
            Lacks(canopy.Name, name, pull, $"stowed: {canopy.Name}: lines: strength, or a material of the table");
            return;
        }

        var id = elements.Count + 1;
        var N = w.Given($"N_{id}", lines.Count, "", $"lines of {canopy.Name}", "design");
        var S = w.Given($"S_{id}", strength, "N", "breaking load of one", lines.Source);
        var p = w.Given($"p_{id}", canopy.ProjectedDiameter, "m", "inflated diameter", "Knacke (1991) tables 5-1 and 5-2, from memory");
        var l = w.Given($"l_{id}", lines.Length is { } length && length > p / 2 ? length : canopy.NominalDiameter, "m", "length of a line, or the nominal diameter where that is not typed", "design");
        var C = w.StepOf(
            $"C_{id}", N * S * 0.80 * Cos(Asin(p / (2 * l))) / 1.05, "N", $"{name}: capacity, sewn to 0.80, drawn together, a twentieth more on some", "Knacke (1991) ch. 6, from memory",
            [("N", $"N_{id}"), ("S", $"S_{id}"), ("p", $"p_{id}"), ("l", $"l_{id}")]);
        Judge(canopy.Name, name, pull, C, lines.Source);
    }

    private void Cord(int cord)
    {
        var (harness, rigged) = (study.Rocket.Separation.Harnesses[cord], study.Rocket.Rigging.Cords[cord]);
        PathPull?[] ends = [pulls.AtEnd(cord, aft: false), pulls.AtEnd(cord, aft: true)];
        if (study.Jerks.FirstOrDefault(j => j.Cord == cord) is { Tension: null })
            Lacks(harness.Name, $"{harness.Name}: its jerk", ends.OfType<PathPull>().DefaultIfEmpty().MaxBy(p => p.Force), $"{rigged.At}.{(harness.Strength is null ? "strength" : "stretch")}: of {harness.Name}, by the certificate of its lot");
        if (ends.OfType<PathPull>().ToArray() is { Length: > 0 } pulling)
        {
            var greatest = pulling.MaxBy(p => p.Force);
            if (harness.Strength is { } strength)
            {
                var id = elements.Count + 1;
                var S = w.Given($"S_{id}", strength, "N", $"breaking load of {harness.Name}", rigged.Source);
                var u = w.Given($"u_{id}", rigged.EndShare, "", "share that its ends leave", rigged.EndSource);
                Judge(harness.Name, $"{harness.Name}: cord with its ends", greatest, w.StepOf($"C_{id}", S * u, "N", $"{harness.Name}: capacity", "definition", [("S", $"S_{id}"), ("u", $"u_{id}")]), rigged.Source);
            }
            else
            {
                Lacks(harness.Name, $"{harness.Name}: cord with its ends", greatest, $"{rigged.At}.strength: of {harness.Name}, by the certificate of its lot");
            }
        }

        foreach (var anchor in study.Rocket.Rigging.Anchors.Where(a => a.Cord == cord))
        {
            if (ends[anchor.Aft ? 1 : 0] is { } pull) new LoadPathEnd(this, study, w, harness, anchor, pull).Walk();
        }
    }

    /// <summary>Adds a link where it joins something.</summary>
    internal void Link(string path, RiggedLink link, string place, PathPull pull)
    {
        var name = $"{link.Name} at {place}";
        if (link.WorkingLoad is { } load) Add(path, name, pull, Rated(load, link.Name, link.Source), link.Source);
        else if (link.Strength is { } strength)
        {
            var id = elements.Count + 1;
            var B = w.Given($"B_{id}", strength, "N", $"breaking load of {link.Name}", link.Source);
            Judge(path, name, pull, w.StepOf($"C_{id}", 2 * B / 5, "N", $"{name}: capacity, twice a fifth of what breaks it", "ASME B30.26: factor 5, from memory", [("B", $"B_{id}")]), link.Source);
        }
        else
        {
            Lacks(path, name, pull, $"{link.At}.working load: of {link.Name}, as stamped on it");
        }
    }

    /// <summary>Capacity of a part with a working load: twice that, so that a factor of 2 keeps the peak within it.</summary>
    internal Func<string, double> Rated(double load, string what, string source) => id =>
    {
        var W = w.Given($"W_{id}", load, "N", $"working load of {what}, in line", source);
        return w.StepOf($"C_{id}", 2 * W, "N", $"{what}: capacity, twice its working load", "a factor of 2 then keeps the peak within the working load", [("W", $"W_{id}")]);
    };

    private Func<string, double> Number(string what, double value, string source) => id => w.Given($"C_{id}", value, "N", what, source);

    /// <summary>Symbols of the next element end in this.</summary>
    internal string NextId => $"{elements.Count + 1}";

    /// <summary>Adds an element whose capacity a function records.</summary>
    internal void Add(string path, string name, PathPull pull, Func<string, double> capacity, string source) => Judge(path, name, pull, capacity(NextId), source);

    /// <summary>Adds an element whose capacity is recorded.</summary>
    internal void Judge(string path, string name, PathPull pull, double C, string source)
    {
        var F = pull.Force;
        if (F > 0) w.StepOf($"r_{NextId}", C / F, "", $"{name}: capacity over load, {pull.Cause}", "definition", [("C", $"C_{NextId}"), ("F", pull.Symbol)]);
        elements.Add(new(path, name, F, pull.Cause, C, source));
    }

    /// <summary>Adds an element whose capacity is not known.</summary>
    internal void Lacks(string path, string name, PathPull pull, string missing) => elements.Add(new(path, name, pull.Force, pull.Cause ?? "", null, "", missing));
}
