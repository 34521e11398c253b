using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Tests.Properties.Airframe;

/// <summary>An invented dual-deployment rocket: nose, payload tube, altimeter bay, booster.</summary>
internal static class SampleRocket
{
    public static readonly Material Glass = MaterialTable.Find("glass epoxy")!;
    public static readonly Material Birch = MaterialTable.Find("birch plywood")!;

    public static Part[] Parts(double finClock = 0, double ballastClock = 0) =>
    [
        new NoseCone("Nose", 0, Glass, new(BodyShape.Haack), 0.40, 0.080, 0.002, new(0.08, 0.0758, 0.0718))
        {
            Fittings = [new PointMass("Ballast", 0.30, 0.120, 0.02, ballastClock)],
        },
        new Tube("Payload", 0, Glass, 0.50, 0.080, 0.076) { Stowed = [new("Main", 0.20, 0.15, 0.07, 0.240, 4e-4)] },
        new AltimeterBay("Bay", 0, Glass, 0.20, 0.0758, 0.0718, 0.09, 0.025, 0.080)
        {
            Fittings =
            [
                new BulkPlate("Bay top", -0.09, Birch, 0.0718, 0.006),
                new BulkPlate("Bay bottom", 0.104, Birch, 0.0718, 0.006),
                new Rods("Rods", -0.10, MaterialTable.Find("steel")!, 0.22, 0.0055, 2, 0.022, 0.4),
            ],
        },
        new Tube("Booster", 0, Glass, 0.90, 0.080, 0.076)
        {
            Fittings =
            [
                new FinPlates(
                    "Fins", Glass, new("Fins", 3, new TrapezoidFin(0.20, 0.08, 0.09, 0.12), 0.69, 0.040, 0.0035, FinEdge.Rounded, FinEdge.Square, 0, 0, finClock, 4e9),
                    0.01, 0.15, 0.012),
                new MotorMount("Mount", 0.50, Glass, 0.40, 0.057, 0.0545),
                new CentringRing("Forward ring", 0.52, Birch, 0.076, 0.057, 0.006),
                new CentringRing("Aft ring", 0.88, Birch, 0.076, 0.057, 0.006),
                new RailGuide("Guide", 0.40, 0.008, 0.011, 0.010, 0.040, 0),
                new RailGuide("Guide", 0.85, 0.008, 0.011, 0.010, 0.040, 0),
            ],
            Stowed = [new("Drogue", 0.15, 0.08, 0.05, 0.060, 1e-4)],
        },
    ];

    public static readonly JointKind[] Kinds = [JointKind.Pinned, JointKind.Screwed, JointKind.Pinned];

    public static readonly MotorLoad Motor = new("M", 1.33, 0.50, 0.054, 1.500, 0.800, 0.26, 0.05, 0.42, 0.049, 0.016, Basis.Measured);

    public static Vehicle Vehicle(double finClock = 0, double ballastClock = 0, ValueList<PieceWeighing>? weighings = null) =>
        Engine.Airframe.Vehicle.Stack("Sample", Parts(finClock, ballastClock), Kinds, weighings, 20e-6);
}
