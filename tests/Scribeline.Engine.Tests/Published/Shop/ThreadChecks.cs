using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Tests.Published.Shop;

/// <summary>Threads, drills and hardware against Machinery's Handbook, 31st ed. (2020), pp. 1677, 1694, 1741, 1743 and 2155, and ISO tables.</summary>
public class ThreadChecks
{
    private const double Inch = 0.0254;

    private static ScrewThread Thread(string name) => ScrewThread.Find(ThreadName.Read(name).Value!)!;

    private static double TensileArea(string name) => ThreadGeometry.Of(ThreadName.Read(name).Value!)!.Value.TensileArea;

    // ASME B1.1 stress areas as printed, in²; the formula differs by rounding of diameters, 0.3 %.
    [Theory]
    [InlineData("1/4-20", 0.0318)]
    [InlineData("#4-40", 0.00604)]
    [InlineData("#2-56", 0.00370)]
    [InlineData("#10-32", 0.0200)]
    [InlineData("1/2-13", 0.1419)]
    public void Tensile_stress_area(string name, double printed) => Assert.Equal(printed, TensileArea(name) / (Inch * Inch), 0.003 * printed);

    // ISO 898-1 as printed, mm².
    [Theory]
    [InlineData("M3", 5.031)]
    [InlineData("M6", 20.12)]
    [InlineData("M8", 36.61)]
    public void Metric_stress_area(string name, double printed) => Assert.Equal(printed, 1e6 * TensileArea(name), 0.001 * printed);

    // ASME B1.1: 0.00874 in² for #6-40; ISO 68-1: 17.89 mm² for M6.
    [Theory]
    [InlineData("#6-40", 0.00874 * 645.16, 0.003)]
    [InlineData("M6", 17.89, 0.001)]
    public void Area_at_the_root(string name, double printed, double tolerance) =>
        Assert.Equal(printed, 1e6 * ThreadGeometry.Of(ThreadName.Read(name).Value!)!.Value.MinorArea, tolerance * printed);

    // ASME B1.1, 1/4-20: 0.2175 and 0.1959 in.
    [Fact]
    public void Pitch_and_minor_diameter()
    {
        Assert.Equal(0.2175, Thread("1/4-20").PitchDiameter / Inch, 0.0001);
        Assert.Equal(0.1959, Thread("1/4-20").InternalMinor / Inch, 0.0001);
    }

    // Machinery's Handbook 31, p. 2155: 69 % with #50 and 74 % with 1.75 mm.
    [Fact]
    public void Per_cent_of_thread_by_the_chart()
    {
        Assert.Equal(0.69, Thread("#2-56").ChartShare(Drill.Named("#50")!.Diameter), 0.005);
        Assert.Equal(0.74, Thread("#2-56").ChartShare(1.75e-3), 0.005);
        Assert.Equal(0.754, Thread("1/4-20").ChartShare(Drill.Named("#7")!.Diameter), 0.001);
    }

    // The same hole by the other convention: 90.5 % (closed form).
    [Fact]
    public void Per_cent_of_basic_height() => Assert.Equal(0.905, Thread("1/4-20").BasicShare(Drill.Named("#7")!.Diameter), 0.001);

    // ASME B18.2.8 (close from memory) and ISO 273.
    [Theory]
    [InlineData("#4-40", "#31", "#30", "#27")]
    [InlineData("1/4-20", "17/64", "9/32", "19/64")]
    [InlineData("M6", "6.4 mm", "6.6 mm", "7 mm")]
    public void Clearance_drills(string name, string close, string normal, string loose)
    {
        var thread = Thread(name);
        Assert.Equal([close, normal, loose], [thread.Close!.Name, thread.Normal!.Name, thread.Loose!.Name]);
    }

    // ANSI/ASME B94.11M-1993, inches.
    [Theory]
    [InlineData("#97", 0.0059)]
    [InlineData("#60", 0.0400)]
    [InlineData("#50", 0.0700)]
    [InlineData("#29", 0.1360)]
    [InlineData("#7", 0.2010)]
    [InlineData("#1", 0.2280)]
    [InlineData("A", 0.2340)]
    [InlineData("E", 0.2500)]
    [InlineData("F", 0.2570)]
    [InlineData("Z", 0.4130)]
    public void Named_drills(string name, double inches) => Assert.Equal(inches, Drill.Named(name)!.Diameter / Inch, 0.00001);

    // By the decimal equivalents: G is 0.2610 in = 6.629 mm, 17/64 in is 6.747 mm.
    [Fact]
    public void The_nearest_drill()
    {
        Assert.Equal("6.6 mm", Drill.Nearest(6.6e-3).Name);
        Assert.Equal("G", Drill.Nearest(6.6e-3, inch: true).Name);
        Assert.Equal("17/64", Drill.Nearest(6.75e-3, inch: true).Name);
        Assert.Equal(97, Drill.All.Count(d => d.Family == "number"));
    }

    // 0.12 lb/ft in a catalogue of rod; 31.3, 2.51 and 2.90 g by hand from the shapes; the washer at its nominal size of ASME B18.21.1.
    [Fact]
    public void Masses_of_hardware()
    {
        Assert.Equal(0.188, HardwareMass.RodPerLength(Thread("1/4-20")), 0.05 * 0.188);
        Assert.Equal(0.0313, HardwareMass.UBolt(0.25 * Inch, Inch, 2 * Inch), 0.01 * 0.0313);
        Assert.Equal(0.00251, HardwareMass.Nut(0.010, 0.0052, Thread("M6")), 0.01 * 0.00251);
        Assert.Equal(0.00290, HardwareMass.Washer(0.734 * Inch, 0.312 * Inch, 0.065 * Inch), 0.01 * 0.00290);
    }

    // ISO 4032 and ISO 7089 as printed, ASME B18.6.9 maximum from memory.
    [Fact]
    public void Outlines_of_hardware()
    {
        var metric = ThreadName.Read("M6").Value!;
        Assert.Equal(10e-3, Hardware.Nut(metric)!.AcrossFlats!.Value, 1e-9);
        Assert.Equal(12e-3, Hardware.Washer(metric)!.Across, 1e-9);
        Assert.Equal(1.10 * Inch, Hardware.WingNuts(ThreadName.Read("1/4-20").Value!)[0].Across, 1e-6);
        Assert.Equal(1.44 * Inch, Hardware.WingNuts(ThreadName.Read("1/4-20").Value!)[^1].Across, 1e-5);
    }
}
