using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions of the builder's own failures.</summary>
internal static class FailureChecks
{
    // A share typed without its sign, 70 for 70 %, is far beyond these.
    private const double LeastShare = 0.05, MostShare = 2;

    internal static void In(RocketDesign design, DesignNames names, List<Problem> problems)
    {
        foreach (var failure in design.Failures)
        {
            Known(failure.Dead, names.Altimeters, "altimeter", $"{failure.At}.dead", names, problems);
            Known(failure.Unfired, names.Charges, "charge", $"{failure.At}.unfired", names, problems);
            Known(failure.Unopened, names.Canopies, "canopy", $"{failure.At}.unopened", names, problems);
            Known(failure.Together, names.Charges, "charge", $"{failure.At}.together", names, problems);
            Together(failure, design, problems);
            foreach (var joint in failure.LetsGo) LetsGo(joint, names, problems);
            Share(failure.Powder, "powder", "70 %", problems);
            Share(failure.Impulse, "impulse", "95 %", problems);
            Share(failure.BurnTime, "burn time", "110 %", problems);
            if (Fails(failure) == 0)
                problems.Add(new(failure.At, $"Nothing fails in '{failure.Name}'.", "Add dead, unfired, unopened, lets go, together, strongest pins, powder, impulse, burn time or late."));
        }
    }

    private static int Fails(FailureDesign f) =>
        f.Dead.Count + f.Unfired.Count + f.Unopened.Count + f.LetsGo.Count + f.Together.Count + (f.StrongestPins ? 1 : 0)
        + new IMeasure?[] { f.Powder, f.Impulse, f.BurnTime, f.Late }.Count(m => m is not null);

    private static void Known(ValueList<string> typed, IReadOnlyList<string> known, string what, string at, DesignNames names, List<Problem> problems)
    {
        for (var i = 0; i < typed.Count; i++)
        {
            names.Need(typed[i], known, what, $"{at}[{i}]", problems);
            if (typed.Take(i).Contains(typed[i])) problems.Add(new($"{at}[{i}]", $"'{typed[i]}' is named twice.", "Name it once."));
        }
    }

    private static void Together(FailureDesign failure, RocketDesign design, List<Problem> problems)
    {
        if (failure.Together.Count == 0) return;
        if (failure.Together.Count == 1)
        {
            problems.Add(new($"{failure.At}.together", $"One charge, '{failure.Together[0]}', does not burn together with anything.", "Name two or more charges of one bay."));
            return;
        }

        var charges = failure.Together.Select(n => design.Charges.FirstOrDefault(c => c.Name == n)).OfType<ChargeDesign>().ToArray();
        if (charges.FirstOrDefault(c => c.On != charges[0].On || c.Into != charges[0].Into) is { } stray)
            problems.Add(new($"{failure.At}.together", $"'{charges[0].Name}' and '{stray.Name}' are not in one bay.", "Name charges with the same on and into."));
        foreach (var name in failure.Together.Where(failure.Unfired.Contains))
            problems.Add(new($"{failure.At}.together", $"'{name}' is said to burn and not to burn.", "Name it under together or under unfired."));
    }

    private static void LetsGo(LettingGoDesign joint, DesignNames names, List<Problem> problems)
    {
        if (joint.Between is not [var ahead, var behind])
        {
            problems.Add(new($"{joint.At}.between", $"A joint is between two parts, not {joint.Between.Count}.", "Write between: [the part ahead, the part behind]."));
            return;
        }

        names.Need(ahead, names.Parts, "part", $"{joint.At}.between[0]", problems);
        names.Need(behind, names.Parts, "part", $"{joint.At}.between[1]", problems);
        var (front, back) = (names.Parts.ToList().IndexOf(ahead), names.Parts.ToList().IndexOf(behind));
        if (names.Whole && front >= 0 && back >= 0 && back != front + 1)
            problems.Add(new($"{joint.At}.between", $"Nothing joins '{ahead}' to '{behind}'.", "Name neighbours, nose to tail."));
    }

    private static void Share(IMeasure? share, string key, string example, List<Problem> problems)
    {
        if (share is { Si: < LeastShare or > MostShare }) problems.Add(new(share.At, $"A share of {share.Text} is not meant.", $"Write one such as {key}: {example}, from 5 % to 200 %."));
    }
}
