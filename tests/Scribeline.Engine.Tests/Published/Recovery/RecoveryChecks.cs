using System.Globalization;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tests.Published.Air;
using static System.Math;
using Row = System.Collections.Generic.Dictionary<string, string>;

namespace Scribeline.Engine.Tests.Published.Recovery;

/// <summary>Every row of recovery-checks.csv. The basis of each stands in the file; its tolerance is the rounding of the printed value.</summary>
public class RecoveryChecks
{
    private static List<Row> Rows => AirTable.Read("recovery-checks.csv");

    public static TheoryData<string> Ids => [.. Rows.Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_is_met(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var expected = row.Number("expected");
        var tolerance = row["tolerance"] == "exact" ? 0 : double.Parse(row["tolerance"].TrimEnd('%'), CultureInfo.InvariantCulture) / 100;
        Assert.Equal(expected, Computed(id), Abs(expected) * tolerance);
    }

    [Fact]
    public void All_of_them_are_there() => Assert.Equal(115, Rows.Count);

    private static double Computed(string id) => id[0] switch
    {
        '1' => Area(id),
        '2' => Descent(id),
        '3' => Force(id),
        '4' => Harness(id),
        '5' => Plate(id),
        '6' => Pack(id),
        '7' => Practice(id),
        _ => DriftChecks.Computed(id),
    };

    private static double Area(string id) => id switch
    {
        "1.1" => ClothArea.Polygon(6, 1),
        "1.2" => ClothArea.NominalDiameter(ClothArea.Polygon(6, 1)),
        "1.3" => ClothArea.Polygon(8, 1),
        "1.4" => ClothArea.NominalDiameter(ClothArea.Polygon(8, 1)),
        "1.5" => ClothArea.Cross(1.5, 0.5),
        "1.6" => ClothArea.NominalDiameter(ClothArea.Cross(1.5, 0.5)),
        "1.7" => 0.70 * ClothArea.Hemisphere(1),
        "1.8" => ClothArea.Rebased(0.70, ClothArea.Hemisphere(1), ClothArea.Disc(1)),
        "1.9" => 100 * (SteadyDescent.Rate(1, ClothArea.DragAreaWithHole(0.75, 1, 0.04), 1) / SteadyDescent.Rate(1, 0.75, 1) - 1),
        "1.10" => Pow(SteadyDescent.Rate(1, 0.75, 1) / SteadyDescent.Rate(1, 1.5, 1), 2),
        _ => double.RadiansToDegrees(ClothArea.ConeAngle(0.67, 1)),
    };

    private const double Pound = 0.45359237, Foot = 0.3048, Slug = 14.593903;

    private static double DensityAt(double height) => StandardAtmosphere.AtGeopotential<Scalar>(height).Density;

    private static double Descent(string id) => id switch
    {
        "2.1" => DensityAt(1500),
        "2.2" => SteadyDescent.Rate(10, 4, 1.225),
        "2.3" => SteadyDescent.Rate(10, 4, DensityAt(1500)),
        "2.4" => SteadyDescent.Rate(20 * Pound, 0.75 * ClothArea.Disc(8 * Foot), 0.0023769 * Slug / Pow(Foot, 3)) / Foot,
        "2.5" => SteadyDescent.Rate(10, 0.75 * ClothArea.Disc(0.6) + 0.6 * 1.1 * 0.1 * 2.2, DensityAt(2000)),
        "2.6" => SteadyDescent.Rate(10, 0.75 * ClothArea.Disc(0.6), DensityAt(2000)),
        "2.7" => SteadyDescent.Rate(10, 0.6 * 1.1 * 0.1 * 2.2, DensityAt(2000)),
        "2.8" => ClothArea.NominalDiameter(SteadyDescent.DragAreaFor(6, 12, DensityAt(1500)) / 0.75),
        "2.9" => SteadyDescent.Energy(10 * Pound, 20 * Foot) / (Pound * 9.80665 * Foot),
        "2.10" => SteadyDescent.Energy(10 * Pound, 20 * Foot),
        "2.11" => SteadyDescent.SpeedWithin(10 * Pound, 75 * Pound * 9.80665 * Foot) / Foot,
        "2.12" => SteadyDescent.Energy(8, 6.4),
        "2.13" => SteadyDescent.SpeedWithin(8, 101.69),
        "2.14" => SteadyDescent.LayerTime(0, 3000, 20),
        _ => HandDrift.Through(new PowerLawWind(1, PI, 0), 0, 3000, z => 20 * Sqrt(1.225 / DensityAt(z))).North,
    };

    // The worked main: 9.0 kg, flat circular, D0 2.44 m, CD0 0.75, 300 m, 25 m/s straight down.
    private static OpeningForce Handbook(double growth) => new(
        0.75 * ClothArea.Disc(2.44), 25, DensityAt(300), 9, OpeningForce.FillTimeOf(8, 2.44, 25), 1.8, growth);

    private static Opening Integrated(double exponent) => new OpeningInputs
    {
        Mass = 9,
        DragArea = 0.75 * ClothArea.Disc(2.44),
        NominalDiameter = 2.44,
        FillConstant = 8,
        GrowthExponent = exponent,
        Speed = 25,
        PathAngle = PI / 2,
        Density = DensityAt(300),
    }.Open();

    private static double Lines => Snatch.Stiffness(12, 400 * Pound * 9.80665, 0.30, 2.44);

    private static double Force(string id) => id switch
    {
        "3.1" => OpeningForce.FillTimeOf(8, 2.44, 25),
        "3.2" => OpeningForce.FillTimeByPower(2.44, 25),
        "3.3" => OpeningForce.ReductionAt(0.1, 1),
        "3.4" => OpeningForce.ReductionAt(0.1, 2),
        "3.5" => OpeningForce.ReductionAt(1, 1),
        "3.6" => OpeningForce.ReductionAt(1, 2),
        "3.7" => OpeningForce.ReductionAt(10, 0.5),
        "3.8" => Handbook(2).BallisticParameter,
        "3.9" => Handbook(2).Reduction,
        "3.10" => Handbook(2).Peak,
        "3.11" => Handbook(2).AtInfiniteMass,
        "3.12" => Integrated(1).Peak,
        "3.13" => Integrated(2).Peak,
        "3.14" => Integrated(2).SpeedWhenFull,
        "3.15" => Integrated(2).HeightWhenFull,
        "3.16" => Integrated(6).Peak,
        "3.17" => Snatch.Force(12, Lines, 0.4, 10),
        _ => Snatch.Force(12, Snatch.InSeries(Lines, 1500 * Pound * 9.80665 / 0.28 / 7), 0.4, 10),
    };

    private static SnapOut Nylon => new(15, 4, 8, StretchingCord.Linear(6672, 0.28, 7));

    private static SnapOut Aramid => new(15, 4, 8, StretchingCord.Linear(6672, 0.04, 7));

    private static double Harness(string id) => id switch
    {
        "4.1" => Nylon.Energy,
        "4.2" => Nylon.Tension,
        "4.3" => Nylon.Cord.StretchAt(Nylon.Tension),
        "4.4" => Aramid.Tension,
        "4.5" => Aramid.Tension / Nylon.Tension,
        "4.6" => new StretchingCord(3404, 800, 3 * 3404, 6672).PeakTension(Nylon.Energy),
        "4.7" => HarnessRules.LengthFor(15, 4.0 * 8 / 12, 6672 / 0.28, 1000),
        "4.8" => HarnessRules.Rebounds(15, 2, 0.5),
        "4.9" => HarnessRules.Bundles(300, 0.5, 60, 0.30),
        "4.10" => HarnessRules.DesignFactor(),
        "4.11" => EdgeBearing.Pressure(2000, PI / 3, 12e-3, 2e-3) / 1e6,
        "4.12" => 356.8 / 100.8,
        "4.13" => SnapOut.AtSection(500, 5, 9),
        _ => HarnessRules.DesignFactor() * Integrated(6).Peak,
    };

    private static readonly PlateBending Steel = new(0.150, 1.5e-3, 0.29), Glass = new(0.048, 4.76e-3, 0.15);

    private static double Plate(string id) => id switch
    {
        "5.1" => Steel.ClampedMoment(314.16, 0.010),
        "5.2" => Steel.Stress(Steel.ClampedMoment(314.16, 0.010)) / 1e6,
        "5.3" => Steel.Stress(PlateBending.RimMoment(314.16)) / 1e6,
        "5.4" => 1e3 * Steel.Deflection(314.16, 200e9, clamped: true),
        "5.5" => Steel.FreeMoment(314.16, 0.010),
        "5.6" => Glass.Stress(Glass.FreeMoment(4000, 0.009)) / 1e6,
        "5.7" => Glass.Stress(Glass.ClampedMoment(4000, 0.009)) / 1e6,
        "5.8" => 1e3 * Glass.Deflection(4000, 15.17e9, clamped: false),
        "5.9" => 1e3 * Glass.Acting(0.002),
        "5.10" => Glass.Stress(Glass.RingMoment(4000, 0.016)) / 1e6,
        "5.11" => Glass.Stress(Glass.UniformMoment(Psi(15))) / 1e6,
        "5.12" => PressureVessel.Load(Psi(15), 0.096),
        "5.13" => new PlateBending(1, 1, 0.3).Deflection(1, 1, clamped: false),
        "5.14" => new PlateBending(1, 1, 0.3).Deflection(1, 1, clamped: true),
        "5.15" => Inch(0.250, 20).TensileArea / Pow(0.0254, 2),
        "5.16" => Inch(0.375, 16).TensileArea / Pow(0.0254, 2),
        "5.17" => 1e6 * new ThreadGeometry(6e-3, 1e-3, true).TensileArea,
        "5.18" => 310e6 * new ThreadGeometry(6e-3, 1e-3, true).TensileArea,
        "5.19" => 420e6 * new ThreadGeometry(8e-3, 1.25e-3, true).TensileArea,
        "5.20" => Psi(60_000) * Inch(0.250, 20).TensileArea / (Pound * 9.80665),
        "5.21" => JointBond.OnLaminate / PressureVessel.BondShear(1, 0.0985, 4.76e-3),
        "5.22" => JointBond.OnLaminate / PressureVessel.BondShear(1, 0.0985, JointBond.LongestCounted),
        _ => Glass.PunchedBy(0.018, Fastening.LaminateShear),
    };

    private static double Psi(double value) => value * Pound * 9.80665 / (0.0254 * 0.0254);

    private static ThreadGeometry Inch(double diameter, double pitch) => new(diameter * 0.0254, 0.0254 / pitch, false);

    // 265 ft to the pound.
    private static double CanopyMass => Packing.CanopyMass(ClothArea.Disc(2.44), 1.1 * Packing.OuncePerSquareYard, 0.25, 12, 2.54, Pound / (265 * Foot));

    private static double Pack(string id) => id switch
    {
        "6.1" => 1e3 * 1.1 * Packing.OuncePerSquareYard,
        "6.2" => 1e3 * Packing.CanopyMass(ClothArea.Disc(2.44), 1.1 * Packing.OuncePerSquareYard, 0, 0, 0, 0),
        "6.3" => 1e3 * CanopyMass,
        "6.4" => 1e6 * Packing.Volume(CanopyMass, Packing.Canopy),
        "6.5" => 1e2 * Packing.Length(Packing.Volume(CanopyMass, Packing.Canopy), 0.098),
        "6.6" => 1e2 * Packing.Voids * Packing.Length(Packing.Volume(CanopyMass, Packing.Canopy) + Packing.Volume(8 * 0.020 + 0.040 + 0.060, Packing.Cord), 0.098),
        "6.7" => Packing.Canopy / Packing.NylonFibre,
        _ => 20 * Pound / Pow(Foot, 3) / 1000,
    };

    private static double Steady => SteadyDescent.Rate(9, 0.75 * ClothArea.Disc(2.44), DensityAt(300));

    private static double Settling => SteadyDescent.SettlingHeight(Integrated(2).SpeedWhenFull, 1.05 * Steady, Steady);

    private static double Terminal => SteadyDescent.Rate(10, 0.5 * ClothArea.Disc(0.10), 1.225);

    private static double Practice(string id) => id switch
    {
        "7.1" => Steady,
        "7.2" => Settling,
        "7.3" => 1.4 * 25 + Integrated(2).HeightWhenFull + Settling,
        "7.4" => Terminal,
        "7.5" => SteadyDescent.SpeedAfterFall(1500, Terminal),
        "7.6" => SteadyDescent.Energy(10, SteadyDescent.SpeedAfterFall(1500, Terminal)) / 1e3,
        "7.7" => 2 * 9.80665,
        "7.8" => double.Hypot(15, 2 * 9.80665),
        "7.9" => new OpeningForce(0.06, 60, 1.0, 1, 1, 1.05, 1).AtInfiniteMass,
        "7.10" => ChannelReliability.BothFail(0.02, 0.10),
        "7.11" => ChannelReliability.Demonstrated(5, 0.90),
        _ => ChannelReliability.PassesFor(0.90, 0.90),
    };
}
