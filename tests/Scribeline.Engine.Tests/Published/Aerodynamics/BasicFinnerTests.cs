using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Tests.Published.Aerodynamics;

/// <summary>
/// The whole build-up against free flight: Army–Navy Basic Finner, A. D. Dupuis and W. Hathaway, DREV-TM-9703, 1997, Table VII. Air at 20 °C
/// and one atmosphere. Nothing in the build-up is fitted to this body.
/// </summary>
public class BasicFinnerTests(ITestOutputHelper output)
{
    private static readonly (double From, double To)[] Bands = [(1.0, 1.1), (1.2, 1.4), (1.7, 1.9), (2.3, 2.5), (2.6, 3.0), (3.3, 3.8), (4.1, 4.5)];

    private static readonly List<Shot> Shots = [.. Air.AirTable.Read("aero-basic-finner.csv").Select(r =>
    {
        double N(string column) => Air.AirTable.Number(r, column);
        var all = AeroBreakdown.Of(SampleShapes.BasicFinner(), N("mach"), N("mach") * 343.2 / 1.516e-5);
        var (slope, centre) = (all.NormalForceSlope, all.CentreOfPressure / 0.03);
        return new Shot(
            N("mach"), all.TotalDrag, N("cd0"), slope, N("cna_per_rad"), slope * (5.5 - centre), N("cma_per_rad"), centre, N("xcp_cal"),
            r["cna_usable"] == "yes");
    })];

    // Acceptance: 8 % for 1.7 < M < 3.4 and 25 % elsewhere above 1.2. Held here: 7 % and 12 %.
    [Fact]
    public void Pitching_moment_of_every_shot()
    {
        foreach (var shot in Shots.Where(s => s.Mach > 1.2))
            Assert.Equal(1, shot.Moment / shot.MeasuredMoment, shot.Mach is > 1.7 and < 3.4 ? 0.07 : 0.12);
    }

    // Acceptance: band means of C_Nα within 30 %, CP within 0.6 calibre, C_D0 within 25 %, above Mach 1.2.
    // Held here: 15 %, 0.4 calibre, 17 %. The largest misses of force and place are in the band 1.2–1.4, three shots that scatter from 11.4 to 18.5 and from 8.2 to 9.8 calibres among
    // themselves.
    [Fact]
    public void Means_of_the_Mach_bands()
    {
        foreach (var (from, to) in Bands)
        {
            var band = Shots.Where(s => s.Mach >= from && s.Mach <= to).ToList();
            var usable = band.Where(s => s.Usable).ToList();
            double force = usable.Average(s => s.Force) / usable.Average(s => s.MeasuredForce);
            double centre = usable.Average(s => s.Centre) - usable.Average(s => s.MeasuredCentre);
            double drag = band.Average(s => s.Drag) / band.Average(s => s.MeasuredDrag);
            double moment = band.Average(s => s.Moment) / band.Average(s => s.MeasuredMoment);
            output.WriteLine($"{from:F1}-{to:F1}: C_D0 {100 * (drag - 1):F1} %, C_ma {100 * (moment - 1):F1} %, C_Na {100 * (force - 1):F1} %, CP {centre:F2} cal");
            if (from < 1.2) continue;
            Assert.Equal(1, force, 0.15);
            Assert.Equal(0, centre, 0.4);
            Assert.Equal(1, drag, 0.17);
        }
    }

    [Fact]
    public void Linear_theory_where_the_tip_cones_meet() // A-51, computed: β AR = 1, slender interference with half the carry-over
    {
        var fin = FinPlanform.Of(new TrapezoidFin(1, 1, 1, 0));
        var mach = Math.Sqrt(1.25);
        var load = SingleFin.At(fin, mach);
        var interference = FinInterference.OnFins(1.0 / 3) + FinInterference.OnBody(1.0 / 3) / 2;
        var fins = load.Slope * 2 * fin.Area / (Math.PI / 4) * interference;
        var nose = 2.0 / 3 / (2 * Math.Tan(10 * Math.PI / 180));
        Assert.Equal(-52.56, 2 * (5.5 - nose) + fins * (5.5 - 9 - load.Centre), 0.006);
    }

    [Fact]
    public void Subsonic_limit() // A-16, computed
    {
        var all = AeroBreakdown.Of(SampleShapes.BasicFinner(), 0, 1e7);
        Assert.Equal(10.83656, all.NormalForceSlope, 6e-6);
        Assert.Equal(7.89171, all.CentreOfPressure / 0.03, 6e-6);
    }

    private sealed record Shot(
        double Mach, double Drag, double MeasuredDrag, double Force, double MeasuredForce, double Moment, double MeasuredMoment, double Centre,
        double MeasuredCentre, bool Usable);
}
