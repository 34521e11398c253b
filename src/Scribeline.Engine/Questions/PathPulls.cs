using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;

namespace Scribeline.Engine.Questions;

/// <summary>A pull on an end of a cord, with the symbol it has in a working.</summary>
internal readonly record struct PathPull(double Force, string Symbol, string Cause);

/// <summary>
/// What pulls on each end of each cord: the jerk of its own harness, and of every canopy's opening the share that slows the mass beyond.
/// </summary>
internal sealed class PathPulls(Study study, FlightResult flown, ValueList<CanopyLoad> loads, Working w)
{
    private const string SecondLaw = "Newton's second law on what lies past it";

    /// <summary>Records each canopy's pull and each harness's jerk.</summary>
    public void Given()
    {
        for (var i = 0; i < loads.Count; i++)
        {
            w.Simulated($"O_{i + 1}", loads[i].Worst, "N", $"worst opening force of {loads[i].Canopy.Name}", "question opens");
            w.Given($"M_{i + 1}", loads[i].Mass, "kg", "mass that hangs on it", "question weight");
        }

        foreach (var jerk in study.Jerks.Where(j => j.Tension is not null))
            w.Simulated($"T_{jerk.Cord + 1}", jerk.Tension!.Value, "N", $"peak tension of {jerk.Harness.Name} as it runs out after {jerk.Firing.Charge.Name}", "question cords");
    }

    /// <summary>The pull of a canopy's opening on what lies between it and its cord.</summary>
    public PathPull AtCanopy(int load) => new(loads[load].Worst, $"O_{load + 1}", $"{loads[load].Canopy.Name} opens");

    /// <summary>The greatest pull on an end of a cord; null where nothing pulls.</summary>
    public PathPull? AtEnd(int cord, bool aft)
    {
        List<PathPull> all = [];
        if (study.Jerks.FirstOrDefault(j => j.Cord == cord) is { Tension: { } tension } jerk) all.Add(new(tension, $"T_{cord + 1}", $"jerk after {jerk.Firing.Charge.Name}"));
        for (var i = 0; i < loads.Count; i++)
        {
            if (Share(i, cord, aft) is { } share) all.Add(share);
        }

        return all.Count == 0 ? null : all.MaxBy(p => p.Force);
    }

    private PathPull? Share(int load, int cord, bool aft)
    {
        if (study.HangingOf(loads[load].Canopy.Name) is not { } hanging || study.JointOf(hanging.Cord) is not { } canopyJoint || study.JointOf(cord) is not { } joint) return null;
        if (Opened(joint) is not { } opened || opened > loads[load].Flown.LineStretch.Time) return null;
        var behind = cord == hanging.Cord ? aft : joint > canopyJoint;
        var (first, last) = (study.Vehicle.Whole.First, study.Vehicle.Whole.Last);
        var beyond = study.PieceProperties(behind ? new Piece(joint + 1, last) : new Piece(first, joint)).Mass;
        var id = $"{cord + 1}{(behind ? "a" : "f")}_{load + 1}";
        if (w.Steps.All(s => s.Symbol != $"L_{id}"))
        {
            var b = w.Given($"b_{id}", beyond, "kg", $"mass {(behind ? "behind" : "ahead of")} {study.Rocket.Separation.Harnesses[cord].Name}", "question weight");
            var (O, M) = (loads[load].Worst, loads[load].Mass);
            w.StepOf($"L_{id}", O * b / M, "N", $"its pull there as {loads[load].Canopy.Name} opens", SecondLaw, [("O", $"O_{load + 1}"), ("b", $"b_{id}"), ("M", $"M_{load + 1}")]);
        }

        return new(loads[load].Worst * beyond / loads[load].Mass, $"L_{id}", $"{loads[load].Canopy.Name} opens");
    }

    private double? Opened(int joint) => flown.Events
        .Where(e => e.Kind == FlightEventKind.Charge && study.Rocket.Firings.Any(f => f.Joint == joint && f.Name == e.Name))
        .Select(e => (double?)e.Time).Min();
}
