using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Tests.Published.Shop;

/// <summary>Keys, offsets and sheets against closed forms worked by hand.</summary>
public class KeyChecks
{
    private static (double, double)[] Even(int n, double moved = 0) => [.. Enumerable.Range(0, n).Select(i => (2 * Math.PI * i / n, i == 1 ? moved : 0.0))];

    private static double Degrees(double rad) => rad * 180 / Math.PI;

    // 0°, 120° and 250° on 98 mm: turned by one hole the mismatches are 120, 130 and 110, so 10° at best: 8.552 mm.
    [Fact]
    public void A_hole_moved_round() =>
        Assert.Equal(8.552, 1000 * Keying.BestWrongFit([(0, 0), (120 * Math.PI / 180, 0), (250 * Math.PI / 180, 0)], 0.049), 0.001);

    [Fact]
    public void A_hole_moved_along() => Assert.Equal(6.000, 1000 * Keying.BestWrongFit(Even(4, 0.006), 0.049), 0.001);

    [Fact]
    public void An_even_row_is_no_key() => Assert.Equal(0, Keying.BestWrongFit(Even(3), 0.049), 1e-9);

    // #4 (2.845 mm) in #30 (3.264): position tolerances of ASME Y14.5, fixed and floating fastener, halved for the fixed one.
    [Fact]
    public void Slack_of_a_screw()
    {
        double hole = Drill.Named("#30")!.Diameter, screw = ThreadName.Read("#4-40").Value!.MajorDiameter;
        Assert.Equal(0.209, 1000 * Keying.Slack(hole, null, screw), 0.001);
        Assert.Equal(0.419, 1000 * Keying.Slack(hole, hole, screw), 0.001);
    }

    // Root sum of squares of 0.16, 0.30, 0.30, 0.25, 0.30 and 0.40 mm is 0.72; slack 0.21 then asks for 3.26 mm (both rounded).
    [Fact]
    public void Placing_and_least_key()
    {
        Assert.Equal(0.72, 1000 * Keying.Placing, 0.01);
        Assert.Equal(3.26, 1000 * Keying.Least(0.21e-3, 0.72e-3), 0.01);
    }

    [Theory]
    [InlineData(3, 4, 15)]
    [InlineData(3, 1, 60)]
    [InlineData(5, 4, 9)]
    [InlineData(6, 4, 15)]
    [InlineData(3, 3, 60)]
    public void Best_offset_from_lines(int holes, int lines, double degrees) => Assert.Equal(degrees, Degrees(Keying.BestSeparation(holes, lines)), 1e-9);

    // 15° on 98 mm is 12.83 mm.
    [Fact]
    public void Best_offset_as_an_arc() => Assert.Equal(12.83, 49 * Keying.BestSeparation(3, 4), 0.01);

    // Circumference and a tab of 15 mm, margins and overlap of 10 mm.
    [Theory]
    [InlineData(152, true, true, 2)]
    [InlineData(152, true, false, 3)]
    [InlineData(152, false, true, 2)]
    [InlineData(152, false, false, 3)]
    [InlineData(75, true, true, 1)]
    [InlineData(75, true, false, 2)]
    public void Sheets_of_a_strip(double diameter, bool a4, bool across, int sheets) =>
        Assert.Equal(sheets, (a4 ? Sheet.A4 : Sheet.Letter).Tiles((Math.PI * diameter / 1000) + WrapTemplate.Tab, across));
}
