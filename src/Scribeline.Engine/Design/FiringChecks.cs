using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions of charges and of what fires them.</summary>
internal static class FiringChecks
{
    internal static void In(RocketDesign design, DesignNames names, List<Problem> problems)
    {
        foreach (var firing in design.Firing) Firing(firing, names, problems);
        string[] seats = [.. names.Plates, DesignChecks.Motor];
        foreach (var charge in design.Charges)
        {
            names.Need(charge.On, seats, "plate", $"{charge.At}.on", problems);
            names.Need(charge.Into, names.Parts, "part", $"{charge.At}.into", problems);
            if (charge.Mass.Of is { } other) names.Need(other, names.Charges, "charge", $"{charge.At}.mass", problems);
            if (names.Whole && design.Firing.Count > 0 && !Fired(design).Contains(charge.Name))
                problems.Add(new(charge.At, $"Nothing fires the charge '{charge.Name}'.", "Name it under firing, or remove it."));
        }

        Circles(design, problems);
    }

    private static IEnumerable<string> Fired(RocketDesign design) => design.Firing.SelectMany(f =>
        (string?[])[f.Apogee?.Charge, f.DescendingThrough?.Charge, f.AtTime?.Charge, f.MotorDelay?.Charge]).OfType<string>();

    private static void Firing(FiringDesign firing, DesignNames names, List<Problem> problems)
    {
        (string Key, string? Charge)[] channels =
        [
            ("apogee", firing.Apogee?.Charge), ("descending through", firing.DescendingThrough?.Charge), ("at time", firing.AtTime?.Charge),
            ("motor delay", firing.MotorDelay?.Charge),
        ];
        foreach (var (key, charge) in channels)
        {
            if (charge is not null) names.Need(charge, names.Charges, "charge", $"{firing.At}.{key}.charge", problems);
        }

        if (firing.MotorDelay is null && firing.Altimeter is null)
            problems.Add(new(firing.At, "The altimeter has no name.", "Add altimeter: its name, or motor delay for the motor's own charge."));
        if (names.Whole && channels.All(c => c.Charge is null))
            problems.Add(new(firing.At, $"'{firing.Altimeter}' fires nothing.", "Add apogee, descending through, at time or motor delay."));
    }

    // A share of a share is fine; a share that leads back to itself has no mass.
    private static void Circles(RocketDesign design, List<Problem> problems)
    {
        var of = design.Charges.Where(c => c.Mass.Of is not null).GroupBy(c => c.Name).ToDictionary(g => g.Key, g => g.First().Mass.Of!);
        foreach (var charge in design.Charges)
        {
            List<string> chain = [charge.Name];
            while (of.TryGetValue(chain[^1], out var next) && chain.Count <= of.Count)
            {
                chain.Add(next);
                if (next == charge.Name) break;
            }

            if (chain.Count > 1 && chain[^1] == charge.Name)
                problems.Add(new($"{charge.At}.mass", $"The mass leads back to itself: {string.Join(", a share of ", chain)}.", "Give one of them a mass, or auto."));
        }
    }
}
