using Scribeline.Engine.Shop;
using Scribeline.Engine.Tests.Published.Air;

namespace Scribeline.Engine.Tests.Published.Shop;

/// <summary>Strips round tubes against closed forms: C = π (D + t), computed independently in the file to 0.001 mm.</summary>
public class WrapChecks
{
    private static readonly int[] Shares = [2, 3, 4, 5, 6, 8, 10, 12];

    private static WrapTemplate Strip(double diameter, double paper) =>
        new("", WrapKind.Holes, 0, "", diameter, paper, 0, 0.1, new(0, true, "", 0), 0, [], [], []);

    [Fact]
    public void Arcs_are_those_of_the_table()
    {
        var rows = AirTable.Read("shop-arcs.csv");
        Assert.Equal(12, rows.Count);
        foreach (var row in rows)
        {
            var strip = Strip(row.Number("tube_od_mm"), row.Number("paper_mm"));
            Assert.Equal(row.Number("circumference"), strip.Length, 0.0006);
            Assert.Equal(row.Number("per_degree"), strip.Along(Math.PI / 180), 0.000006);
            foreach (var n in Shares) Assert.Equal(row.Number($"step_{n}"), strip.Along(2 * Math.PI / n), 0.0006);
            foreach (var n in new[] { 3, 4, 6 }) Assert.Equal(row.Number($"half_{n}"), strip.Along(Math.PI / n), 0.0006);
        }
    }

    // Paper of 0.1 mm adds 0.314 mm; left out on a 98 mm tube it turns the last hole by 0.367°.
    [Fact]
    public void Paper_adds_its_thickness_times_pi()
    {
        Assert.Equal(0.314, Strip(98, 0.1).Length - Strip(98, 0).Length, 0.0005);
        Assert.Equal(0.367, (Strip(98, 0.1).Length - Strip(98, 0).Length) / Strip(98, 0).Along(Math.PI / 180), 0.0006);
    }

    // A print out by half a per cent opens or laps the seam of a 102.6 mm tube by 1.61 mm; 0.1 mm at each end of a 150 mm bar is 0.094 %.
    [Fact]
    public void A_print_out_of_scale()
    {
        Assert.Equal(1.61, 0.005 * Strip(102.6, 0.1).Length, 0.01);
        Assert.Equal(0.00094, DrillWander.Scale(0.1, 150), 0.00001);
        Assert.Equal(0.30, DrillWander.Scale(0.1, 150) * Strip(102.6, 0.1).Length, 0.01);
    }

    // 2° through 2 mm and across 98 mm; 2 mm off the crown of 98 mm; 60 m/min at 96 mm is 199 rev/min.
    [Fact]
    public void A_drill_astray()
    {
        Assert.Equal(0.070, DrillWander.Aside(2, 2 * Math.PI / 180), 0.001);
        Assert.Equal(3.42, DrillWander.Aside(98, 2 * Math.PI / 180), 0.01);
        Assert.Equal(2.34, DrillWander.Slope(2, 98) * 180 / Math.PI, 0.01);
        Assert.Equal(199, 60 * DrillWander.CutterTurns(0.096), 1.0);
    }

    // A strip of 322.6 mm of 0.1 mm paper closes round 102.59 mm.
    [Fact]
    public void A_strip_measures_the_tube() => Assert.Equal(102.59, WrapTemplate.DiameterOf(322.6, 0.1), 0.005);
}
