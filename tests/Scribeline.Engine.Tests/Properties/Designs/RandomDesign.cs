using CsCheck;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Tests.Properties.Designs;

/// <summary>Random designs that are valid: dual-deployment rockets of 38 to 200 mm with every nose, edge and fin planform.</summary>
internal static class RandomDesign
{
    /// <summary>The numbers a design is made from.</summary>
    public sealed record Numbers(
        double Diameter, double Wall, double NoseFineness, double PayloadCalibres, double BoosterCalibres, double Root, double Tip, double Span,
        double Sweep, double Thickness, double Cant, double Parameter, int Shape, int Fins, int Planform, int Edge, double Impulse, double Wind, double Tilt);

    private static readonly ProfileWord[] Shapes =
    [
        ProfileWord.Cone, ProfileWord.TangentOgive, ProfileWord.SecantOgive, ProfileWord.Ellipsoid, ProfileWord.Parabola, ProfileWord.Power,
        ProfileWord.VonKarman, ProfileWord.Haack,
    ];

    private static Gen<double> Between(double low, double high) => Gen.Double[low, high];

    public static readonly Gen<Numbers> Any =
        from body in Gen.Select(Between(0.038, 0.2), Between(0.015, 0.03), Between(2.5, 6), Between(4, 9), Between(9, 16))
        from fin in Gen.Select(Between(1.5, 3), Between(0.2, 1), Between(0.8, 1.6), Between(0, 1.2), Between(0.02, 0.05))
        from more in Gen.Select(Between(-0.01, 0.01), Between(0.1, 0.9), Gen.Int[0, 7], Gen.Int[3, 8])
        from kind in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], Between(0.7, 2.5), Between(0, 8), Between(0, 0.12))
        select new Numbers(
            body.Item1, body.Item2, body.Item3, body.Item4, body.Item5, fin.Item1, fin.Item2, fin.Item3, fin.Item4, fin.Item5, more.Item1, more.Item2,
            more.Item3, more.Item4, kind.Item1, kind.Item2, kind.Item3, kind.Item4, kind.Item5);

    /// <summary>A length in metres as a builder who thinks in the given unit would have it.</summary>
    public static Measure<Length> L(double metres, bool inch = false)
    {
        if (!inch) return Measure.Si<Length>(metres);
        var unit = Dimension.Of<Length>().Find("in")!;
        return Measure.Of<Length>(metres / 0.0254, unit);
    }

    private static Measure<Mass> M(double kilograms) => Measure.Si<Mass>(kilograms);

    /// <summary>The design of some numbers, typed in millimetres or in inches.</summary>
    public static RocketDesign Of(Numbers n, bool inch = false)
    {
        Measure<Length> Typed(double metres) => L(metres, inch);
        var d = n.Diameter;
        var bore = d * (1 - (2 * n.Wall));
        var slide = bore - 0.0002;
        var inner = slide * 0.94;
        return new RocketDesign
        {
            Name = "Random",
            Parts =
            [
                new NoseConeDesign
                {
                    Name = "Nose", Shape = Shapes[n.Shape], Parameter = Parameter(n), Length = Typed(d * n.NoseFineness), Outside = Typed(d), Wall = Typed(d * n.Wall),
                    Shoulder = new() { Length = Typed(1.2 * d), Outside = Typed(slide), Inside = Typed(inner) }, Material = "glass epoxy",
                },
                new TubeDesign { Name = "Payload", Length = Typed(d * n.PayloadCalibres), Outside = Typed(d), Inside = Typed(bore), Material = "glass epoxy" },
                new AltimeterBayDesign
                {
                    Name = "Bay", Coupler = new() { Length = Typed(2.6 * d), Outside = Typed(slide), Inside = Typed(inner) },
                    Band = new() { Length = Typed(0.3 * d), Outside = Typed(d), FromAftEnd = Typed(1.15 * d) },
                    Plates =
                    [
                        new() { Name = "Bay top", Face = EndWord.Forward, Outside = Typed(slide), Thickness = Typed(0.06 * d), Material = "birch plywood" },
                        new() { Name = "Bay bottom", Face = EndWord.Aft, Outside = Typed(slide), Thickness = Typed(0.06 * d), Material = "birch plywood" },
                    ],
                    Material = "glass epoxy",
                },
                Booster(n, Typed, bore),
            ],
            Joints =
            [
                new() { Between = ["Nose", "Payload"], Kind = JointWord.Pinned },
                new() { Between = ["Payload", "Bay"], Kind = JointWord.Screwed },
                new() { Between = ["Bay", "Booster"], Kind = JointWord.Pinned },
            ],
            Stowed =
            [
                new() { In = "Payload", Canopy = new() { Name = "Main", Type = CanopyType.Annular, Diameter = L(20 * d), Mass = M(40 * d * d * d), PackedLength = L(1.5 * d) } },
                new() { In = "Payload", Cord = new() { Material = "nylon", Length = L(5), Ties = ["Nose", "Bay top"], Mass = M(0.05) } },
                new() { In = "Booster", Canopy = new() { Name = "Drogue", Type = CanopyType.FlatCircular, Diameter = L(6 * d), Mass = M(4 * d * d * d), PackedLength = L(0.5 * d) } },
                new() { In = "Booster", Cord = new() { Material = "nylon", Length = L(7), Ties = ["Bay bottom", "Motor"], Mass = M(0.07) } },
            ],
            Firing =
            [
                new()
                {
                    Altimeter = "Primary", Apogee = new() { Charge = "Drogue charge" },
                    DescendingThrough = new() { Height = L(150), Charge = "Main charge" },
                },
            ],
            Charges =
            [
                new() { Name = "Drogue charge", On = "Bay bottom", Into = "Booster", Powder = PowderWord.FourF, Mass = ChargeMass.Read("auto").Value! },
                new() { Name = "Main charge", On = "Bay top", Into = "Payload", Powder = PowderWord.FourF, Mass = ChargeMass.Read("auto").Value! },
            ],
            Motor = new(null, Motor(n)),
            Site = new(null, new SiteDesign { Name = "Field", Elevation = L(300), Latitude = Measure.Si<Angle>(0.7) }),
            Weather = new(null, new WeatherDesign
            {
                WindSpeed = Measure.Si<Speed>(n.Wind),
                WindFrom = Measure.Si<Angle>(4),
                Temperature = Measure.Si<Temperature>(290),
            }),
            Rail = new() { UsableLength = L(20 * d), Tilt = Measure.Si<Angle>(n.Tilt), Azimuth = Measure.Si<Angle>(1) },
        };
    }

    private static Measure<Ratio>? Parameter(Numbers n) => Shapes[n.Shape] switch
    {
        ProfileWord.SecantOgive => Measure.Si<Ratio>(1 + n.Parameter),
        ProfileWord.Parabola or ProfileWord.Power => Measure.Si<Ratio>(n.Parameter),
        ProfileWord.Haack => Measure.Si<Ratio>(n.Parameter * 2 / 3),
        _ => null,
    };

    private static TubeDesign Booster(Numbers n, Func<double, Measure<Length>> typed, double bore)
    {
        var (d, root) = (n.Diameter, n.Root * n.Diameter);
        var (tip, span, sweep) = (n.Tip * root, n.Span * d, n.Sweep * d);
        var edge = (EdgeWord)n.Edge;
        var fins = new FinsDesign
        {
            Count = n.Fins,
            Shape = (FinShape)n.Planform,
            Thickness = typed(n.Thickness * d),
            Edge = edge,
            Bevel = edge == EdgeWord.Sharp ? typed(0.1 * root) : null,
            FromAftEnd = typed(0.02 * d),
            Cant = Measure.Si<Angle>(n.Cant),
            Root = (FinShape)n.Planform == FinShape.Free ? null : typed(root),
            Tip = (FinShape)n.Planform == FinShape.Trapezoid ? typed(tip) : null,
            Span = (FinShape)n.Planform == FinShape.Free ? null : typed(span),
            Sweep = (FinShape)n.Planform == FinShape.Trapezoid ? typed(sweep) : null,
            Corners = (FinShape)n.Planform == FinShape.Free ? [Corner(0, 0), Corner(0.7 * root, span), Corner(0.7 * root + 0.3 * tip, 0.9 * span), Corner(root, 0)] : [],
        };
        return new TubeDesign
        {
            Name = "Booster",
            Length = typed(d * n.BoosterCalibres),
            Outside = typed(d),
            Inside = typed(bore),
            Material = "glass epoxy",
            Fins = [fins],
            MotorMount = new()
            {
                Inside = typed(0.72 * bore),
                Wall = typed(0.02 * d),
                Length = typed(6 * d),
                Material = "kraft phenolic",
                Rings = [new() { FromForwardEnd = typed(0.1 * d), Thickness = typed(0.08 * d), Material = "birch plywood" }, new() { FromAftEnd = typed(0.1 * d), Thickness = typed(0.08 * d), Material = "birch plywood" }],
            },
            RailGuides = [new() { Size = "1010", FromAftEnd = [typed(0.5 * d), typed(5 * d)], Height = L(0.01), Width = L(0.011), Mass = M(0.005) }],
        };

        CornerDesign Corner(double aft, double outward) => new() { Aft = typed(aft), Out = typed(outward) };
    }

    // Impulse in proportion to the airframe's volume, so that every size flies about as high in calibres.
    private static MotorDesign Motor(Numbers n)
    {
        var d = n.Diameter;
        var impulse = n.Impulse * 2.4e6 * d * d * d;
        var time = 2 + (8 * d);
        ThrustPointDesign Point(double t, double share) => new() { Time = Measure.Si<Duration>(t), Thrust = Measure.Si<Force>(share * impulse / time) };
        return new MotorDesign
        {
            Name = "Random",
            Diameter = L(0.7 * d),
            Length = L(5 * d),
            LoadedMass = M(impulse / 1000),
            PropellantMass = M(impulse / 2000),
            Thrust = new(null, new ThrustTable([Point(0, 0), Point(0.05, 1.2), Point(0.6 * time, 1.1), Point(time, 0)])),
        };
    }
}
