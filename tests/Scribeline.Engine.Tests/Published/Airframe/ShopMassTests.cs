using Scribeline.Engine.Airframe;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Tests.Published.Airframe;

/// <summary>Masses and fits of common airframe stock, each computed independently from the dimensions and densities given.</summary>
public class ShopMassTests
{
    private static Material Of(double density) => new("stock", density, null, null, null, "given");

    // Tube 102.6/99.1 mm at 1.85 g/cm³: 554.5 mm², 1.026 kg/m; 0.1 %.
    [Fact]
    public void Tube_per_metre()
    {
        Tube tube = new("tube", 0, Of(1850), 1, 0.1026, 0.0991);
        Assert.Equal(554.5e-6, tube.Shell.Volume, 0.001 * 554.5e-6);
        Assert.Equal(1.026, tube.Bare.Mass, 0.001 * 1.026);
    }

    // Plate of 96 mm, 3.2 mm glass laminate at 1.82 g/cm³: 42.16 g whole, 41.06 g with four 9/32 in and one 6 mm hole; ±0.01 g.
    [Fact]
    public void Bulk_plate()
    {
        Assert.Equal(0.04216, new BulkPlate("plate", 0, Of(1820), 0.096, 0.0032).At(0).Mass, 0.00001);
        double holes = Math.PI / 4 * (4 * Math.Pow(9.0 / 32 * 0.0254, 2) + 0.006 * 0.006);
        Assert.Equal(0.04106, new BulkPlate("plate", 0, Of(1820), 0.096, 0.0032, holes).At(0).Mass, 0.00001);
    }

    // The same plate in 6 mm birch plywood with its holes 28.76 g, and a ring 96/54.2 × 6 mm 20.12 g; ±0.01 g.
    [Fact]
    public void Plywood()
    {
        Material birch = MaterialTable.Find("birch plywood")!;
        double holes = Math.PI / 4 * (4 * Math.Pow(9.0 / 32 * 0.0254, 2) + 0.006 * 0.006);
        Assert.Equal(0.02876, new BulkPlate("plate", 0, birch, 0.096, 0.006, holes).At(0).Mass, 0.00001);
        Assert.Equal(0.02012, new CentringRing("ring", 0, birch, 0.096, 0.0542, 0.006).At(0).Mass, 0.00001);
    }

    // 1/4-20 steel rod, pitch diameter 0.2175 in: 0.188 kg/m (0.12 lb/ft in makers' tables); 5 %.
    [Fact]
    public void Threaded_rod()
    {
        Rods rods = new("rods", 0, MaterialTable.Find("steel")!, 1, 0.2175 * 0.0254, 2, 0.03, 0);
        Assert.Equal(2 * 0.188, rods.At(0).Mass, 0.05 * 2 * 0.188);
    }

    // Play angle of a joint with 0.30 mm of diametral clearance over 98 mm: 0.1754°.
    [Fact]
    public void Play_angle()
    {
        Joint joint = new(0, JointKind.Pinned, true, 1, 0.098, 0.0980, 0.0983, true);
        Assert.Equal(0.1754, joint.PlayAngle * 180 / Math.PI, 0.00005);
    }

    [Fact]
    public void Every_material_has_its_source_and_sound_figures()
    {
        Assert.True(MaterialTable.All.Count > 15);
        foreach (Material material in MaterialTable.All)
        {
            Assert.True(material.Source.Length > 10, material.Name);
            Assert.InRange(material.Density, 50, 20000);

            // A hundredfold of the modulus below strength or a shear modulus above Young's would be a slip of unit.
            if (material is { Modulus: { } e, Strength: { } s }) Assert.InRange(s, e / 1000, e / 20);
            if (material is { Modulus: { } young, ShearModulus: { } shear }) Assert.InRange(shear, young / 25, young);
        }

        Assert.Equal("glass epoxy", MaterialTable.Find("g-10")!.Name);
        Assert.Null(MaterialTable.Find("unobtainium"));
        Assert.Equal("birch plywood", MaterialTable.Nearest("brich plywod"));
    }
}
