using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Published.Aerodynamics;

/// <summary>
/// Normal force and centre of pressure at low speed. Source: J. S. and J. A. Barrowman, The Theoretical Prediction of the Center of Pressure,
/// NARAM-8, 1966; where marked computed, worked out independently from its equations.
/// </summary>
public class NormalForceTests
{
    [Theory]
    [InlineData(BodyShape.Conical, 0, 4, 0.66667)] // A-01, Barrowman 1966
    [InlineData(BodyShape.Ellipsoid, 0, 4, 0.33333)] // A-03, computed
    [InlineData(BodyShape.Parabola, 1, 4, 0.46667)] // A-04, computed
    [InlineData(BodyShape.Parabola, 0.75, 4, 0.55467)] // A-05, computed
    [InlineData(BodyShape.Parabola, 0.5, 4, 0.60741)]
    [InlineData(BodyShape.Power, 0.5, 4, 0.5)] // A-06, computed
    [InlineData(BodyShape.Power, 0.75, 4, 0.6)]
    [InlineData(BodyShape.Haack, 0, 4, 0.5)] // A-07, computed
    [InlineData(BodyShape.Haack, 1.0 / 3, 4, 0.4375)]
    [InlineData(BodyShape.Haack, 2.0 / 3, 4, 0.375)]
    [InlineData(BodyShape.SecantOgive, 1.5, 4, 0.53959)] // A-08, computed
    [InlineData(BodyShape.SecantOgive, 2, 4, 0.57424)]
    public void A_nose_lifts_two_per_radian_at_its_published_place(BodyShape shape, double parameter, double fineness, double expected)
    {
        var part = Nose(new(shape, parameter), fineness);
        Assert.Equal(2, part.Slope, 10);
        Assert.Equal(expected, part.Centre / fineness, 5e-6);
    }

    // A-09, computed from the exact form; agrees with the legible entries of Barrowman's table. A-02: 0.466 L for f above 1, ±0.005.
    [Theory]
    [InlineData(1, 0.4300)]
    [InlineData(2, 0.9145)]
    [InlineData(3, 1.3874)]
    [InlineData(4, 1.8572)]
    [InlineData(5, 2.3257)]
    [InlineData(6, 2.7937)]
    [InlineData(7, 3.2612)]
    [InlineData(8, 3.7286)]
    [InlineData(9, 4.1958)]
    [InlineData(10, 4.6629)]
    public void A_tangent_ogive_lifts_at_the_exact_place(double fineness, double expected)
    {
        var centre = Nose(new(BodyShape.TangentOgive), fineness).Centre;
        Assert.Equal(expected, centre, 5.1e-5);
        if (fineness > 2) Assert.Equal(0.466, centre / fineness, 0.005);
    }

    [Fact]
    public void Strips_of_the_worked_fin() // A-10, computed
    {
        FinOutline[] outlines =
        [
            new TrapezoidFin(0.250, 0.100, 0.120, 0.130),
            new FreeFin([new(0, 0), new(0.130, 0.120), new(0.230, 0.120), new(0.250, 0)]),
        ];
        foreach (var fin in outlines.Select(FinPlanform.Of))
        {
            Assert.Equal(0.0210000, fin.Area, 1e-10);
            Assert.Equal(0.1857143, fin.MeanChord, 5e-8);
            Assert.Equal(0.1021429, fin.QuarterChord, 5e-8);
            Assert.Equal(0.0514286, fin.SpanwiseCentre, 5e-8);
        }
    }

    [Fact]
    public void Elliptical_fins() // A-11, computed
    {
        var fin = FinPlanform.Of(new EllipticalFin(0.2, 0.12));
        Assert.Equal(1.52789, fin.AspectRatio, 5e-6);
        Assert.Equal(0.0575587, fin.QuarterChord, 5e-8);
        var one = SingleFin.At(fin, 0).Slope * fin.Area / (Math.PI / 4 * 0.01);
        Assert.Equal(5.10092, one, 5e-6);
        Assert.Equal(13.2024, 2 * one * (1 + 0.05 / 0.17), 6e-5);
    }

    [Theory] // A-12, TR 1307 equations, computed
    [InlineData(0.1, 1.0770, 0.1330, 0.9628)]
    [InlineData(0.2, 1.1616, 0.2784, 0.9439)]
    [InlineData(0.3, 1.2528, 0.4372, 0.9358)]
    [InlineData(1.0 / 3, 1.2844, 0.4934, 0.9349)]
    [InlineData(0.4, 1.3493, 0.6107, 0.9352)]
    [InlineData(0.5, 1.4503, 0.7997, 0.9397)]
    [InlineData(0.6, 1.5550, 1.0050, 0.9479)]
    [InlineData(0.7, 1.6628, 1.2272, 0.9587)]
    [InlineData(0.8, 1.7732, 1.4668, 0.9713)]
    public void Interference_of_body_and_fins(double tau, double onFins, double onBody, double canted)
    {
        Assert.Equal(onFins, FinInterference.OnFins(tau), 5.1e-5);
        Assert.Equal(onBody, FinInterference.OnBody(tau), 5.1e-5);
        Assert.Equal(canted, FinInterference.Canted(tau), 5.1e-5);
    }

