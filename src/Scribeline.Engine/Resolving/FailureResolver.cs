using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>The failures of a rocket: the standard ones that apply to it, then the builder's own.</summary>
internal sealed class FailureResolver(RocketDesign design, Vehicle vehicle, FiringResolver firing, ValueList<Firing> firings, Func<IMeasure, double> draw, List<Problem> problems)
{
    // Joints in the order in which they open. A rocket with one has no drogue joint.
    private readonly int[] joints = [.. firings.OrderBy(f => FailedRocket.Order(f.Trigger)).Select(f => f.Joint).Distinct()];

    private readonly string[] altimeters = [.. firings.Select(f => f.Altimeter).OfType<string>().Distinct()];

    /// <summary>All of them, in the order of the table and the file.</summary>
    public ValueList<Failure> Resolve()
    {
        if (joints.Length == 0) return [];
        var standard = StandardFailure.All.SelectMany(Standard).ToArray();
        var own = design.Failures.Select(Own).ToArray();
        foreach (var (failure, typed) in own.Zip(design.Failures).Where(f => standard.Any(s => s.Name.Equals(f.First.Name, StringComparison.OrdinalIgnoreCase))))
            problems.Add(new($"{typed.At}.name", $"'{failure.Name}' is one of the standard failures.", "Give it a name of its own."));
        return [.. standard, .. own];
    }

    private IEnumerable<Failure> Standard(StandardFailure row)
    {
        if (row.Dead == "each") return altimeters.Select(a => new Failure(row.Name.Replace("{altimeter}", a, StringComparison.Ordinal), row.Source) { Dead = [a] });
        if (row.Dead == "all") return altimeters.Length < 2 ? [] : [new(row.Name, row.Source) { Dead = [.. altimeters] }];
        var failure = new Failure(row.Name, row.Source) { StrongestPins = row.StrongestPins, Powder = row.Powder, BurnTime = row.BurnTime };
        if (row.Unfired.Length > 0)
        {
            var charges = ChargesOf(row.Unfired);
            return charges.Length == 0 ? [] : [failure with { Unfired = [.. charges] }];
        }

        if (row.Unopened.Length > 0)
        {
            var canopies = firings.Where(f => f.Joint == JointOf(row.Unopened)).SelectMany(f => f.Canopies).Select(c => c.Name).Distinct().ToArray();
            return canopies.Length == 0 ? [] : [failure with { Unopened = [.. canopies] }];
        }

        if (row.Together.Length > 0)
        {
            var charges = ChargesOf(row.Together);
            return charges.Length < 2 || !OneBay(charges) ? [] : [failure with { Together = [.. charges] }];
        }

        return row.LetsGo.Length == 0 ? [failure] : LettingGo(row.LetsGo) is { } opening ? [failure with { LetsGo = [opening] }] : [];
    }

    // Null where the role has no joint, or where that is how it opens anyway.
    private Firing? LettingGo(string says)
    {
        var words = says.Split(" at ");
        if (JointOf(words[0]) is not { } joint) return null;
        RecoveryTrigger trigger = words[1] == "apogee" ? new AtApogee() : new AfterBurnout(0);
        var planned = firings.Where(f => f.Joint == joint).MinBy(f => FailedRocket.Order(f.Trigger))!.Trigger;
        return FailedRocket.Order(planned).Moment <= FailedRocket.Order(trigger).Moment ? null : firing.LettingGo(joint, trigger, words[1]);
    }

    private Failure Own(FailureDesign typed) => new(typed.Name, typed.Source ?? "design")
    {
        Dead = typed.Dead,
        Unfired = typed.Unfired,
        Unopened = typed.Unopened,
        Together = typed.Together,
        StrongestPins = typed.StrongestPins,
        Powder = typed.Powder is { } powder ? Math.Max(draw(powder), 0) : 1,
        Impulse = typed.Impulse is { } impulse ? Math.Max(draw(impulse), 0.01) : 1,
        BurnTime = typed.BurnTime is { } time ? Math.Max(draw(time), 0.01) : 1,
        Late = typed.Late is { } late ? Math.Max(draw(late), 0) : 0,
        LetsGo = typed.LetsGo.Select(Own).OfType<Firing>().ToValueList(),
    };

    private Firing? Own(LettingGoDesign typed)
    {
        var after = typed.After is { } time ? Math.Max(draw(time), 0) : 0;
        var joint = typed.Between is [var ahead, _] ? vehicle.Joints.FirstOrDefault(j => vehicle.Parts[j.Forward].Name == ahead) : null;
        return joint is null ? null : typed.When switch
        {
            MomentWord.LiftOff => firing.LettingGo(joint.Forward, new AfterLiftOff(after), "lift-off"),
            MomentWord.Burnout => firing.LettingGo(joint.Forward, new AfterBurnout(after), "burnout"),
            _ => firing.LettingGo(joint.Forward, new AtApogee(after), "apogee"),
        };
    }

    private int? JointOf(string role) => role == "main" ? joints[^1] : joints.Length > 1 ? joints[0] : null;

    private string[] ChargesOf(string role) => JointOf(role) is { } joint ? [.. firings.Where(f => f.Joint == joint).Select(f => f.Charge).OfType<string>().Distinct()] : [];

    private bool OneBay(string[] charges) => design.Charges.Where(c => charges.Contains(c.Name)).Select(c => (c.On, c.Into)).Distinct().Count() == 1;
}
