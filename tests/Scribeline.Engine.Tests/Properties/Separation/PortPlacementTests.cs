using CsCheck;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Separation;
using FlightSampleRocket = Scribeline.Engine.Tests.Properties.Flight.SampleRocket;

namespace Scribeline.Engine.Tests.Properties.Separation;

/// <summary>Where ports stand, measured by hand on a body of 0.1 m: shoulder at 0.45 m, fins from 1.93 m.</summary>
public class PortPlacementTests
{
    private static readonly OuterShape Shape = FlightSampleRocket.Shape;

    private static HoleRow Ports(double first) => new("ports", 0, 1.0, 3, 0.003, [first, first + (2 * Math.PI / 3), first + (4 * Math.PI / 3)], true);

    [Fact]
    public void Distances_are_in_calibres()
    {
        var placed = PortPlacement.Of(Ports(0), Shape, []);
        Assert.Equal(5.5, placed.BehindShoulder, 1e-9);
        Assert.Equal(9.3, placed.AheadOfFins, 1e-9);
        Assert.Equal(Math.PI, placed.OffLine);
        Assert.Null(placed.InLine);
    }

    [Fact]
    public void Only_what_stands_shortly_ahead_counts()
    {
        SurfaceThing near = new("screw", 0.9, 0.1), far = new("pin", 0.5, 0), behind = new("guide", 1.2, 0);
        var placed = PortPlacement.Of(Ports(0), Shape, [near, far, behind]);
        Assert.Equal(0.1, placed.OffLine, 1e-12);
        Assert.Equal("screw", placed.InLine);
    }

    // Mirrored clock angles, or all of them turned together, leave the angle between as it was.
    [Fact]
    public void Mirror_and_turn_change_nothing() => Gen.Select(Gen.Double[-9, 9], Gen.Double[-9, 9], Gen.Double[-9, 9]).Sample((first, clock, turn) =>
    {
        double Off(double port, double thing, int sense) => PortPlacement.Of(
            new("ports", 0, 1.0, 2, 0.003, [sense * port, sense * (port + 2)], true), Shape, [new("screw", 0.9, sense * thing)]).OffLine;
        var off = Off(first, clock, 1);
        return Math.Abs(off - Off(first, clock, -1)) < 1e-9 && Math.Abs(off - Off(first + turn, clock + turn, 1)) < 1e-9;
    });
}
