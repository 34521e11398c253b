using CsCheck;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Tests.Properties.Shop;

/// <summary>Strips put back round their tubes.</summary>
public class WrapProperties
{
    private static readonly Gen<(double Diameter, double Paper, double Clock, double Station)> Any =
        Gen.Select(Gen.Double[0.02, 0.3], Gen.Double[0, 0.0005], Gen.Double[0, 6.28], Gen.Double[0, 0.1]);

    // Rolled without stretching, the middle of the paper keeps its lengths: a mark at a distance s lies at the angle s over the middle
    // radius, by the arc of a circle, and the drill goes straight in towards the axis.
    [Fact]
    public void A_mark_wrapped_back_lies_over_its_hole() => Any.Sample(x =>
    {
        WrapTemplate strip = new("", WrapKind.Holes, 0, "", x.Diameter, x.Paper, 0.5, 0.6, new(0, true, "", 0), 0, [], [], []);
        double middle = (x.Diameter + x.Paper) / 2, along = strip.Along(x.Clock);
        double angle = along / middle, tube = x.Diameter / 2;
        var (wrapped, hole) = ((X: tube * Math.Cos(angle), Y: tube * Math.Sin(angle)), (X: tube * Math.Cos(x.Clock), Y: tube * Math.Sin(x.Clock)));
        return Math.Abs(wrapped.X - hole.X) < 1e-12 && Math.Abs(wrapped.Y - hole.Y) < 1e-12 && Math.Abs(strip.ClockAt(along) - x.Clock) < 1e-12;
    });

    [Fact]
    public void Length_and_diameter_undo_each_other() =>
        Any.Sample(x => Math.Abs(WrapTemplate.DiameterOf(WrapTemplate.LengthOf(x.Diameter, x.Paper), x.Paper) - x.Diameter) < 1e-12);
}
