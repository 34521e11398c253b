using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Thing = Scribeline.Engine.Shop.PlateThing;

namespace Scribeline.Engine.Tests.Published.Shop;

/// <summary>
/// A worked plate, by hand in polar coordinates to 0.001 mm: plate radius 48, tube bore 99.1; 1/4-20 rods at (±31.75, 0) with wing nuts,
/// a 1/4 in U-bolt of inside width 25.4 with its legs on y, a charge cup, a wire hole and a terminal block. mm throughout.
/// </summary>
public class PlateChecks
{
    private static PlateCircle Circle(double r, double degrees, double diameter) =>
        new(r * Math.Cos(degrees * Math.PI / 180), r * Math.Sin(degrees * Math.PI / 180), diameter / 2);

    private static double Gap(PlateOutline a, PlateOutline b) => Of(a, b).Single(g => !g.Wall).Width;

    private static double ToWall(PlateOutline a) => Of(a, Circle(0, 0, 0)).First(g => g.Wall && g.First == "a").Width;

    private static ValueList<PlateGap> Of(PlateOutline a, PlateOutline b, PlateFace face = PlateFace.Forward) => PlateGaps.Of(new(
        "plate", 0, 96, 0, 3.2, 0, 99.1, 99.1, [new Thing("a", PlateThingKind.Other, face, a, "a", true), new Thing("b", PlateThingKind.Other, face, b, "b", true)]));

    private static PlateCircle Sweep => Circle(31.75, 0, 27.94);

    // Greatest corners of a 1/4 in nut, ASME B18.2.2: 0.505 in.
    private static PlateCircle LegNut(double degrees) => Circle(31.75 / 2, degrees, 0.505 * 25.4);

    private static PlateRectangle Block => new(30 * Math.Cos(240 * Math.PI / 180), 30 * Math.Sin(240 * Math.PI / 180), 10, 20, 240 * Math.PI / 180);

    // The spread of type A of ASME B18.6.9 (from memory), of the two superseded generations, and of DIN 315 (from memory) and DIN 314.
    [Theory]
    [InlineData(27.94, 3.830)]
    [InlineData(31.75, 1.925)]
    [InlineData(36.576, -0.488)]
    [InlineData(33, 1.300)]
    [InlineData(32, 1.800)]
    public void A_wing_nut_sweeps_to_the_bore(double spread, double free) => Assert.Equal(free, ToWall(Circle(31.75, 0, spread)), 0.001);

    [Fact]
    public void A_washer_keeps_inside_the_edge() => Assert.Equal(6.738, 48 - Outside(Circle(31.75, 0, 19.024)), 0.001);

    // Edge distance 16.250; 2.275 diameters of a 9/32 in hole; 12.678 left between.
    [Fact]
    public void A_rod_hole_keeps_its_edge()
    {
        var hole = Circle(31.75, 0, 9.0 / 32 * 25.4);
        var left = Of(hole, Circle(0, 0, 0), PlateFace.Through).First(g => g.Wall && g.First == "a").Width;
        Assert.Equal(12.678, left, 0.001);
        Assert.Equal(2.275, (left + hole.Radius) / (2 * hole.Radius), 0.001);
    }

    [Fact]
    public void A_leg_nut_clears_the_sweep() => Assert.Equal(15.114, Gap(Sweep, LegNut(90)), 0.001);

    [Fact]
    public void A_charge_cup_clears_sweep_nut_and_bore()
    {
        var cup = Circle(30, 50, 16);
        Assert.Equal(4.175, Gap(cup, Sweep), 0.001);
        Assert.Equal(6.138, Gap(cup, LegNut(90)), 0.001);
        Assert.Equal(11.550, ToWall(cup), 0.001);
    }

    [Fact]
    public void A_wire_hole_clears_sweep_and_edge()
    {
        var hole = Circle(36, 140, 6);
        Assert.Equal(6.544, Gap(hole, Circle(31.75, 180, 27.94)), 0.001);
        Assert.Equal(9.000, 48 - Outside(hole), 0.001);
    }

    [Fact]
    public void A_terminal_block_clears_bore_sweep_and_nut()
    {
        Assert.Equal(36.401, Outside(Block), 0.001);
        Assert.Equal(13.149, ToWall(Block), 0.001);
        Assert.Equal(5.763, Gap(Block, Circle(31.75, 180, 27.94)), 0.001);
        Assert.Equal(4.838, Gap(Block, LegNut(270)), 0.001);
    }

    // 42.16 g solid and 41.06 g with four 9/32 in and one 6 mm hole, woven glass epoxy of 1.82 g/cm³; 28.76 and 20.12 g in 6 mm birch of 0.68.
    [Fact]
    public void A_plate_weighs_its_disc_less_its_holes()
    {
        var open = (4 * Disc(9.0 / 32 * 25.4)) + Disc(6);
        double Plate(double density, double thickness, double holes) => new BulkPlate("", 0, new("", density, null, null, null, ""), 0.096, thickness / 1000, holes * 1e-6).At(0).Mass * 1000;
        Assert.Equal(42.16, Plate(1820, 3.2, 0), 0.02);
        Assert.Equal(41.06, Plate(1820, 3.2, open), 0.02);
        Assert.Equal(28.76, Plate(680, 6, open), 0.02);
        Assert.Equal(20.12, new CentringRing("", 0, new("", 680, null, null, null, ""), 0.096, 0.0542, 0.006).At(0).Mass * 1000, 0.02);
    }

    private static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;

    private static double Outside(PlateOutline outline) => (99.1 / 2) - ToWall(outline);
}
