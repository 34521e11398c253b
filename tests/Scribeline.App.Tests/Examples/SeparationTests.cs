using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Tables;
using Scribeline.Store;

namespace Scribeline.App.Tests.Examples;

/// <summary>Questions of staying together, letting go and breathing, against hand computations and changed designs.</summary>
public class SeparationTests
{
    private static double Value(Answer answer, string finding) => answer.Findings.Single(f => f.Name == finding).Value;

    private static Answer Ask(Study study, string id) => Questionnaire.Named(id)!.Ask(study);

    private static Study Changed(string example, Func<RocketDesign, RocketDesign> change) =>
        Studies.Of(change(DesignFile.Read(Path.Combine(AppContext.BaseDirectory, "examples", example)).Design!)).Nominal!;

    private static ValueList<PartDesign> Bay(RocketDesign design, Func<AltimeterBayDesign, AltimeterBayDesign> change) =>
        design.Parts.Select(p => p is AltimeterBayDesign bay ? change(bay) : p).ToValueList();

    // The steady climb by hand (Bernoulli) against the solved bay: the climb is not quite steady, so a tenth.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void The_lag_by_hand_is_near_the_solved_one(string example)
    {
        var steps = Ask(Example.Nominal(example), "breathes").Working.Steps;
        Assert.Equal(1, steps.Single(s => s.Symbol == "h_f_1").Value / steps.Single(s => s.Symbol == "h_1").Value, 0.1);
    }

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Auto_takes_a_drill_just_above_the_customary_port(string example)
    {
        var answer = Ask(Example.Nominal(example), "breathes");
        double drilled = Value(answer, "Bay: diameter of each"), asked = Value(answer, "Bay: customary diameter of each");
        Assert.InRange(drilled / asked, 1, 1.15);
        Assert.Contains(Drill.All, d => d.Diameter == drilled);
    }

    // Altimeters in a bay nearly without air to the outside read far behind, and late at apogee.
    [Fact]
    public void A_pinhole_reads_behind()
    {
        var study = Changed("night-heron", d => d with { Parts = Bay(d, b => b with { Ports = b.Ports! with { Count = 1, Diameter = AutoOr<UnitsNet.Length>.Read("0.4 mm").Value! } }) });
        var answer = Ask(study, "breathes");
        Assert.Equal(Verdict.Stop, answer.Verdict);
        Assert.True(Value(answer, "Bay: behind on the climb, at most") > 50);
        Assert.True(Value(answer, "Bay: apogee seen late by") > 0.2);
    }

    [Fact]
    public void Without_ports_it_is_open() =>
        Assert.Equal(Verdict.Open, Ask(Changed("night-heron", d => d with { Parts = Bay(d, b => b with { Ports = null }) }), "breathes").Verdict);

    // The pull shown is what Newton's law gives by hand for the part ahead: the drag of the nose less its share of the deceleration.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Unlike_drag_pulls_hardest_about_burnout(string example)
    {
        var study = Example.Nominal(example);
        var booster = study.JointHistories[^1];
        Assert.InRange(booster.Worst.Time, study.Flight.Burnout!.Time - 0.1, study.Flight.Burnout.Time + 2);
        Assert.InRange(booster.Worst.Pull, 0, booster.Joint.BoreDiameter * 5000);

        // Under thrust every joint is pushed together.
        var boost = booster.Moments.Where(m => m.Time > 0.3 && m.Time < study.Flight.Burnout.Time / 2);
        Assert.All(boost, m => Assert.True(m.Force.Tension < 0));
    }

    // A tight bay keeps the pressure of the pad: what it pushes at apogee is the difference of pressures on the bore.
    [Fact]
    public void A_tight_bay_keeps_the_pressure_of_the_pad()
    {
        var study = Changed("night-heron", d => d with { Parts = d.Parts.Select(p => p with { Vents = [] }).ToValueList() });
        var answer = Ask(study, "bays-vent");
        var top = study.Flight.Apogee!;
        var difference = study.Air.StationPressure - study.Air.At<Engine.Numerics.Scalar>(study.Air.Elevation + top.Height).Pressure;
        Assert.Equal(difference, Value(answer, "Payload: greatest pressure over the outside"), 0.02 * difference);
        Assert.Equal(Verdict.Stop, answer.Verdict);

        // With the least hole it names the push is within its limit.
        var hole = Value(answer, "Payload: least single hole");
        var vented = study.BayHistories.First(b => b.Bay.Name == "Payload").With(Math.PI / 4 * hole * hole);
        var weakest = study.WeakestRetention(0)!.Value;
        var bore = study.Vehicle.Joints[0].BoreDiameter;
        Assert.Equal(0.1 * weakest, vented.Excess(vented.Worst(study.ReleaseOf(0))) * Math.PI / 4 * bore * bore, 0.01 * weakest);
    }

    [Fact]
    public void One_altimeter_alone_leaves_joints_shut_when_it_dies()
    {
        var study = Changed("night-heron", d => d with { Firing = [d.Firing[0]], Charges = d.Charges.Where(c => c.Name.EndsWith('A')).ToValueList() });
        var answer = Ask(study, "sequence");
        Assert.Equal(2, Value(answer, "Primary dead: joints that stay shut"));
        Assert.Equal(Verdict.Stop, answer.Verdict);
    }

    [Fact]
    public void A_backup_with_its_primary_is_too_close()
    {
        var study = Changed("night-heron", d => d with { Firing = d.Firing.Select(f => f with { Apogee = f.Apogee! with { After = null } }).ToValueList() });
        Assert.Equal(0, Value(Ask(study, "sequence"), "backup after primary, least"), 1e-9);
    }

    [Fact]
    public void A_match_of_no_known_current_is_open() =>
        Assert.Equal(Verdict.Open, Ask(Changed("night-heron", d => d with { Firing = d.Firing.Select(f => f with { Match = null }).ToValueList() }), "fires").Verdict);

    // 3.7 V / (0.2 + 0.3 + 1.6) Ω = 1.762 A, over 0.7 A.
    [Fact]
    public void The_current_by_hand() => Assert.Equal(3.7 / 2.1 / 0.7, Value(Ask(Example.Nominal("night-heron"), "fires"), "Primary: current over all-fire current"), 1e-9);
}
