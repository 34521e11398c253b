using CsCheck;
using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Aerodynamics;

/// <summary>What must hold of the coefficients of any rocket.</summary>
public class AeroTableProperties
{
    private static readonly Gen<BodyProfile> Profiles = Gen.OneOf(
        Gen.Const(new BodyProfile(BodyShape.Conical)),
        Gen.Const(new BodyProfile(BodyShape.TangentOgive)),
        Gen.Double[1, 3].Select(k => new BodyProfile(BodyShape.SecantOgive, k)),
        Gen.Const(new BodyProfile(BodyShape.Ellipsoid)),
        Gen.Double[0, 1].Select(k => new BodyProfile(BodyShape.Parabola, k)),
        Gen.Double[0.3, 1].Select(n => new BodyProfile(BodyShape.Power, n)),
        Gen.Double[0, 2.0 / 3].Select(c => new BodyProfile(BodyShape.Haack, c)));

    private static readonly Gen<FinOutline> Outlines = Gen.OneOf(
        Gen.Select(Gen.Double[0.5, 3], Gen.Double[0, 1], Gen.Double[0.3, 3], Gen.Double[-0.5, 3])
            .Select((root, taper, span, sweep) => (FinOutline)new TrapezoidFin(root, root * taper, span, sweep)),
        Gen.Select(Gen.Double[0.5, 3], Gen.Double[0.3, 3]).Select((root, span) => (FinOutline)new EllipticalFin(root, span)),
        Gen.Select(Gen.Double[1, 3], Gen.Double[0.1, 1], Gen.Double[0.4, 2], Gen.Double[0.2, 1]).Select((root, x, y, tip) =>
            (FinOutline)new FreeFin([new(0, 0), new(x, y / 2), new(x + 0.3, y), new(x + 0.3 + tip, y), new(root, y / 3), new(root, 0)])));

    // Lengths in calibres; scaled to a tube of 54 to 200 mm.
    private static readonly Gen<OuterShape> Shapes = Gen.Select(
        Gen.Select(Profiles, Gen.Double[1, 8], Gen.Double[4, 25], Gen.Double[0.6, 1.5], Gen.Double[0.3, 4]),
        Gen.Select(Outlines, Gen.Int[3, 8], Gen.Double[0.005, 0.08], Gen.Enum<FinEdge>(), Gen.Enum<FinEdge>()),
        Gen.Select(Gen.Double[0.054, 0.2], Gen.Double[0, 1e-4], Gen.Double[0, 0.02], Gen.Bool, Gen.Double[0.3, 4]))
        .Select((body, fins, other) => Make(body, fins, other));

    [Fact]
    public void Ten_thousand_random_shapes_have_finite_components() =>
        Gen.Select(Shapes, Gen.Double[0, 8]).Sample(
            (shape, mach) =>
            {
                var all = AeroBreakdown.Of(shape, mach, 1e7);
                return all.Drag.All(p => double.IsFinite(p.Coefficient) && p.Coefficient > -1e-9)
                    && all.Lift.All(p => double.IsFinite(p.Slope) && double.IsFinite(p.Centre));
            },
            iter: 10_000);

    [Fact]
    public void Random_shapes_have_finite_coefficients()
    {
        double[] machs = [0, 0.5, 0.97, 1.01, 1.3, 2.2, 5, 9];
        double[] angles = [0, 0.02, 0.5, Math.PI / 2, 2.5, Math.PI];
        Shapes.Sample(
            shape =>
            {
                var table = AeroTable.Build(shape);
                return machs.All(m => angles.All(a => Sound(table.At<Scalar>(m, a, m * 2.3e7, 0))));
            },
            iter: 300);

        static bool Sound(AeroCoefficients<Scalar> c)
        {
            double[] all =
            [
                c.Axial, c.NormalForce, c.CentreOfPressure, c.DampingSum0, c.DampingSum1, c.DampingSum2, c.RollForcing, c.RollDamping,
            ];
            return all.All(double.IsFinite) && c.NormalForce.Value >= -1e-9 && c.RollDamping.Value <= 0 && Math.Abs(c.Axial.Value) < 40;
        }
    }

