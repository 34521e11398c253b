using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Flight;

/// <summary>An invented rocket of 98 mm that reaches some two kilometres, with drogue and main.</summary>
internal static class SampleRocket
{
    public static OuterShape Shape { get; } = new(
        [
            new("nose", new(BodyShape.TangentOgive), 0, 0.45, 0, 0.1),
            new("body", new(BodyShape.Conical), 0.45, 1.75, 0.1, 0.1),
        ],
        [
            new("fins", 3, new TrapezoidFin(0.25, 0.12, 0.12, 0.13), 1.93, 0.05, 0.004, FinEdge.Rounded, FinEdge.Square, 0, 0, 0, double.NaN),
        ],
        [], 2e-5, 0.03);

    public static AeroTable Table { get; } = AeroTable.Build(Shape);

    public static Motor Motor { get; } = new(
        "K700", new ThrustHistory([new(0.02, 500), new(0.1, 820), new(0.5, 900), new(1.2, 840), new(1.8, 700), new(2.2, 560), new(2.5, 300), new(2.7, 0)]),
        0.054, 0.4, 1.5, 0.85, null, null, 0.03, [10], false, Basis.Measured);

    public static MassHistory Mass { get; } = MassHistory.Of(
        new(7.0, 1.15, 0, 0, new(0.012, 2.6, 2.6), Basis.Measured),
        MotorLoad.Of(Motor, 1.8));

    public static RecoveryPlan DualDeployment { get; } = new(
        [new("nose and main bay", 3.1, 0.05), new("booster", 4.55, 0.09)],
        [
            new("drogue charge", new AtApogee(0.5), 0, true, [new("drogue", 1, 0.22, 0.6, 8, 6, 0, 0.3)]),
            new("main charge", new DescendingThrough(200), null, true, [new("main", 0, 3.5, 2.44, 8, 6, 0, 0.4)]),
        ]);

    public static FlightInputs Inputs { get; } = new(
        Shape, Mass, Motor, DayAir.Standard(100), new(new PowerLawWind(6, 5, 1.0 / 7)), 45 * Math.PI / 180,
        new LaunchRail(3, 86 * Math.PI / 180, 0.3, 1.2, 2.1, 0.05), DualDeployment);

    public static FlightResult Fly(FlightInputs inputs) => inputs.Fly(Table);
}
