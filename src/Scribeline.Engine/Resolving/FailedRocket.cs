using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Resolving;

/// <summary>The rocket in which something has failed: an ordinary rocket, which flies, parts and lands by the same rules.</summary>
public static class FailedRocket
{
    /// <summary>The rocket with a failure.</summary>
    /// <param name="rocket">As planned.</param>
    /// <param name="failure">What fails; its motor is another matter, see <see cref="Failure.Of"/>.</param>
    /// <param name="temperature">Of the pins, K.</param>
    public static Rocket Of(Rocket rocket, Failure failure, double temperature)
    {
        var (firings, charges) = Together(rocket, failure);
        return rocket with
        {
            Firings = [.. failure.LetsGo, .. firings.Select(f => f with
            {
                Canopies = f.Canopies.Where(c => !failure.Unopened.Contains(c.Name)).ToValueList(),
                Trigger = f.Altimeter is null ? f.Trigger : Later(f.Trigger, failure.Late),
            })],
            Separation = rocket.Separation with
            {
                Joints = failure.StrongestPins ? rocket.Separation.Joints.Select(j => Strongest(j, temperature)).ToValueList() : rocket.Separation.Joints,
                Charges = charges.Select(c => failure.Powder == 1 ? c : c with { Impetus = failure.Powder * c.Impetus }).ToValueList(),
            },
        };
    }

    /// <summary>Which of two firings comes first, as far as their triggers tell without a flight.</summary>
    /// <param name="trigger">A trigger.</param>
    public static (int Moment, double After) Order(RecoveryTrigger trigger) => trigger switch
    {
        AfterLiftOff l => (0, l.Time),
        AfterBurnout b => (1, b.Delay),
        AtApogee a => (2, a.Delay),
        DescendingThrough d => (3, -d.Height),
        _ => (4, 0),
    };

    // Charges that burn together are one large charge, fired when the first of them is.
    private static (IEnumerable<Firing> Firings, IEnumerable<ChargeLoad> Charges) Together(Rocket rocket, Failure failure)
    {
        var burning = rocket.Firings.Where(f => !(f.Altimeter is { } a && failure.Dead.Contains(a)) && !(f.Charge is { } c && failure.Unfired.Contains(c))).ToArray();
        var first = burning.Where(f => f.Charge is { } c && failure.Together.Contains(c)).OrderBy(f => Order(f.Trigger)).FirstOrDefault();
        var loads = rocket.Separation.Charges.Where(c => failure.Together.Contains(c.Name)).ToArray();
        if (first is null || loads.Length < 2) return (burning, rocket.Separation.Charges);

        var one = loads.First(c => c.Name == first.Charge) with
        {
            Name = string.Join(" and ", failure.Together),
            Mass = loads.All(c => c.Mass is not null) ? loads.Sum(c => c.Mass) : null,
            GrainRadius = loads.Min(c => c.GrainRadius),
            Choice = null,
        };
        return (
            burning.Where(f => f == first || f.Charge is null || !failure.Together.Contains(f.Charge))
                .Select(f => f == first ? f with { Name = $"{f.Altimeter ?? "Motor"}: {one.Name}", Charge = one.Name } : f),
            [one, .. rocket.Separation.Charges.Where(c => !loads.Contains(c))]);
    }

    private static RecoveryTrigger Later(RecoveryTrigger trigger, double late) => trigger switch
    {
        _ when late == 0 => trigger,
        AtApogee a => a with { Delay = a.Delay + late },
        DescendingThrough d => d with { Delay = d.Delay + late },
        AfterLiftOff l => l with { Time = l.Time + late },
        _ => trigger,
    };

    private static JointRetention Strongest(JointRetention joint, double temperature)
    {
        var pins = joint.Pins;
        if (pins is not null)
        {
            var each = pins.Strongest(temperature) / pins.Count;
            pins = pins with { Low = each, Middle = each, High = each, Material = null };
        }

        return joint with { Pins = pins, Friction = joint.Friction with { Force = joint.Friction.Most, Least = joint.Friction.Most } };
    }
}
