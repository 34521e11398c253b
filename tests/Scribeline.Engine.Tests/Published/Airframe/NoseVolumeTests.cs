using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Tests.Published.Airframe;

/// <summary>Volumes of noses over length times base area, from the closed forms of the families.</summary>
public class NoseVolumeTests
{
    private const double Length = 0.4, Diameter = 0.1;

    private static BodySection Nose(BodyShape shape, double parameter = 0, double fineness = Length / Diameter) =>
        new("nose", new(shape, parameter), 0, fineness * Diameter, 0, Diameter);

    private static double Fullness(BodySection nose) => nose.Moments().Volume / (nose.Length * Math.PI * Diameter * Diameter / 4);

    // Cone 1/3 and half ellipsoid 2/3: Euclid and Archimedes. Parabolic series (4/3 - K + K²/5)/(2 - K)², power series 1/(2n + 1),
    // Haack series 1/2 + 3C/16: integrals of the squared profiles.
    [Theory]
    [InlineData(BodyShape.Conical, 0, 1.0 / 3)]
    [InlineData(BodyShape.Ellipsoid, 0, 2.0 / 3)]
    [InlineData(BodyShape.Parabola, 1, 8.0 / 15)]
    [InlineData(BodyShape.Parabola, 0.75, 0.44533333333333336)]
    [InlineData(BodyShape.Parabola, 0.5, 0.3925925925925926)]
    [InlineData(BodyShape.Power, 0.5, 0.5)]
    [InlineData(BodyShape.Power, 0.75, 0.4)]
    [InlineData(BodyShape.Haack, 0, 0.5)]
    [InlineData(BodyShape.Haack, 1.0 / 3, 0.5625)]
    [InlineData(BodyShape.Haack, 2.0 / 3, 0.625)]
    public void Closed_forms(BodyShape shape, double parameter, double expected) =>
        Assert.Equal(expected, Fullness(Nose(shape, parameter)), 1e-10);

    // Barrowman (1966) eq. 37 in its exact form, computed independently: X/L = 1 - V/(L·A), so V/(L·A) = 1 - (X/d)/f. Four decimals printed.
    [Theory]
    [InlineData(1, 0.4300)]
    [InlineData(2, 0.9145)]
    [InlineData(3, 1.3874)]
    [InlineData(4, 1.8572)]
    [InlineData(5, 2.3257)]
    [InlineData(7, 3.2612)]
    [InlineData(10, 4.6629)]
    public void Tangent_ogives(double fineness, double centre) =>
        Assert.Equal(1 - centre / fineness, Fullness(Nose(BodyShape.TangentOgive, 0, fineness)), 0.00006 / fineness);

    // Numerically integrated independently, fineness 4; five decimals printed. The limit of a long arc is the cone's 1/3.
    [Theory]
    [InlineData(1.5, 0.53959, 6e-6)]
    [InlineData(2, 0.57424, 6e-6)]
    [InlineData(1e6, 2.0 / 3, 1e-6)]
    public void Secant_ogives(double parameter, double centre, double tolerance) =>
        Assert.Equal(1 - centre, Fullness(Nose(BodyShape.SecantOgive, parameter)), tolerance);

    [Fact]
    public void A_secant_ogive_of_the_tangent_radius_is_the_tangent_ogive() =>
        Assert.Equal(Fullness(Nose(BodyShape.TangentOgive)), Fullness(Nose(BodyShape.SecantOgive, 1)), 1e-14);

    [Theory]
    [InlineData(BodyShape.Ellipsoid, 0)]
    [InlineData(BodyShape.Parabola, 0.6)]
    [InlineData(BodyShape.Power, 0.62)]
    [InlineData(BodyShape.Conical, 0)]
    public void Closed_forms_agree_with_quadrature_in_all_moments(BodyShape shape, double parameter)
    {
        BodySection nose = Nose(shape, parameter);
        RevolutionMoments exact = nose.Moments(), summed = ProfileVolume.Integrate(0, 0, nose.Length, nose.RadiusAt);
        Assert.Equal(1, summed.R2 / exact.R2, 1e-9);
        Assert.Equal(1, summed.SR2 / exact.SR2, 1e-9);
        Assert.Equal(1, summed.S2R2 / exact.S2R2, 1e-9);
        Assert.Equal(1, summed.R4 / exact.R4, 1e-9);
    }

    [Theory]
    [InlineData(BodyShape.TangentOgive, 0)]
    [InlineData(BodyShape.SecantOgive, 1.4)]
    [InlineData(BodyShape.Ellipsoid, 0)]
    [InlineData(BodyShape.Parabola, 0.6)]
    [InlineData(BodyShape.Power, 0.6)]
    [InlineData(BodyShape.Haack, 0.2)]
    public void Slopes_are_the_derivatives_of_the_radii(BodyShape shape, double parameter)
    {
        BodySection nose = Nose(shape, parameter);
        foreach (double s in new[] { 0.01, 0.1, 0.2, 0.35 })
        {
            const double h = 1e-6;
            Assert.Equal((nose.RadiusAt(s + h) - nose.RadiusAt(s - h)) / (2 * h), nose.SlopeAt(s), 1e-6);
        }
    }
}