    [Fact]
    public void Twice_the_size_at_the_same_Reynolds_number_has_the_same_coefficients() =>
        Shapes.Sample(
            shape =>
            {
                var (one, two) = (AeroTable.Build(shape), AeroTable.Build(Scaled(shape, 2)));
                foreach (var (mach, angle) in new[] { (0.3, 0.05), (1.05, 0.1), (1.8, 0.0), (3, 1.2), (0.2, 2.9) })
                {
                    var a = one.At<Scalar>(mach, angle, 2e7, 0.4);
                    var b = two.At<Scalar>(mach, angle, 1e7, 0.4);
                    Assert.Equal(a.Axial, b.Axial, 1e-7 * (1 + Math.Abs(a.Axial)));
                    Assert.Equal(a.NormalForce, b.NormalForce, 1e-7 * (1 + a.NormalForce));
                    Assert.Equal(2 * a.CentreOfPressure, b.CentreOfPressure, 1e-7);
                    Assert.Equal(a.RollDamping, b.RollDamping, 1e-7 * (1 - a.RollDamping));
                }
            },
            iter: 50);

    [Fact]
    public void More_fins_lift_more_and_sit_further_aft() =>
        Shapes.Sample(
            shape =>
            {
                foreach (var mach in new[] { 0.3, 1.1, 2.0 })
                {
                    double last = 0;
                    for (var count = 3; count <= 8; count++)
                    {
                        var lift = AeroBreakdown.Of(shape with { Fins = [shape.Fins[0] with { Count = count }] }, mach, 1e7);
                        Assert.True(lift.NormalForceSlope > last);
                        last = lift.NormalForceSlope;
                    }
                }
            },
            iter: 50);

    [Fact]
    public void Coefficients_run_on_without_jumps() =>
        Shapes.Sample(
            shape =>
            {
                var table = AeroTable.Build(shape);
                var (force, drag, centre) = (0.0, 0.0, 0.0);
                var tops = (Force: 0.0, Drag: 0.0);
                for (var m = 0.0; m < 6; m += 0.05)
                {
                    var c = table.At<Scalar>(m, 0.05, 1e7, 0);
                    tops = (Math.Max(tops.Force, c.NormalForce), Math.Max(tops.Drag, c.Axial));
                }
                // A step of 0.0005 in Mach number changes nothing by more than the steepest transonic rise allows: a fiftieth of its greatest value.
                for (var m = 0.0; m < 6; m += 0.0005)
                {
                    var c = table.At<Scalar>(m, 0.05, 1e7, 0);
                    if (m > 0)
                    {
                        Assert.True(Math.Abs(c.NormalForce - force) < 0.02 * tops.Force, $"force at Mach {m}");
                        Assert.True(Math.Abs(c.Axial - drag) < 0.02 * tops.Drag, $"drag at Mach {m}");
                        Assert.True(Math.Abs(c.CentreOfPressure - centre) < 0.02 * shape.Length, $"centre at Mach {m}");
                    }
                    (force, drag, centre) = (c.NormalForce, c.Axial, c.CentreOfPressure);
                }
            },
            iter: 5);

    [Fact]
    public void Slope_in_Mach_number_and_angle_is_continuous() =>
        Shapes.Sample(
            shape =>
            {
                var table = AeroTable.Build(shape);
                double Force(double m, double a) => table.At<Scalar>(m, a, 1e7, 0).NormalForce;
                double Drag(double m, double a) => table.At<Scalar>(m, a, 1e7, 0).Axial;
                foreach (var m in new[] { 0.8, 0.9, 1, 1.1, 1.2, 1.25, 1.5, 2 })
                {
                    Smooth(x => Force(x, 0.1), m);
                    Smooth(x => Drag(x, 0.1), m);
                }
                foreach (var a in new[] { 20 * Math.PI / 180, Math.PI / 2, 160 * Math.PI / 180 })
                {
                    Smooth(x => Force(0.7, x), a);
                    Smooth(x => Drag(0.7, x), a);
                }

                static void Smooth(Func<double, double> f, double x)
                {
                    // Small enough that the curvature of the steepest random fin, some 3e4, stays far inside the tolerance.
                    const double h = 1e-8;
                    var (left, right) = ((f(x) - f(x - h)) / h, (f(x + h) - f(x)) / h);
                    Assert.Equal(left, right, 0.02 + 1e-3 * Math.Abs(left));
                }
            },
            iter: 50);

