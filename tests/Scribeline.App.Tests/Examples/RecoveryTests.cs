using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using UnitsNet;

namespace Scribeline.App.Tests.Examples;

/// <summary>Questions of coming down, against hand computations and changed designs.</summary>
public class RecoveryTests
{
    private static double Value(Answer answer, string finding) => answer.Findings.Single(f => f.Name == finding).Value;

    private static Answer Ask(Study study, string id) => Questionnaire.Named(id)!.Ask(study);

    private static Study Changed(string example, Func<RocketDesign, RocketDesign> change) =>
        Studies.Of(change(DesignFile.Read(Path.Combine(AppContext.BaseDirectory, "examples", example)).Design!)).Nominal!;

    private static Study WithCord(string name, Func<CordDesign, CordDesign> change) => Changed("night-heron", d => d with
    {
        Stowed = d.Stowed.Select(s => s.Cord?.Name == name ? s with { Cord = change(s.Cord) } : s).ToValueList(),
    });

    private static Study WithCanopy(string name, Func<CanopyDesign, CanopyDesign> change) => Changed("night-heron", d => d with
    {
        Stowed = d.Stowed.Select(s => s.Canopy?.Name == name ? s with { Canopy = change(s.Canopy) } : s).ToValueList(),
    });

    private static Study WithPlate(string name, Func<PlateDesign, PlateDesign> change) => Changed("night-heron", d => d with
    {
        Parts = d.Parts.Select(p => p with { Plates = p.Plates.Select(x => x.Name == name ? change(x) : x).ToValueList() }).ToValueList(),
    });

    [Theory]
    [InlineData("night-heron")]
    [InlineData("mute-swan")]
    [InlineData("sand-martin")]
    public void Nothing_is_open(string example) =>
        Assert.All(["packs", "opens", "load-path", "cords"], id => Assert.Empty(Ask(Example.Nominal(example), id).Missing));

    /// <summary>
    /// Capacities by hand: Roark's plate (a 37.97 mm, t 6.35 mm, one 16.3 mm washer, ν 0.15, a third of 310 MPa); two stress areas of 1/4-20 at
    /// 420 MPa; twice 660 and 1000 lbf; 12 lines of 225 lbf; 4450 N sewn to 0.80; π d h at 5 MPa; 12.7 mm on 1.524 mm at a quarter of 241 MPa, twice; six 4.166 mm screws in
    /// 1.524 mm at 200 MPa.
    /// </summary>
    [Theory]
    [InlineData("Bay top: bending", 3150.5)]
    [InlineData("U-bolt 1/4 at Bay top", 17245)]
    [InlineData("Bay top: rods 1/4-20", 5953)]
    [InlineData("quick link 3/16 at Main", 5872)]
    [InlineData("forged eye bolt 3/8 at Motor", 8896)]
    [InlineData("Main: lines", 8072)]
    [InlineData("Upper harness: cord with its ends", 3560)]
    [InlineData("Nose plate: bond of its rim", 7170)]
    [InlineData("edge of Payload, cut by Upper harness", 2332)]
    [InlineData("Payload to Bay: screws, pulled by Upper harness at Bay top", 7618)]
    public void Capacity_by_hand(string element, double newtons)
    {
        var study = Example.Nominal("night-heron");
        Assert.Equal(newtons, study.LoadPathOf(study.Flight).Single(e => e.Name == element).Capacity!.Value, 0.005 * newtons);
    }

    /// <summary>The flight fills the same canopy in wind and changing air by its own integration; it has no force coefficient either.</summary>
    [Theory]
    [InlineData("night-heron")]
    [InlineData("mute-swan")]
    [InlineData("sand-martin")]
    public void The_integrated_opening_is_that_of_the_flight(string example)
    {
        var study = Example.Nominal(example);
        Assert.Equal(2, study.CanopyLoads.Count);
        Assert.All(study.CanopyLoads, l => Assert.Equal(1, l.Integrated.Peak / l.Flown.PeakForce.Value, 0.05));
        Assert.All(study.CanopyLoads, l => Assert.Equal(1, l.Integrated.FillTime / l.Flown.FillTime, 0.001));
    }

