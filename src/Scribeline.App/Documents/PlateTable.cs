using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>
/// A plate on which things are moved about: where each group lies, what becomes of the gaps when one is moved, and how its place is written
/// into the text. What the program proposed counts as lying where it was proposed.
/// </summary>
internal sealed class PlateTable
{
    private readonly RocketDesign design;
    private readonly PlateDraft draft;
    private readonly bool inch;

    /// <param name="design">The design as typed.</param>
    /// <param name="study">A study of it.</param>
    /// <param name="number">Index among the plates of the study.</param>
    public PlateTable(RocketDesign design, Study study, int number)
    {
        (this.design, inch, Solved) = (design, study.Rocket.Inch, study.Plates[number]);
        var plan = study.Rocket.Shop.Plates[number];
        Proposed = plan.Groups.Where(g => !g.Fixed).Select(g => g.Name).ToHashSet(StringComparer.Ordinal);
        draft = plan with { Groups = plan.Groups.Select(g => g.Fixed ? g : At(g, Solved.Proposals.First(p => p.Group == g.Name))).ToValueList() };
    }

    /// <summary>The plate as the study has it.</summary>
    public PlateLayout Solved { get; }

    /// <summary>What lies on it, in the order of the text.</summary>
    public ValueList<PlateGroup> Groups => draft.Groups;

    /// <summary>Names of the groups whose place is only proposed.</summary>
    public IReadOnlySet<string> Proposed { get; private init; }

    /// <summary>How to take hold of a group; null where it cannot be moved.</summary>
    public PlateHandle? Handle(string group) => PlateHandle.Of(design, Solved, group);

    /// <summary>The groups when one of them is moved: its like move to the same distance from the middle.</summary>
    public ValueList<PlateGroup> Moved(PlateMove move)
    {
        if (Handle(move.Group) is not { } held) return Groups;
        return Groups.Select(g => g.Name == move.Group ? g with { FromCentre = move.FromCentre, Clock = move.Clock }
            : IsLike(g, held) ? g with { FromCentre = move.FromCentre } : g).ToValueList();
    }

    /// <summary>The plate with its groups where they lie.</summary>
    public PlateLayout Laid(ValueList<PlateGroup> groups) => PlateSolver.Solve(draft with { Groups = groups });

    /// <summary>A place on the steps of a rule, and on every fifteenth degree where it is near one.</summary>
    /// <param name="move">Where it was dragged.</param>
    /// <param name="fine">On far finer steps.</param>
    public PlateMove Snapped(PlateMove move, bool fine)
    {
        var step = inch ? 0.0254 / (fine ? 64 : 32) : fine ? 0.1e-3 : 0.5e-3;
        var degrees = move.Clock * 180 / Math.PI;
        var near = Math.Round(degrees / 15) * 15;
        var turned = fine ? Math.Round(degrees * 2) / 2 : Math.Abs(degrees - near) <= 2.5 ? near : Math.Round(degrees);

        // Two legs of a rod at one place are no rods: what is repeated round the middle keeps off it.
        var least = Groups.First(g => g.Name == move.Group).Count > 1 ? step : 0;
        var most = Solved.Diameter / 2;
        return move with { FromCentre = Math.Clamp(Math.Round(move.FromCentre / step) * step, least, most), Clock = Degrees(turned * Math.PI / 180) * Math.PI / 180 };
    }

    /// <summary>Writes a place into the text, in the units the design displays.</summary>
    public TextChange Write(string text, PlateMove move)
    {
        var was = Groups.First(g => g.Name == move.Group);
        return Write(
            text,
            move.Group,
            Math.Abs(move.FromCentre - was.FromCentre!.Value) > 1e-7 || Proposed.Contains(move.Group) ? Length(Across(move.Group) * move.FromCentre) : null,
            Math.Abs(Math.IEEERemainder(move.Clock - was.Clock!.Value, 2 * Math.PI)) > 1e-6 || Proposed.Contains(move.Group) ? Angle(move.Clock) : null);
    }

    /// <summary>Writes a place into the text as it was typed.</summary>
    /// <param name="text">Text of the design.</param>
    /// <param name="group">Name of the group.</param>
    /// <param name="fromCentre">As typed; null leaves it.</param>
    /// <param name="clock">As typed; null leaves it.</param>
    public TextChange Write(string text, string group, string? fromCentre, string? clock)
    {
        if (Handle(group) is not { } held) return new(text, new("", $"{group} has no place of its own in the text.", "Change the text by hand."));
        if (fromCentre is null && clock is null) return new(text, null);
        return held.Write(text, fromCentre, clock, [.. Groups.Where(g => g.Name == group || IsLike(g, held)).Select(g => Angle(g.Clock!.Value))]);
    }

    /// <summary>Distance from the middle, or across it where that is what the text asks for, as one would type it.</summary>
    public string Typed(PlateGroup group) => Length(Across(group.Name) * group.FromCentre!.Value);

    /// <summary>Clock angle as one would type it.</summary>
    public static string Angle(double clock) => string.Create(CultureInfo.InvariantCulture, $"{Degrees(clock):0.##} deg");

    /// <summary>0 up to 360 degrees.</summary>
    public static double Degrees(double clock) => Math.Round((((clock * 180 / Math.PI) % 360) + 360) % 360, 2) % 360;

    private int Across(string group) => Handle(group)?.Across == true ? 2 : 1;

    private bool IsLike(PlateGroup other, PlateHandle held) =>
        held.Count > 1 && Handle(other.Name) is { } like && like.GetType() == held.GetType() && like with { Group = held.Group, Index = held.Index } == held;

    private string Length(double metres)
    {
        if (!inch) return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(metres * 1000, 2):0.##} mm");
        var inches = Math.Round(metres / 0.0254 * Inches.Finest, 3) / Inches.Finest;
        return (Inches.Fraction(inches) ?? inches.ToString("0.####", CultureInfo.InvariantCulture)) + " in";
    }

    private static PlateGroup At(PlateGroup group, PlateProposal proposal) => group with { FromCentre = proposal.FromCentre, Clock = proposal.Clock };
}

/// <summary>A group at another place.</summary>
/// <param name="Group">Its name.</param>
/// <param name="FromCentre">m.</param>
/// <param name="Clock">rad.</param>
internal sealed record PlateMove(string Group, double FromCentre, double Clock);
