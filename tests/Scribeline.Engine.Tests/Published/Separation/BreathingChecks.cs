using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tests.Published.Air;
using static System.Math;
using Row = System.Collections.Generic.Dictionary<string, string>;

namespace Scribeline.Engine.Tests.Published.Separation;

/// <summary>Rows of separation-breathing.csv: forces that part a joint early, venting, firing circuits. The basis of each stands in the file.</summary>
public class BreathingChecks
{
    private static List<Row> Rows => AirTable.Read("separation-breathing.csv");

    public static TheoryData<string> Ids => [.. Rows.Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_is_met(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var expected = row.Number("value");
        Assert.Equal(expected, Computed(id), Abs(expected) * row.Number("rel_tolerance"));
    }

    private static double Computed(string id) => id[1] switch
    {
        '5' => Vent(id),
        '4' => Parting(id),
        _ => id switch
        {
            "S3.17" => new JointForce(200, 0, 0, 6, 8).MostLoaded(4, 0.05),
            "S6.11" => new JointForce(0, 0, 0, 40, 0).Contact(0.098),
            "S7.10" => 1e3 * FiringCircuit.Heat(1, 1.6, 6.25e-3),
            _ => FiringCircuit.Current(9, 1.5, 0.4, 1.6),
        },
    };

    // The worked stack: 9 kg in 3.2, 2.0 and 3.8 kg with 28, 12 and 60 % of the drag, 102 mm, C_D 0.55, 280 m/s in 1.16 kg/m³.
    private static double Parting(string id)
    {
        double drag = 0.5 * 1.16 * 280 * 280 * 0.55 * Disc(0.102), outside = StandardAtmosphere.AtGeopotential<Scalar>(3048).Pressure;
        var trapped = EarlyParting.OfTrappedAir(101_325, outside);
        return id switch
        {
            "S4.01" => drag,
            "S4.02" => EarlyParting.OfDrag(3.2, 9, drag, 0.28 * drag),
            "S4.03" => EarlyParting.OfDrag(5.2, 9, drag, 0.40 * drag),
            "S4.04" => EarlyParting.OfDrag(3.2, 9, drag, 0.28 * drag, 1800),
            "S4.05" => -drag / 9,
            "S4.06" => trapped / 1000,
            "S4.07" => trapped * Disc(0.1524),
            "S4.08" => trapped * Disc(0.098),
            "S4.09" => EarlyParting.OfTrappedAir(101_325, 101_325, 288.15, 30) * Disc(0.098),
            "S4.10" => EarlyParting.OfTumble(2, 2 * PI, 0.7),
            _ => EarlyParting.OfCord(1500, 4, 1.6),
        };
    }

    private static double Vent(string id) => id switch
    {
        "S5.01" => VentRules.CustomaryVolume / Disc(VentRules.CustomaryPort),
        "S5.02" => VentRules.LagHeight(VentRules.CustomaryVolume / Disc(VentRules.CustomaryPort), 300),
        "S5.03" => VentRules.LagHeight(500, 300),
        "S5.04" => Sqrt(1 / VentRules.LagHeight(1, 300)),
        "S5.05" => 1e3 * VentRules.CustomaryDiameter(2e-3, 3),
        "S5.06" => VentRules.SteadyDifference(50.8, 4500, 60_000, 255),
        "S5.07" => VentRules.EqualisingTime(51.74, 5000, 80_000, 1),
        "S5.08" => StaticPressure.AcrossWind(3, 0),
        "S5.09" => StaticPressure.AcrossWind(3, PI / 6),
        "S5.10" => StaticPressure.HeightError(StaticPressure.AcrossWind(3).Low * Pow(Sin(PI / 36), 2), 0.5 * SoundSpeed(0)),
        "S5.11" => StaticPressure.HeightError(-0.018, 250),
        "S5.12" => StaticPressure.BehindShoulder(1, 3),
        "S5.13" => StaticPressure.BehindShoulder(4, 3),
        "S5.14" => StaticPressure.HeightError(-0.10, SoundSpeed(1500)),
        "S5.15" => StaticPressure.AcrossShock(1.2),
        "S5.16" => Bay(2).Greatest,
        "S5.17" => Bay(2).At(5),
        "S5.18" => Bay(3).Greatest,
        "S5.19" => Bay(3).At(5),
        "S5.20" => Bay(3).Apogee,
        "S5.21" => Bay(4).Greatest,
        _ => Bay(4).At(5),
    };

    // One port or two opposite −3 to +1, three −1.4 to −0.6, four −1, five −1.18 to −0.82, six −1.4 to −0.6: potential flow, computed independently.
    [Theory]
    [InlineData(1, -3, 1)]
    [InlineData(2, -3, 1)]
    [InlineData(3, -1.4, -0.6)]
    [InlineData(4, -1, -1)]
    [InlineData(5, -1.18, -0.82)]
    [InlineData(6, -1.4, -0.6)]
    public void Ports_round_the_body(int count, double low, double high)
    {
        var range = StaticPressure.AcrossWind(count);
        Assert.Equal(low, range.Low, 0.006);
        Assert.Equal(high, range.High, 0.006);
    }

    // 15 % is what the far field claims for itself, 0.0005 what the panels do.
    [Fact]
    public void Suction_behind_an_ogive()
    {
        foreach (var row in AirTable.Read("separation-ogive-cp.csv"))
        {
            var s = row.Number("s_calibres");
            foreach (var (fineness, column) in new[] { (3, "cp_f3_M0"), (4, "cp_f4_M0"), (5, "cp_f5_M0") })
            {
                var panels = row.Number(column);
                if (s is >= 1 and <= 6) Assert.Equal(panels, StaticPressure.BehindShoulder(s, fineness), (0.15 * Abs(panels)) + 0.0005);
            }

            Assert.Equal(row.Number("cp_farfield_f3"), StaticPressure.BehindShoulder(s, 3), 0.00006);
            Assert.Equal(row.Number("cp_farfield_f5"), StaticPressure.BehindShoulder(s, 5), 0.00006);
        }
    }

    // Printed to 0.01 Pa; the difference from outside is held to a thousandth of itself.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Bay_follows_the_climb(int bay)
    {
        var followed = Bay(bay);
        foreach (var row in AirTable.Read("separation-vent-trace.csv"))
        {
            double t = row.Number("t_s"), printed = row.Number($"pb_V{bay}_Pa"), outside = row.Number("p_ext_Pa");
            Assert.Equal(outside, followed.Outside(t), 0.02);
            Assert.Equal(printed, followed.At(t), 0.02 + (1e-3 * Abs(printed - outside)));
        }
    }

    private static double Disc(double diameter) => PI / 4 * diameter * diameter;

    private static double SoundSpeed(double height) => StandardAtmosphere.AtGeopotential<Scalar>(height).SoundSpeed;

    private static Followed Bay(int number) => number switch
    {
        1 => new(2e-3, 3, 4.05e-3),
        2 => new(2e-3, 3, 1.5e-3),
        3 => new(2e-3, 1, 1e-3),
        _ => new(6e-3, 1, 3e-3),
    };

    /// <summary>A bay taken up and down by h = 250 t − 6.25 t² in the standard atmosphere.</summary>
    private sealed class Followed
    {
        private const double Step = 0.005;
        private readonly double[] times, outside, inside;

        public Followed(double volume, int count, double diameter)
        {
            times = [.. Enumerable.Range(0, 6001).Select(i => i * Step)];
            outside = [.. times.Select(t => (double)StandardAtmosphere.AtGeopotential<Scalar>((250 * t) - (6.25 * t * t)).Pressure)];
            inside = Breathing.Pressures(new(volume, count * Disc(diameter), 288.15), times, outside);
        }

        public double Greatest => inside.Zip(outside, (p, q) => p - q).Max();

        public double Apogee => times[Array.IndexOf(inside, inside.Min())];

        public double At(double time) => inside[(int)Round(time / Step)];

        public double Outside(double time) => outside[(int)Round(time / Step)];
    }
}