    [Fact]
    public void The_jerk_of_the_drogue_counts_its_opening_at_its_worst()
    {
        var study = Example.Nominal("night-heron");
        var opening = Value(Ask(study, "opens"), "Drogue: worst opening force");
        Assert.Contains(Ask(study, "holds-through-drogue").Working.Steps, s => s.Meaning.Contains("worst opening force of Drogue", StringComparison.Ordinal) && s.Value == opening);
    }

    [Fact]
    public void A_thin_plate_is_the_weakest_link()
    {
        var answer = Ask(WithPlate("Bay top", p => p with { Thickness = Measure.Read<Length>("1/16 in").Value! }), "load-path");
        Assert.Equal(Verdict.Stop, answer.Verdict);
        Assert.Contains(answer.Notes, n => n.StartsWith("The weakest is Bay top: bending", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bent_wire_eye_is_open()
    {
        var answer = Ask(WithPlate("Bay top", p => p with { Hardware = "eye bolt 1/4" }), "load-path");
        Assert.Equal(Verdict.Open, answer.Verdict);
        Assert.Contains(answer.Missing, m => m.Contains("Bay top", StringComparison.Ordinal) && m.Contains("eye bolt 1/4", StringComparison.Ordinal));
    }

    // It says not what it joins, so it is held against the jerk of the harness, which is harder than the opening.
    [Fact]
    public void A_link_anywhere_carries_the_hardest_pull()
    {
        var study = Changed("night-heron", d => d with { Stowed = d.Stowed.Select(s => s.Link is { Joins: "Main" } link ? s with { Link = link with { Joins = null } } : s).ToValueList() });
        var path = study.LoadPathOf(study.Flight);
        var link = path.Single(e => e.Path == "Main" && e.Name.StartsWith("quick link", StringComparison.Ordinal));
        Assert.Equal(path.Single(e => e.Name == "Upper harness: cord with its ends").Load, link.Load);
        Assert.True(link.Load > path.Single(e => e.Name == "Main: lines").Load);
    }

    [Fact]
    public void A_swivel_without_a_stamp_is_open()
    {
        var study = Changed("night-heron", d => d with { Stowed = [.. d.Stowed, new StowedDesign { In = "Booster", Link = new() { Name = "ball-bearing swivel", Joins = "Drogue", Mass = Measure.Read<Mass>("20 g").Value } }] });
        Assert.Contains(Ask(study, "load-path").Missing, m => m.Contains("ball-bearing swivel", StringComparison.Ordinal));
    }

    // Half the opening slows what hangs on each side where both weigh the same: the share by hand.
    [Fact]
    public void A_leg_carries_the_share_that_slows_what_lies_beyond()
    {
        var study = Example.Nominal("night-heron");
        var steps = Ask(study, "load-path").Working.Steps;
        double Of(string symbol) => steps.Single(s => s.Symbol == symbol).Value;
        Assert.Equal(Of("O_2") * study.PieceMass("Nose") / Of("M_2"), Of("L_1f_2"), 1e-6 * Of("O_2"));
    }

    [Fact]
    public void A_thin_cord_is_stopped_wherever_it_is_asked_for()
    {
        var study = WithCord("Lower harness", c => c with { Material = "braid", Strength = Measure.Read<Force>("500 N").Value, Stretch = Measure.Read<Ratio>("4 %").Value, Width = Measure.Read<Length>("3 mm").Value });
        Assert.Equal(Verdict.Stop, Ask(study, "cords").Verdict);
        Assert.Equal(Verdict.Stop, Ask(study, "load-path").Verdict);
    }

    [Theory]
    [InlineData("cords")]
    [InlineData("load-path")]
    public void Aramid_without_a_certificate_is_open(string id)
    {
        var answer = Ask(WithCord("Upper harness", c => c with { Material = "aramid 1/4 in" }), id);
        Assert.Equal(Verdict.Open, answer.Verdict);
        Assert.Contains(answer.Missing, m => m.Contains("Upper harness", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_lines_the_opening_is_open() => Assert.Equal(Verdict.Open, Ask(WithCanopy("Main", c => c with { Lines = null }), "opens").Verdict);

    // Tied in the middle both pieces hang at one level.
    [Fact]
    public void A_canopy_in_the_middle_of_its_cord_lets_the_pieces_beat_each_other()
    {
        var answer = Ask(WithCanopy("Main", c => c with { Along = Measure.Read<Length>("10 ft").Value }), "cords");
        Assert.True(Value(answer, "Upper harness: gap between the pieces as they hang") < 0);
        Assert.Equal(Verdict.Stop, answer.Verdict);
    }

    [Fact]
    public void Bare_nylon_near_a_charge_is_named() => Assert.Equal(Verdict.Stop, Ask(WithCord("Upper harness", c => c with { Sleeved = false }), "cords").Verdict);

    // 310 g in 5 inches of a 3-inch bore is denser than any hand pack.
    [Fact]
    public void A_canopy_pressed_too_tight_is_named()
    {
        var answer = Ask(WithCanopy("Main", c => c with { PackedLength = Measure.Read<Length>("5 in").Value }), "packs");
        Assert.True(Value(answer, "Payload: density as packed") > 400);
        Assert.Equal(Verdict.Stop, answer.Verdict);
    }

    /// <summary>A hemisphere sold by its mouth has √2 times the nominal diameter; its coefficient on the mouth twice that on its cloth.</summary>
    [Fact]
    public void A_hemisphere_is_measured_across_its_mouth()
    {
        var study = WithCanopy("Main", c => c with
        {
            Type = CanopyType.Hemispherical,
            ReferenceArea = ReferenceAreaWord.Mouth,
            Diameter = Measure.Read<Length>("1 m").Value,
            DragCoefficient = Measure.Read<Ratio>("1.4").Value,
        });
        var main = study.Rocket.Canopies.Single(c => c.Name == "Main");
        Assert.Equal(1.0996, main.DragArea, 1e-3);
        Assert.Equal(0.70, main.NominalCoefficient, 1e-3);
        Assert.Equal(1.4142, main.NominalDiameter, 1e-3);
    }

    /// <summary>A coefficient for the inflated mouth told of all the cloth: the mistake that halves the energy.</summary>
    [Fact]
    public void A_coefficient_beyond_the_handbook_asks_for_a_drop_test()
    {
        var main = (string known) => WithCanopy("Main", c => c with { DragCoefficient = Measure.Read<Ratio>("1.5", Enum.Parse<Basis>(known)).Value });
        Assert.Contains(Ask(main("Estimated"), "descends").Findings, f => f.Name == "Main: drag coefficient on all of its cloth" && f.Verdict == Verdict.Stop);
        Assert.Contains(Ask(main("Tested"), "descends").Findings, f => f.Name == "Main: drag coefficient on all of its cloth" && f.Verdict == Verdict.Clear);
    }

    [Fact]
    public void A_heavier_rocket_never_lands_slower()
    {
        // Without its weighings: a rocket on the scale keeps its mass whatever is listed.
        var light = Changed("night-heron", d => d with { Records = null });
        var heavier = Changed("night-heron", d => d with
        {
            Records = null,
            Stowed = [.. d.Stowed, new StowedDesign { In = "Booster", Other = new() { Name = "Lead", Mass = Measure.Read<Mass>("500 g").Value! } }],
        });
        Assert.True(Value(Ask(heavier, "descends"), "landing under Main alone") > Value(Ask(light, "descends"), "landing under Main alone"));
    }
}
