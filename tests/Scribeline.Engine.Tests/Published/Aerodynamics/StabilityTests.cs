using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Aerodynamics;

/// <summary>Damping, roll, flutter and flight-path response; worked values computed independently from the sources named.</summary>
public class StabilityTests
{
    [Fact]
    public void Pitch_damping()
    {
        var c = AeroTable.Build(SampleShapes.ExampleA()).At<Scalar>(0, 0, 1e7, 0);
        var damping = PitchStability.DampingMoment(c.DampingSum0, c.DampingSum1, c.DampingSum2, 1.360, 0.102);
        Assert.Equal(-972.497, damping, 1e-3);
    }

    [Fact]
    public void Roll_of_canted_fins() // A-41, without k_W(B); Barrowman 1967
    {
        var cant = 0.5 * Math.PI / 180;
        var rocket = new RocketGeometry(SampleShapes.ExampleA(cant));
        var (fins, one) = (rocket.Fins[0], LiftBuildUp.SingleFins(rocket, 0)[0].Slope);
        Assert.Equal(2.43981e-4, fins.Planform.RollIntegral(0.051), 5.1e-10);
        var forcing = RollMoments.ForcingSlope(rocket, fins, one);
        var damping = RollMoments.DampingOf(rocket, fins, one);
        // Worked with ȳ rounded to .051429 m; unrounded 14.80854.
        Assert.Equal(14.80861, forcing, 1e-4);
        Assert.Equal(-32.93501, damping, 5.1e-5);
        Assert.Equal(15.3873, PitchStability.SteadyRollRate(forcing * cant, damping, 200, 0.102), 5.1e-4);

        var c = AeroTable.Build(SampleShapes.ExampleA(cant)).At<Scalar>(0, 0, 1e7, 0);
        Assert.Equal(forcing * cant * FinInterference.Canted(fins.Tau), c.RollForcing, 1e-9);
        Assert.Equal(damping, c.RollDamping, 1e-9);
    }

    [Fact]
    public void Roll_damping_of_the_Basic_Finner() // A-42, linear theory, no body factor
    {
        var rocket = new RocketGeometry(SampleShapes.BasicFinner());
        var fins = rocket.Fins[0];
        var share = fins.Planform.Area / rocket.Area;
        Assert.Equal(-25.484, RollMoments.DampingOf(rocket, fins, 4 / Math.Sqrt(3) * share), 5.1e-4);
        Assert.Equal(-21.805, RollMoments.DampingOf(rocket, fins, SingleFin.At(fins.Planform, 2).Slope * share), 5.1e-4);
    }

    [Theory] // A-45, NACA TN 4197 (from memory), computed
    [InlineData(0.0032, 101325, 340.294, 210.14)]
    [InlineData(0.0032, 84556, 334.487, 226.11)]
    [InlineData(0.0032, 70109, 328.578, 243.93)]
    [InlineData(0.0048, 101325, 340.294, 386.06)]
    public void Flutter(double thickness, double pressure, double sound, double speed)
    {
        var fin = FinPlanform.Of(new TrapezoidFin(0.250, 0.100, 0.120, 0.130));
        Assert.Equal(speed, FinFlutter.Speed(4.14e9, thickness, fin, 0.100, pressure, sound), 0.012);
    }

    [Fact]
    public void Flutter_constant() => // Martin's 39.3 psi
        Assert.Equal(39.294, 24 * 0.25 * 1.4 * 14.696 / Math.PI, 5.1e-4);

    [Fact]
    public void Divergence()
    {
        var q = FinFlutter.DivergencePressure(FinFlutter.SlabStiffness(4.14e9, 0.175, 0.0032), 0.12, 0.175, 1.913);
        Assert.Equal(92.6, q / 1000, 0.051);
        Assert.Equal(389, Math.Sqrt(2 * q / 1.225), 0.5);
    }

    [Fact]
    public void Pitch_oscillator() // Mandell, Caporaso and Bengen 1973, from memory
    {
        var c = AeroTable.Build(SampleShapes.ExampleA()).At<Scalar>(0, 0, 1e7, 0);
        double area = Math.PI / 4 * 0.102 * 0.102, s0 = c.DampingSum0, s1 = c.DampingSum1, s2 = c.DampingSum2;
        PitchStability At(double speed, double jet = 0, double mass = double.PositiveInfinity) =>
            PitchStability.Of(1.225, speed, area, s0, s1, s2, 1.360, 2.40, jet, mass);
        Assert.Equal(2.00768, (s1 / s0 - 1.360) / 0.102, 5.1e-6);
        Assert.Equal(7.413, At(25).Stiffness, 5.1e-4);
        Assert.Equal(0.6330, At(25).Damping, 5.1e-5);
        Assert.Equal(1.7575, At(25).NaturalFrequency, 5.1e-5);
        Assert.Equal(474.43, At(200).Stiffness, 5.1e-3);
        Assert.Equal(5.0639, At(200).Damping, 5.1e-5);
        Assert.Equal(14.0598, At(200).NaturalFrequency, 5.1e-5);
        Assert.Equal(0.0750, At(200).DampingRatio, 5.1e-5);
        Assert.Equal(0.0805, At(200, 0.9 * 0.64 * 0.64).DampingRatio, 5.1e-5);
        Assert.Equal(0.1208, At(200, 0, 9.0).DampingRatio, 5.1e-5);
        Assert.Equal(89.4, PitchStability.Wavelength(1.225, area, s0, s1, 1.360, 2.40), 0.051);
        Assert.Equal(14.1084, PitchStability.ResonantRollRate(At(200).NaturalFrequency, 0.0165, 2.40), 5.1e-5);
    }

    [Theory] // A-48, ζ 0.05
    [InlineData(0.5, 1.330)]
    [InlineData(0.9, 4.757)]
    [InlineData(1, 10.0)]
    [InlineData(1.1, 4.218)]
    [InlineData(2, 0.333)]
    public void Trim_amplification(double ratio, double expected) => Assert.Equal(expected, PitchStability.TrimAmplification(ratio, 0.05), 5.1e-4);

    [Fact]
    public void Weathercock_in_the_stiff_limit() // Culler and Fried 1957, verified numerically
    {
        Assert.Equal(14.0362, Weathercock.ExitAngle(20, 5) * 180 / Math.PI, 5.1e-5);
        var turned = Weathercock.At(20, 5, 8, 200);
        Assert.Equal(19.2948, turned.Angle * 180 / Math.PI, 5.1e-5);
        Assert.Equal(2.59597, turned.Time, 5.1e-6);
        Assert.Equal(61.086, turned.Speed * Math.Sin(turned.Angle) - 5, 5.1e-4);
        Assert.Equal(188.766, turned.Speed * Math.Cos(turned.Angle), 5.1e-4);
    }
}
