using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Tests.Published.Aerodynamics;

/// <summary>Supersonic building blocks: cones, plane flow, thin fins, bodies.</summary>
public class SupersonicTests
{
    private const double Degree = Math.PI / 180;

    // J. L. Sims, NASA SP-3004, 1964, 46 cases. Cells flagged as damaged in the scan are held to the independent re-integration instead.
    // Tolerance: the table and the re-integration themselves agree to 5.1e-5 relative.
    [Fact]
    public void Cones_of_SP3004()
    {
        foreach (var row in Air.AirTable.Read("aero-cones-sp3004.csv"))
        {
            double N(string c) => Air.AirTable.Number(row, c);
            var cone = ConeFlow.Solve(N("mach"), N("cone_half_angle_deg") * Degree)!.Value;
            Check(cone.ShockAngle, "shock_angle_rad", "chk_shock_angle_rad");
            Check(cone.SurfaceMach, "surface_mach", "chk_surface_mach");
            Check(cone.PressureRatio, "p_ratio", "chk_p_ratio");
            Assert.Equal(N("chk_cp"), cone.PressureCoefficient, 2e-6);

            void Check(double value, string column, string again)
            {
                Assert.True(Math.Abs(value / N(again) - 1) < 5e-6, $"{N("cone_half_angle_deg")}° M {N("mach")} {column}: {value}");
                if (row["flag"] != column) Assert.Equal(1, value / N(column), 5.2e-5);
            }
        }
    }

    [Fact]
    public void A_cone_too_steep_has_no_attached_shock() => Assert.Null(ConeFlow.Solve(1.5, 40 * Degree));

    [Theory] // A-20, computed and verified against Prandtl–Meyer flow
    [InlineData(1.5, 1.78885, 2.28800, 3.05904)]
    [InlineData(2, 1.15470, 1.46667, 0.93402)]
    [InlineData(3, 0.70711, 1.26875, 1.11163)]
    public void Busemann_coefficients(double mach, double c1, double c2, double c3)
    {
        var c = Busemann.Coefficients(mach);
        Assert.Equal(c1, c.C1, 5.1e-6);
        Assert.Equal(c2, c.C2, 5.1e-6);
        Assert.Equal(c3, c.C3, 5.1e-6);
        // Third order against the exact expansion through half a degree.
        Assert.Equal(1, Busemann.Pressure(mach, -0.5 * Degree) / CompressibleFlow.ExpansionPressure(mach, 0.5 * Degree), 1e-4);
    }

    [Theory] // A-21, computed: oblique shock and the three orders
    [InlineData(2, 10, 0.252350, 0.25118)]
    [InlineData(3, 5, 0.072061, 0.07211)]
    public void Wedges(double mach, double degrees, double shock, double third)
    {
        var angle = CompressibleFlow.WeakShock(mach, degrees * Degree)!.Value;
        Assert.Equal(shock, CompressibleFlow.PressureCoefficient(CompressibleFlow.ShockPressure(mach, angle), mach), 6e-7);
        Assert.Equal(third, Busemann.Pressure(mach, degrees * Degree), 6e-6);
    }

    [Fact]
    public void Thin_profiles() // A-21 flat plate, A-26: Ackeret, computed
    {
        var c1 = Busemann.Coefficients(2).C1;
        Assert.Equal(0.20153, 2 * c1 * 5 * Degree, 5.1e-6);
        Assert.Equal(0.0057735, 2 * c1 * 0.05 * 0.05, 5.1e-8);
    }

    [Fact]
    public void Boat_tail_corner() => // A-52, computed: C_p and the bound on the 102 mm disc
        Assert.Equal(0.0347, -CompressibleFlow.ExpansionPressure(2, 5 * Degree) * (1 - Math.Pow(0.080 / 0.102, 2)), 5.1e-5);

    [Theory] // Linear theory of rectangles: (4/β)[1 − 1/(2βAR)] at (βAR − ⅔)/(2βAR − 1) of the chord
    [InlineData(1.850, 2)]
    [InlineData(2.5, 1.2)]
    [InlineData(4, 0.8)]
    public void Rectangular_fins(double mach, double aspect)
    {
        var fin = FinPlanform.Of(new TrapezoidFin(1, 1, aspect / 2, 0));
        var b = Math.Sqrt(mach * mach - 1);
        var load = SingleFin.At(fin, mach);
        Assert.Equal(4 / b * (1 - 1 / (2 * b * aspect)), load.Slope, 1e-9);
        Assert.Equal((b * aspect - 2.0 / 3) / (2 * b * aspect - 1), load.Centre, 1e-9);
    }