    [Fact]
    public void Lanes_agree_with_one_at_a_time() =>
        Gen.Select(Shapes, Gen.Double[0, 6].Array[4], Gen.Double[0, Math.PI].Array[4], Gen.Double[1e5, 1e8].Array[4]).Sample(
            (shape, machs, angles, reynolds) =>
            {
                var table = AeroTable.Build(shape);
                var wide = table.At(Wide4.Load(machs), Wide4.Load(angles), Wide4.Load(reynolds), Wide4.From(0.5));
                for (var lane = 0; lane < 4; lane++)
                {
                    var one = table.At<Scalar>(machs[lane], angles[lane], reynolds[lane], 0.5);
                    Assert.Equal(one.Axial, Wide4.Lane(wide.Axial, lane), 1e-10);
                    Assert.Equal(one.NormalForce, Wide4.Lane(wide.NormalForce, lane), 1e-10);
                    Assert.Equal(one.CentreOfPressure, Wide4.Lane(wide.CentreOfPressure, lane), 1e-10);
                    Assert.Equal(one.DampingSum2, Wide4.Lane(wide.DampingSum2, lane), 1e-10);
                }
            },
            iter: 50);

    [Fact]
    public void Thrust_relieves_the_base_in_proportion_to_the_nozzle()
    {
        var shape = Published.Aerodynamics.SampleShapes.ExampleA();
        var table = AeroTable.Build(shape with { BaseOpening = 0.040 });
        double off = table.At<Scalar>(0.6, 0, 1.4e7, 0).Axial, on = table.At<Scalar>(0.6, 0, 1.4e7, 1).Axial;
        var atBase = AeroBreakdown.Of(shape, 0.6, 1.4e7).Drag.Single(p => p.Name == "base").Coefficient;
        Assert.Equal(atBase * 1600 / (102.0 * 102), off - on, 1e-4);
    }

    private static OuterShape Make(
        (BodyProfile Nose, double NoseLength, double Tube, double Rear, double TailLength) body,
        (FinOutline Outline, int Count, double Thickness, FinEdge Lead, FinEdge Trail) fins,
        (double Diameter, double Roughness, double Cant, bool Tail, double Bevel) other)
    {
        List<BodySection> sections =
        [
            new("nose", body.Nose, 0, body.NoseLength, 0, 1),
            new("tube", new(BodyShape.Conical), body.NoseLength, body.Tube, 1, 1),
        ];
        if (other.Tail) sections.Add(new("tail", new(BodyShape.Conical), body.NoseLength + body.Tube, body.TailLength, 1, body.Rear));
        OuterShape shape = new(
            sections.ToValueList(),
            [new FinSet("fins", fins.Count, fins.Outline, body.NoseLength + body.Tube - 3, 0.5, fins.Thickness, fins.Lead, fins.Trail, other.Bevel * fins.Thickness, other.Cant, 0, double.NaN)],
            [new Protuberance("guide", body.NoseLength + 1, 0.1, 0.08, 2)],
            other.Roughness / other.Diameter,
            0.3);
        return Scaled(shape, other.Diameter);
    }

    private static OuterShape Scaled(OuterShape s, double k) => new(
        s.Body.Select(b => b with { Front = k * b.Front, Length = k * b.Length, FrontDiameter = k * b.FrontDiameter, RearDiameter = k * b.RearDiameter }).ToValueList(),
        s.Fins.Select(f => f with
        {
            Outline = f.Outline switch
            {
                TrapezoidFin t => new TrapezoidFin(k * t.Root, k * t.Tip, k * t.Span, k * t.Sweep),
                EllipticalFin e => new EllipticalFin(k * e.Root, k * e.Span),
                FreeFin q => new FreeFin(q.Corners.Select(c => new FinCorner(k * c.X, k * c.Y)).ToValueList()),
                var o => o,
            },
            RootLeadingEdge = k * f.RootLeadingEdge,
            BodyRadius = k * f.BodyRadius,
            Thickness = k * f.Thickness,
            Bevel = k * f.Bevel,
        }).ToValueList(),
        s.Protuberances.Select(p => p with { Station = k * p.Station, Height = k * p.Height, Width = k * p.Width }).ToValueList(),
        k * s.Roughness,
        k * s.BaseOpening);
}
