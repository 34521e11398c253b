using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Separation;
using UnitsNet;
using static Scribeline.Engine.Tests.Properties.Resolving.SampleDesign;

namespace Scribeline.Engine.Tests.Properties.Resolving;

/// <summary>What holds and opens joints, from a design: missing inputs are named, charges follow one another.</summary>
public class SeparationResolverTests
{
    private static ChargeDesign Charge(string name, string mass) => new()
    {
        Name = name,
        On = "Bay top",
        Into = "Payload",
        Powder = PowderWord.FourF,
        Mass = ChargeMass.Read(mass).Value!,
        At = $"charges: {name}",
    };

    private static JointDesign Pinned(string screw, string? friction = null, string? strength = null) => new()
    {
        Between = ["Nose", "Payload"],
        Kind = JointWord.Pinned,
        At = "joints[1]",
        Pins = new()
        {
            Screw = ScrewName.Read(screw).Value!,
            Count = 2,
            At = "joints[1].pins",
            Strength = strength is null ? null : Measure.Read<Force>(strength, Basis.Tested).Value,
        },
        Fit = friction is null ? null : new() { Friction = Measure.Read<Force>(friction).Value },
    };

    private static SeparationGear Gear(JointDesign joint, params ChargeDesign[] charges)
    {
        var design = TypedRocket with { Joints = [TypedRocket.Joints[0], joint, TypedRocket.Joints[2]], Charges = [.. charges] };
        return DesignResolver.Resolve(design, Draws.Nominal).Rocket!.Separation;
    }

    [Fact]
    public void A_pin_of_unknown_strength_is_asked_for_and_its_charge_is_not_chosen()
    {
        var gear = Gear(Pinned("#2-56 brass"), Charge("A", "auto"));
        Assert.Contains(gear.Missing, m => m.Contains("pins.strength", StringComparison.Ordinal));
        Assert.Null(gear.Of(0));
        Assert.Null(gear.Charges[0].Mass);
    }

    [Fact]
    public void A_joint_held_by_friction_alone_needs_its_friction()
    {
        var gear = Gear(new() { Between = ["Nose", "Payload"], Kind = JointWord.Sliding, At = "joints[1]" });
        Assert.Contains(gear.Missing, m => m.StartsWith("joints[1].fit.friction", StringComparison.Ordinal));
    }

    [Fact]
    public void Shares_follow_one_another_and_a_ring_of_shares_has_no_mass()
    {
        var gear = Gear(Pinned("#2-56 nylon"), Charge("A", "1.2 g"), Charge("B", "130 % of A"), Charge("C", "50 % of B"), Charge("D", "50 % of E"), Charge("E", "50 % of D"));
        Assert.Equal([1.2e-3, 1.56e-3, 0.78e-3, double.NaN, double.NaN], gear.Charges.Select(c => c.Mass ?? double.NaN), (a, b) => a.Equals(b) || Math.Abs(a - b) < 1e-12);
    }

    [Fact]
    public void Stronger_pins_tighter_fits_and_looser_tolerances_ask_for_more_powder()
    {
        double Auto(JointDesign joint) => Gear(joint, Charge("A", "auto")).Charges[0].Choice!.Least;
        var usual = Auto(Pinned("#2-56 nylon", "20 N"));
        Assert.True(Auto(Pinned("#4-40 nylon", "20 N")) > usual);
        Assert.True(Auto(Pinned("#2-56 nylon", "40 N")) > usual);
        Assert.True(Auto(Pinned("#2-56 nylon", "20 N ± 5 N")) > usual);
        Assert.Equal(2 * 100 * 1.5, 1.5 * (Gear(Pinned("#2-56 nylon", "20 N", "100 N ± 0.001 N")).Of(0)!.Strongest(288) - 20), 0.01);
    }

    [Fact]
    public void A_chosen_charge_pushes_as_hard_as_asked_by_the_customary_relation()
    {
        var gear = Gear(Pinned("#2-56 nylon", "20 N"), Charge("A", "auto"));
        var choice = gear.Charges[0].Choice!;
        var area = Math.PI / 4 * Math.Pow(3 * 0.0254, 2);
        Assert.Equal("lets-go.force-ratio", choice.Ruling);
        Assert.Equal(1.5 * choice.Hold, StaticCharge.GaugePressure(choice.Least, choice.Volume) * area, 1e-6);
        Assert.Equal(gear.Of(0)!.Strongest(288.15), choice.Hold, 1e-9);
    }
}