    [Fact]
    public void Delta_with_a_subsonic_leading_edge() // 2π cot Λ/E(k), E by its series
    {
        var fin = FinPlanform.Of(new TrapezoidFin(1, 0, 0.5, 1));
        var k2 = 1 - 3.0 / 4;
        var e = Math.PI / 2 * (1 - k2 / 4 - 3 * k2 * k2 / 64 - 5 * Math.Pow(k2, 3) / 256 - 175 * Math.Pow(k2, 4) / 16384 - 441 * Math.Pow(k2, 5) / 65536);
        Assert.Equal(2 * Math.PI / 2 / e, SingleFin.At(fin, 2).Slope, 2e-5);
        Assert.Equal(Math.PI * fin.AspectRatio / 2, SingleFin.At(fin, 1.0000001).Slope, 1e-4);
    }

    [Fact]
    public void Cone_at_incidence_tends_to_slender_body_theory_and_to_Newton()
    {
        Assert.Equal(2, Stone(2, 5), 0.1);
        Assert.Equal(2, Stone(2, 2.5), 0.05);
        // Newtonian: 2 cos² in the limit of Mach number for γ → 1; for γ 1.4 within a few per cent.
        Assert.Equal(1, Stone(20, 20) / (2 * Math.Pow(Math.Cos(20 * Degree), 2)), 0.05);

        static double Stone(double mach, double degrees) =>
            ConeIncidence.NormalForceSlope(mach, degrees * Degree, ConeFlow.Solve(mach, degrees * Degree)!.Value);
    }

    // Second-order shock expansion against independent Euler solutions: 7.5 % at the lowest Mach number, where the method is weakest, 4 % from Mach 2.
    [Fact]
    public void Shock_expansion_against_Euler_solutions()
    {
        foreach (var row in Air.AirTable.Read("aero-nose-wave.csv").Where(r => r["shape"] is "cone" or "ogive" or "parabola"))
        {
            double f = Air.AirTable.Number(row, "fineness"), m = Air.AirTable.Number(row, "mach");
            var nose = new BodySection("", Family(row["shape"]), 0, f, 0, 1);
            Assert.Equal(1, ShockExpansion.Of(nose, 0, m).Drag / Air.AirTable.Number(row, "cd_wave"), m < 2 ? 0.075 : 0.04);
        }
    }

    [Fact]
    public void Nose_drag_returns_the_Euler_solutions() // A-25; cones are Taylor–Maccoll, interpolated within 0.8 %
    {
        foreach (var row in Air.AirTable.Read("aero-nose-wave.csv"))
        {
            double f = Air.AirTable.Number(row, "fineness"), m = Air.AirTable.Number(row, "mach");
            var drag = NoseDrag.At(new("", Family(row["shape"]), 0, f, 0, 1), m);
            Assert.Equal(1, drag / Air.AirTable.Number(row, "cd_wave"), row["shape"] == "cone" ? 0.008 : 1e-9);
        }
    }

    [Theory] // A-24: cones by Bonney's fit
    [InlineData(5, 2, 0.0332)]
    [InlineData(10, 1.5, 0.1257)]
    [InlineData(10, 2, 0.1070)]
    [InlineData(10, 3, 0.0937)]
    [InlineData(15, 1.5, 0.2493)]
    [InlineData(15, 2, 0.2123)]
    [InlineData(15, 3, 0.1859)]
    [InlineData(20, 2, 0.3452)]
    public void Bonney(double degrees, double mach, double drag) => Assert.Equal(drag, NoseDrag.Bonney(degrees * Degree, mach), 1e-4);

    [Theory] // A-25: tangent ogives by Miles's form
    [InlineData(3, 2, 0.0963)]
    [InlineData(3, 3, 0.0934)]
    [InlineData(4, 2, 0.0591)]
    [InlineData(4, 3, 0.0574)]
    [InlineData(5, 2, 0.0405)]
    [InlineData(5, 3, 0.0393)]
    public void Miles(double fineness, double mach, double drag) => Assert.Equal(drag, NoseDrag.Miles(fineness, mach), 1e-4);

    [Theory] // NACA Report 1135, Prandtl–Meyer table: ν in degrees
    [InlineData(1.5, 11.905)]
    [InlineData(2, 26.380)]
    [InlineData(3, 49.757)]
    [InlineData(5, 76.920)]
    public void Prandtl_Meyer(double mach, double degrees)
    {
        Assert.Equal(degrees, CompressibleFlow.PrandtlMeyer(mach) / Degree, 6e-4);
        Assert.Equal(mach, CompressibleFlow.MachOf(CompressibleFlow.PrandtlMeyer(mach)), 1e-9);
    }

    private static BodyProfile Family(string shape) => shape switch
    {
        "cone" => new(BodyShape.Conical),
        "ogive" => new(BodyShape.TangentOgive),
        "parabola" => new(BodyShape.Parabola, 1),
        "haack_C0_vonkarman" => new(BodyShape.Haack),
        _ => new(BodyShape.Haack, 1.0 / 3),
    };
}
