using System.Globalization;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Something that goes wrong, as data: in what a failed rocket differs from the one as planned. SI; compared by value.</summary>
/// <param name="Name">In plain words, unique for a rocket.</param>
/// <param name="Source">Publication, assumption, "common practice" or the design.</param>
public sealed record Failure(string Name, string Source)
{
    /// <summary>Nothing fails.</summary>
    public static Failure None { get; } = new("As planned", "design");

    /// <summary>Altimeters that fire nothing.</summary>
    public ValueList<string> Dead { get; init; } = [];

    /// <summary>Charges that do not burn.</summary>
    public ValueList<string> Unfired { get; init; } = [];

    /// <summary>Canopies that come out and do not open.</summary>
    public ValueList<string> Unopened { get; init; } = [];

    /// <summary>Joints that let go by themselves, each as a firing without a charge.</summary>
    public ValueList<Firing> LetsGo { get; init; } = [];

    /// <summary>Charges of one bay that burn together when the first of them is fired.</summary>
    public ValueList<string> Together { get; init; } = [];

    /// <summary>Whether every joint holds as much as it may.</summary>
    public bool StrongestPins { get; init; }

    /// <summary>Share of the heat and gas the powder gives.</summary>
    public double Powder { get; init; } = 1;

    /// <summary>Total impulse of the motor over that tested.</summary>
    public double Impulse { get; init; } = 1;

    /// <summary>Burn time of the motor over that tested.</summary>
    public double BurnTime { get; init; } = 1;

    /// <summary>How much later than told every altimeter fires, s.</summary>
    public double Late { get; init; }

    /// <summary>Whether the climb is another one.</summary>
    public bool ChangesMotor => Impulse != 1 || BurnTime != 1;

    /// <summary>
    /// How many things must fail at once. Pins and powder at one end of what they may be are one, and so is a motor of another temperature; one
    /// cause that silences several things, such as a battery they share, is still counted by the things.
    /// </summary>
    public int Things => Dead.Count + Unfired.Count + Unopened.Count + LetsGo.Count + (Together.Count > 0 ? 1 : 0)
        + (StrongestPins || Powder != 1 ? 1 : 0) + (ChangesMotor ? 1 : 0) + (Late > 0 ? 1 : 0);

    /// <summary>What is wrong, in one line.</summary>
    public string Says
    {
        get
        {
            List<string> says = [];
            if (Dead.Count > 0) says.Add($"{Words(Dead)} {(Dead.Count == 1 ? "fires" : "fire")} nothing");
            if (Unfired.Count > 0) says.Add($"{Words(Unfired)} {(Unfired.Count == 1 ? "does" : "do")} not burn");
            if (Unopened.Count > 0) says.Add($"{Words(Unopened)} {(Unopened.Count == 1 ? "comes out and does" : "come out and do")} not open");
            says.AddRange(LetsGo.Select(f => f.Name));
            if (Together.Count > 0) says.Add($"{Words(Together)} burn together");
            if (StrongestPins) says.Add("every joint holds as much as it may");
            if (Powder != 1) says.Add($"the powder gives {Share(Powder)} of its heat");
            if (Impulse != 1) says.Add($"the motor gives {Share(Impulse)} of its impulse");
            if (BurnTime != 1) says.Add($"the motor burns for {Share(BurnTime)} of its time, its thrust {Share(Impulse / BurnTime)}");
            if (Late > 0) says.Add(string.Create(CultureInfo.InvariantCulture, $"every altimeter fires {Late:0.##} s late"));
            return says.Count == 0 ? "nothing" : string.Join("; ", says);
        }
    }

    /// <summary>The motor of the failed rocket.</summary>
    /// <param name="motor">As tested.</param>
    public Motor Of(Motor motor) => ChangesMotor ? motor.Scaled(Impulse, BurnTime) : motor;

    private static string Words(ValueList<string> names) => names.Count < 3 ? string.Join(" and ", names) : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    private static string Share(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.#} %");
}
