using System.Globalization;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;
using static System.Math;

namespace Scribeline.Engine.Questions.Bench;

/// <summary>Is each bond big enough, and how long have I got? Strength against what reaches each bond; amount, working time and cure of each adhesive.</summary>
public sealed class Bonds() : Question("bonds", "Is each bond big enough, and how long have I got?", Place.Bench)
{
    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var (bonds, practice) = (study.Rocket.Shop.Bonds, study.Rocket.Shop.Practice);
        if (bonds.Count == 0) draft.Note("Nothing of this rocket is bonded.");
        if (practice.Prepared is null && bonds.Count > 0) draft.Miss("bench.preparation: abraded or degreased, how faces are prepared");
        foreach (var (bond, i) in bonds.Select((b, i) => (b, i + 1))) Bond(draft, study, bond, practice.Prepared, i);
        foreach (var (adhesive, i) in bonds.Select(b => b.Adhesive).OfType<Adhesive>().Distinct().Select((a, i) => (a, i + 1)))
            Amount(draft, study, adhesive, [.. bonds.Where(b => b.Adhesive == adhesive)], practice, i);
        if (bonds.Count > 0) Heat(draft, study, bonds, practice);
        draft.List(() => Listed(study, bonds));
        Remarks(draft);
        return draft.Done();
    }

    private static void Bond(Draft draft, Study study, BondLine bond, double? prepared, int i)
    {
        if (bond.Adhesive is null)
        {
            draft.Miss($"{bond.At}: the adhesive of {bond.Name}, such as {Adhesive.All[0].Name}");
            return;
        }

        if (bond is { Kind: BondKind.FinRoots, Fillet: 0 })
        {
            draft.Miss($"{bond.At.Replace(".adhesive", ".fillet", StringComparison.Ordinal)}: radius of the fillets of {bond.Name}, which carry the fins' bending");
            return;
        }

        if (bond.Gap > 0) draft.Find($"{bond.Name}: thickness of the line", bond.Gap, Unit.Length, "bonds.line");
        if (prepared is not { } share || study.LoadsOn(bond).MaxBy(l => l.Force) is not { } load) return;
        var w = draft.Working;
        var names = Locals.Numbered($"_{i}", "t", "p", "c", "s", "A", "F");
        var F = w.Simulated($"F_{i}", load.Force, "N", $"{bond.Name}: {load.Name}", "the greatest of what reaches it");
        var A = w.Given($"A_{i}", Counted(bond), "m²", "bonded area that counts: 25 mm of length at most, and one fillet of each fin", "design; common practice");
        var t = w.Given($"t_{i}", bond.Adhesive.LapShear, "Pa", $"lap shear strength of {bond.Adhesive.Name}, at the low end", bond.Adhesive.Source);
        var p = w.Given($"p_{i}", share, "", "share that the preparation leaves", share < 1 ? "Nazari, Khoramishad and Hakimi (2024)" : "as tested");
        var c = w.Given($"c_{i}", bond.Wood ? JointBond.OnWood : JointBond.OnLaminate, "Pa", bond.Wood ? "most that wood carries" : "most that laminate carries before its own ply peels", "design shear: common practice");
        var s = w.StepOf($"s_{i}", Min(t * p / 3, c), "Pa", "design shear: a third of the tested strength, for shock", "common practice; ASTM D1002 compares adhesives and gives no design stress (ASTM D4896)", names);
        draft.Find($"{bond.Name}: strength over load", w.StepOf($"r_{i}", s * A / F, "", "strength over load", "definition", names), Unit.Ratio, "bonds.ratio");
    }

    // The fillet that is pulled carries the couple.
    private static double Counted(BondLine bond) => bond.Kind == BondKind.FinRoots
        ? bond.Length * bond.Fillet
        : bond.Area * Min(bond.Length, JointBond.LongestCounted) / bond.Length;

    private static void Amount(Draft draft, Study study, Adhesive adhesive, BondLine[] bonds, BenchPractice practice, int i)
    {
        var w = draft.Working;
        (string, string)[] names = [("V", $"V_a{i}"), ("k", $"k_a{i}"), ("q", $"q_a{i}"), ("m", $"m_a{i}"), ("P", $"P_a{i}"), ("T_1", $"T_1a{i}"), ("T_2", $"T_2a{i}"), ("E", $"E_a{i}"), ("x", $"x_a{i}")];
        var V = w.Simulated($"V_a{i}", bonds.Sum(b => b.Volume), "m³", $"{adhesive.Name} in lines and fillets of {bonds.Length} bonds", "annulus; concave fillet by Pappus");
        var k = w.Given($"k_a{i}", practice.Waste, "", "mixed over needed", "design, or common practice: 1.3 to 1.5");
        draft.Find($"{adhesive.Name}: to mix", w.StepOf($"v_a{i}", V * k, "m³", "to mix, with waste", "definition", names), Unit.Volume);
        double? mixed = null;
        if (adhesive.Density is { } density)
        {
            var q = w.Given($"q_a{i}", density, "kg/m³", "its density, mixed", adhesive.Source);
            mixed = w.StepOf($"m_a{i}", V * k * q, "kg", "mass to mix", "definition", names);
            draft.Find($"{adhesive.Name}: mass to mix", mixed.Value, Unit.Powder);
        }
        else
        {
            draft.Miss($"adhesives: density of {adhesive.Name}");
        }

        var T_1 = w.Given($"T_1a{i}", adhesive.Temperature, "K", "temperature of its data", adhesive.Source);
        var T_2 = w.Given($"T_2a{i}", study.BenchTemperature, "K", "temperature of the workshop", practice.Temperature is null ? "air of the day" : "design");
        var E = w.Given($"E_a{i}", Adhesion.Activation, "J/mol", "activation energy of amine and epoxide", "Thermochimica Acta 447 (2006) 167");
        var x = w.StepOf($"x_a{i}", Exp(E / 8.31446261815324 * ((1 / T_2) - (1 / T_1))), "", "times at that temperature over those of its data", "Arrhenius; 10 to 45 °C", names);
        if (adhesive.PotLife is { } pot)
        {
            var P = w.Given($"P_a{i}", pot, "s", adhesive.PotMass is { } of ? string.Create(CultureInfo.InvariantCulture, $"pot life of {1000 * of:0} g") : "pot life", adhesive.Source);
            draft.Find($"{adhesive.Name}: working time", w.StepOf($"w_a{i}", P * x, "s", "working time in the cup", "Arrhenius", names), Unit.WorkTime);
            if (adhesive.PotMass is { } most && mixed > most) draft.Note(string.Create(CultureInfo.InvariantCulture, $"{adhesive.Name}: mix it in {Ceiling(mixed.Value / most):0} batches of {1000 * most:0} g at most; a bigger cup gels sooner."));
        }
        else
        {
            draft.Miss($"adhesives: pot life of {adhesive.Name}");
        }

        Cure(draft, adhesive, adhesive.Handling, "until it may be moved", "h", x, i);
        Cure(draft, adhesive, adhesive.Full, "until it may be loaded", "f", x, i);
        draft.Find($"{adhesive.Name}: workshop warm enough", T_2, Unit.Temperature, "bonds.coldest");
    }

    private static void Cure(Draft draft, Adhesive adhesive, double? typed, string what, string symbol, double x, int i)
    {
        if (typed is not { } time)
        {
            draft.Miss($"adhesives: time of {adhesive.Name} {what}");
            return;
        }

        var c = draft.Working.Given($"c_{symbol}{i}", time, "s", $"{what}, by its data", adhesive.Source);
        var cured = draft.Working.StepOf($"{symbol}_a{i}", c * x, "s", $"{what}, in the workshop", "Arrhenius", [("c", $"c_{symbol}{i}"), ("x", $"x_a{i}")]);
        draft.Find($"{adhesive.Name}: {what}", cured, Unit.WorkTime);
    }

    private static void Heat(Draft draft, Study study, ValueList<BondLine> bonds, BenchPractice practice)
    {
        if (practice.Absorbed is not { } absorbed)
        {
            draft.Miss("surface.colour: white, coloured or black, by which the sun heats the skin");
            return;
        }

        var w = draft.Working;
        w.Given("alpha", absorbed, "", "share of the sunlight that the skin takes", "common practice: white 0.25, coloured 0.70, black 0.95");
        var skin = w.Simulated("T_s", Adhesion.Skin(absorbed, study.Air.Temperature), "K", "skin in full sun and still air on the pad", "1000 W/m² taken in, 5 W/(m² K) to the air and radiation at 0.9 given off");
        var softens = bonds.Select(b => b.Adhesive?.Softens).OfType<double>().DefaultIfEmpty(double.NaN).Min();
        if (double.IsNaN(softens)) draft.Miss("adhesives: softens, where the adhesive begins to give under load");
        else draft.Find("skin in the sun", skin, Unit.Temperature, study.Limits["bonds.softening"] with { Value = softens });
    }

    private static AnswerTable Listed(Study study, ValueList<BondLine> bonds)
    {
        return new(
            "Bonds",
            [new("bond"), new("adhesive"), new("area", Unit.Area), new("line", Unit.Length), new("in line and fillets", Unit.Volume), new("load", Unit.Force), new("from"), new("mask or keep free")],
            bonds.Select(b =>
            {
                var load = study.LoadsOn(b).MaxBy(l => l.Force);
                return TableRow.Of(null, b.Name, b.Adhesive?.Name ?? "not typed", b.Area, b.Gap > 0 ? b.Gap : (TableCell)"faces of one size", b.Volume, load?.Force, load?.Name ?? "", b.Mask);
            }).ToValueList());
    }

    private static void Remarks(Draft draft)
    {
        draft.Note("Dry fit first. Degrease, abrade with P120 to P240 to a uniform matt, vacuum, wipe one way with clean solvent, dry, and bond within the hour.");
        draft.Note(string.Create(CultureInfo.InvariantCulture, $"A full cup keeps its heat and can rise by {Adhesion.Rise():F0} K; a film 3 mm thick loses it in {Adhesion.Cooling(0.0015):F0} s. Spread it early; a cup over 100 g can smoke."));
        draft.Note("A line over 0.5 mm loses strength: thicken the epoxy or shim. Wax or plug threads after cleaning, and only the thread. Pull tape while the adhesive is wet.");
        draft.Note("The motor's case heats its mount after burnout: there use a system good to 100 °C or more.");
    }
}
