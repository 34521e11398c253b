using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Published.Aerodynamics;

/// <summary>Outer shapes that the checks of this room share.</summary>
internal static class SampleShapes
{
    /// <summary>102 mm, tangent ogive of fineness 4, three trapezoidal fins 3.2 mm thick, two guides, 20 µm rough.</summary>
    public static OuterShape ExampleA(double cant = 0) => new(
        [
            new("nose", new(BodyShape.TangentOgive), 0, 0.408, 0, 0.102),
            new("tube", new(BodyShape.Conical), 0.408, 1.592, 0.102, 0.102),
        ],
        [new FinSet("fins", 3, new TrapezoidFin(0.250, 0.100, 0.120, 0.130), 1.750, 0.051, 0.0032, FinEdge.Rounded, FinEdge.Square, 0, cant, 0, 4.14e9)],
        [new Protuberance("guide", 1.0, 0.010, 0.011, 2)],
        20e-6,
        0);

    /// <summary>Shoulder, four fins and boat tail.</summary>
    public static OuterShape ExampleB() => new(
        [
            new("nose", new(BodyShape.Haack), 0, 0.300, 0, 0.076),
            new("payload", new(BodyShape.Conical), 0.300, 0.600, 0.076, 0.076),
            new("shoulder", new(BodyShape.Conical), 0.900, 0.080, 0.076, 0.102),
            new("tube", new(BodyShape.Conical), 0.980, 0.740, 0.102, 0.102),
            new("tail", new(BodyShape.Conical), 1.720, 0.060, 0.102, 0.080),
        ],
        [new FinSet("fins", 4, new TrapezoidFin(0.180, 0.080, 0.110, 0.090), 1.500, 0.051, 0.0032, FinEdge.Rounded, FinEdge.Square, 0, 0, 0, double.NaN)],
        ValueList<Protuberance>.Empty,
        20e-6,
        0);

    /// <summary>Army–Navy Basic Finner, 30 mm calibre: 10° cone, four square wedge fins (Dupuis and Hathaway, DREV-TM-9703, 1997).</summary>
    public static OuterShape BasicFinner()
    {
        const double d = 0.03;
        var cone = d / 2 / Math.Tan(10 * Math.PI / 180);
        return new(
            [
                new("nose", new(BodyShape.Conical), 0, cone, 0, d),
                new("body", new(BodyShape.Conical), cone, 10 * d - cone, d, d),
            ],
            [new FinSet("fins", 4, new TrapezoidFin(d, d, d, 0), 9 * d, d / 2, 0.08 * d, FinEdge.Sharp, FinEdge.Square, d, 0, 0, double.NaN)],
            ValueList<Protuberance>.Empty,
            0,
            0);
    }
}