    [Theory] // computed
    [InlineData(0, 11.57234, 1.56478)]
    [InlineData(0.3, 11.66074, 1.56696)]
    [InlineData(0.6, 11.94598, 1.57377)]
    [InlineData(0.8, 12.27939, 1.58133)]
    public void Worked_example_with_three_fins(double mach, double slope, double centre)
    {
        var all = AeroBreakdown.Of(SampleShapes.ExampleA(), mach, 1e7);
        Assert.Equal(slope, all.NormalForceSlope, 6e-6);
        Assert.Equal(centre, all.CentreOfPressure, 6e-6);
        var read = AeroTable.Build(SampleShapes.ExampleA()).At<Scalar>(mach, 0, 1e7, 0);
        Assert.Equal(slope, read.DampingSum0, 6e-6);
        Assert.Equal(centre, read.CentreOfPressure, 6e-6);
    }

    [Fact]
    public void Worked_example_with_shoulder_and_boat_tail() // A-15, computed on the nose base; here on the 102 mm tube
    {
        var all = AeroBreakdown.Of(SampleShapes.ExampleB(), 0, 1e7);
        var ratio = Math.Pow(0.102 / 0.076, 2);
        (double Slope, double Centre)[] expected = [(2, 0.150000), (1.602493, 0.941948), (-1.386427, 1.748791), (18.816264, 1.573333)];
        foreach (var (part, (slope, centre)) in all.Lift.Zip(expected))
        {
            Assert.Equal(slope, part.Slope * ratio, 2e-6);
            Assert.Equal(centre, part.Centre, 6e-7);
        }
        Assert.Equal(11.676542, all.NormalForceSlope, 6e-7);
        Assert.Equal(1.378314, all.CentreOfPressure, 6e-7);
    }

    [Theory] // A-19, computed, Mach → 0; the table carries the last digits of η
    [InlineData(5, 1.1670, 1.4976)]
    [InlineData(10, 2.6348, 1.4484)]
    [InlineData(15, 4.3770, 1.4114)]
    public void Worked_example_at_an_angle(double degrees, double force, double centre)
    {
        var c = AeroTable.Build(SampleShapes.ExampleA()).At<Scalar>(0, degrees * Math.PI / 180, 0, 0);
        Assert.Equal(force, c.NormalForce, 1e-3);
        Assert.Equal(centre, c.CentreOfPressure, 2e-4);
    }

    [Fact]
    public void Cross_flow_tables() // A-17 ±0.005 and A-18, Jorgensen, NASA TR R-474
    {
        foreach (var row in Air.AirTable.Read("aero-crossflow.csv"))
        {
            double x = Air.AirTable.Number(row, "x"), value = Air.AirTable.Number(row, "value");
            Assert.Equal(value, row["quantity"] == "eta" ? CrossFlow.LengthFactor(x) : CrossFlow.CylinderDrag(x), 1e-9);
        }
        Assert.Equal(0.7502, CrossFlow.LengthFactor(2.000 / 0.102), 5e-4);
    }

    [Theory] // Panton, Incompressible Flow; Roshko 1961
    [InlineData(1e5, 1.12, 0.1)]
    [InlineData(2e5, 1.12, 0.1)]
    [InlineData(5e5, 0.28, 0.02)]
    [InlineData(1e6, 0.34, 0.04)]
    [InlineData(3.3e6, 0.67, 0.06)]
    [InlineData(1e7, 0.70, 0.01)]
    public void Cylinder_through_the_drag_crisis(double reynolds, double drag, double tolerance) =>
        Assert.Equal(drag, CrossFlow.CylinderDrag(0) * CrossFlow.ReynoldsFactor(reynolds), tolerance);

    [Fact]
    public void Six_and_eight_fins_against_four() // MIL-HDBK-762, from memory: 1.37 and 1.62
    {
        Assert.Equal(1.37, 6 / 4.0 * FinInterference.OfCount(6), 0.005);
        Assert.Equal(1.62, 8 / 4.0 * FinInterference.OfCount(8), 0.005);
    }

    private static LiftPart Nose(BodyProfile profile, double fineness) =>
        AeroBreakdown.Of(new([new("nose", profile, 0, fineness, 0, 1)], ValueList<FinSet>.Empty, ValueList<Protuberance>.Empty, 0, 0), 0, 1e6).Lift[0];
}
