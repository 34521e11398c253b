using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Tests.Properties.Resolving;

/// <summary>An invented dual-deployment rocket as typed.</summary>
internal static class SampleDesign
{
    public static Measure<Length> L(string text) => Measure.Read<Length>(text).Value!;

    public static Measure<Mass> M(string text, Basis known = Basis.Estimated) => Measure.Read<Mass>(text, known).Value!;

    public static NoseConeDesign Nose => new()
    {
        Name = "Nose",
        At = "parts[0]",
        Shape = ProfileWord.VonKarman,
        Length = L("15 in"),
        Outside = L("3.12 in"),
        Wall = L("2.0 mm"),
        Shoulder = new() { Length = L("3 in"), Outside = L("2.99 in"), Inside = L("2.83 in") },
        Material = "glass epoxy",
        Mass = M("318 g ± 2 g", Basis.Measured),
        Balance = L("9.4 in"),
    };

    public static TubeDesign Payload => new()
    {
        Name = "Payload",
        At = "parts[1]",
        Length = L("20 in"),
        Outside = L("3.12 in"),
        Inside = L("3.00 in"),
        Material = "glass epoxy",
    };

    public static AltimeterBayDesign Bay => new()
    {
        Name = "Bay",
        At = "parts[2]",
        Coupler = new() { Length = L("8 in"), Outside = L("2.99 in"), Inside = L("2.88 in") },
        Band = new() { Length = L("1 in"), Outside = L("3.12 in"), FromAftEnd = L("3.5 in") },
        Rods = new() { Thread = ThreadName.Read("1/4-20").Value!, Count = 2, Spacing = L("1-3/4 in") },
        Plates =
        [
            new() { Name = "Bay top", Face = EndWord.Forward, Outside = L("2.87 in"), Thickness = L("1/4 in"), Material = "glass epoxy" },
            new() { Name = "Bay bottom", Face = EndWord.Aft, Outside = L("2.98 in"), Thickness = L("1/4 in"), Material = "glass epoxy" },
        ],
        Mass = M("420 g ± 10 g"),
    };

    public static TubeDesign Booster => new()
    {
        Name = "Booster",
        At = "parts[3]",
        Length = L("36 in"),
        Outside = L("3.12 in"),
        Wall = L("0.06 in"),
        Material = "glass epoxy",
        Fins =
        [
            new()
            {
                Count = 3, Shape = FinShape.Trapezoid, Root = L("8 in"), Tip = L("3 in"), Span = L("3.5 in"), Sweep = L("5 in"), Thickness = L("3/16 in"),
                Edge = EdgeWord.Rounded, FromAftEnd = L("0.25 in"), At = "parts[3].fins[0]",
            },
        ],
        MotorMount = new()
        {
            Inside = L("54.5 mm"),
            Wall = L("1.2 mm"),
            Length = L("16 in"),
            Material = "glass epoxy",
            At = "parts[3].motor mount",
            Rings =
            [
                new() { FromForwardEnd = L("1/2 in"), Thickness = L("1/4 in"), Material = "birch plywood" },
                new() { FromAftEnd = L("1/4 in"), Thickness = L("1/4 in"), Material = "birch plywood" },
            ],
        },
        RailGuides = [new() { Size = "1010", FromAftEnd = [L("1 in"), L("18 in")] }],
    };

    public static RocketDesign TypedRocket => new()
    {
        Name = "Sample",
        Surface = new() { Finish = Finish.SandedPaint },
        Parts = [Nose, Payload, Bay, Booster],
        Joints =
        [
            new() { Between = ["Bay", "Booster"], Kind = JointWord.Pinned, At = "joints[0]" },
            new() { Between = ["Nose", "Payload"], Kind = JointWord.Pinned, At = "joints[1]" },
            new() { Between = ["Payload", "Bay"], Kind = JointWord.Screwed, At = "joints[2]" },
        ],
        Stowed =
        [
            new() { In = "Payload", Canopy = new() { Name = "Main", Type = CanopyType.Annular, Mass = M("240 g"), PackedLength = L("6 in"), PackedVolume = Measure.Read<Volume>("500 cm³").Value }, At = "stowed[0]" },
            new() { In = "Payload", Blanket = new() { Mass = M("30 g"), PackedLength = L("1 in") } },
            new() { In = "Booster", Cord = new() { Material = "tubular nylon", Length = L("25 ft"), MassPerLength = Measure.Read<LinearDensity>("20 g/m").Value } },
        ],
    };
}
