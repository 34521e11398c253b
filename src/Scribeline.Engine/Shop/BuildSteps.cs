using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>All steps of building a rocket, and what must come before what.</summary>
/// <param name="Steps">About in the order a builder would take them.</param>
/// <param name="Precedences">Between their ids, each with its reason.</param>
/// <param name="Missing">What to type so that nothing is guessed.</param>
/// <param name="Assumed">What stands in where nothing was typed, in sentences.</param>
public sealed record BuildSteps(ValueList<BuildStep> Steps, ValueList<Precedence> Precedences, ValueList<string> Missing, ValueList<string> Assumed)
{
    /// <summary>Of a rocket without parts.</summary>
    public static BuildSteps None { get; } = new([], [], [], []);

    /// <summary>Steps with the precedences that the general rules and the places themselves ask for.</summary>
    /// <param name="steps">With unique ids.</param>
    /// <param name="places">A place whose bond must have set, or whose holes must be made, before the bond of another place is begun, with the reason.</param>
    /// <param name="missing">What to type so that nothing is guessed.</param>
    /// <param name="assumed">What stands in where nothing was typed.</param>
    public static BuildSteps Of(
        ValueList<BuildStep> steps, IEnumerable<(string Before, string After, string Reason)> places, ValueList<string> missing, ValueList<string> assumed)
    {
        List<Precedence> precedences = [];
        foreach (var rule in BuildRule.All)
        {
            var after = steps.Where(s => s.Work == rule.After).ToArray();
            foreach (var before in steps.Where(s => s.Work == rule.Before))
                precedences.AddRange(after.Where(a => rule.Binds(before, a)).Select(a => new Precedence(before.Id, a.Id, rule.Hard, rule.Reason)));
        }

        foreach (var (before, after, reason) in places)
        {
            foreach (var set in steps.Where(s => s.Place == before && s.Work is BuildWork.Cure or BuildWork.Deburr))
                precedences.AddRange(steps.Where(s => s.Place == after && s.Work is BuildWork.DryFit or BuildWork.Scuff).Select(s => new Precedence(set.Id, s.Id, true, reason)));
        }

        return new(steps, precedences.ToValueList(), missing, assumed);
    }

    /// <summary>The order as a network.</summary>
    public PrecedenceSolution Solve() => PrecedenceNetwork.Solve(Steps.Select(s => s.Activity).ToValueList(), Precedences);

    /// <summary>The step with this id; null for none.</summary>
    /// <param name="id">As typed.</param>
    public BuildStep? Named(string id) => Steps.FirstOrDefault(s => s.Id == id);
}
