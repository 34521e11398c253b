using MathNet.Numerics.Distributions;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Tests.Published.Range;

/// <summary>Statistics and geometry of landings against tables and closed forms.</summary>
public sealed class LandingChecks
{
    private const double Degree = Math.PI / 180;

    /// <summary>Rayleigh distribution: radius over sigma that holds a share of a circular normal scatter (tables of chi-square, 2 degrees of freedom).</summary>
    [Theory]
    [InlineData(0.393469, 1)]
    [InlineData(0.5, 1.177410)]
    [InlineData(0.90, 2.145966)]
    [InlineData(0.95, 2.447747)]
    [InlineData(0.99, 3.034854)]
    public void Radius_that_holds_a_share(double content, double radius) => Assert.Equal(radius, LandingEllipse.Factor(content), 2e-6);

    /// <summary>Drawn from the distribution itself: the circle of R50 and R95 must hold those shares, within what counting allows.</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.95)]
    public void Circular_scatter(double content)
    {
        const int n = 20_000;
        RandomStream east = new(3, "east"), north = new(3, "north");
        LandingScatter scatter = new(Enumerable.Range(0, n).Select(_ => new LandingPoint(40 + (100 * east.Normal()), -70 + (100 * north.Normal()))).ToValueList());
        var ellipse = scatter.Ellipse(content);
        var expected = content == 0.5 ? 117.7410 : 244.7747;
        Assert.Equal(expected, ellipse.Major, 0.02 * expected);
        Assert.Equal(expected, ellipse.Minor, 0.02 * expected);
        Assert.Equal(content, scatter.Inside(ellipse), 4 * Math.Sqrt(content * (1 - content) / n));
    }

    /// <summary>Worked by hand for eight points; eigenvalues of the covariance by the formula for two by two.</summary>
    [Fact]
    public void Eight_points()
    {
        LandingScatter scatter = new([new(120, 340), new(80, 410), new(-40, 290), new(210, 505), new(15, 365), new(160, 450), new(60, 300), new(95, 380)]);
        Assert.Equal(new(87.5, 380), scatter.Mean);
        Assert.Equal(6242.857, scatter.EastVariance, 1e-3);
        Assert.Equal(4803.571, scatter.Covariance, 1e-3);
        Assert.Equal(5392.857, scatter.NorthVariance, 1e-3);
        var ellipse = scatter.Ellipse(0.95);
        Assert.Equal(252.4883, ellipse.Major, 1e-3);
        Assert.Equal(77.2310, ellipse.Minor, 1e-3);
        Assert.Equal(47.52806 * Degree, ellipse.Azimuth, 1e-6);
    }

    /// <summary>Clopper and Pearson 1934, one-sided 95 %: 1 − 0.05^(1/N) where none is seen; the others from tables of the beta distribution.</summary>
    [Theory]
    [InlineData(0, 59, 0.0495076)]
    [InlineData(0, 100, 0.0295130)]
    [InlineData(0, 300, 0.0099361)]
    [InlineData(5, 1000, 0.0104800)]
    [InlineData(20, 1000, 0.0289300)]
    [InlineData(50, 1000, 0.0628634)]
    public void Bound_on_a_share(int count, int of, double bound)
    {
        LandingShare share = new(count, of);
        Assert.Equal(bound, share.AtMost, 6e-6);

        // By its definition: so few in so many happen with 5 % if the share is the bound, so many with 5 % at the lower one.
        Assert.Equal(0.05, Binomial.CDF(share.AtMost, of, count), 1e-6);
        if (count > 0) Assert.Equal(0.05, 1 - Binomial.CDF(share.AtLeast, of, count - 1), 1e-6);
    }

    [Fact]
    public void All_or_none()
    {
        Assert.Equal(0, new LandingShare(0, 10).AtLeast);
        Assert.Equal(1, new LandingShare(10, 10).AtMost);
        Assert.Equal(0.0044, new LandingShare(20, 1000).StandardError, 5e-5);
    }

    [Fact]
    public void Areas_in_closed_form()
    {
        Assert.Equal(6, new LandingArea([new(0, 0), new(4, 0), new(0, 3)]).Size, 1e-12);
        Assert.Equal(3, new LandingArea([new(0, 0), new(2, 0), new(2, 2), new(1, 2), new(1, 1), new(0, 1)]).Size, 1e-12);
        LandingArea hexagon = new(Enumerable.Range(0, 6).Select(i => new LandingPoint(100 * Math.Cos(i * Math.PI / 3), 100 * Math.Sin(i * Math.PI / 3))).ToValueList());
        Assert.Equal(1.5 * Math.Sqrt(3) * 1e4, hexagon.Size, 1e-6);
        Assert.Equal(100 * Math.Sqrt(3), hexagon.Narrowest, 1e-6);
        Assert.Equal(50 * Math.Sqrt(3), hexagon.Inside(new(0, 0)), 1e-6);
        Assert.Equal(-100, hexagon.Inside(new(200, 0)), 1e-6);
        Assert.Equal(Math.PI * 50 * 20, new LandingArea(new LandingEllipse(new(5, 6), 50, 20, 0.7, 0.5).Outline(2000)).Size, 0.02);
    }

    [Theory]
    [InlineData(0.0, 0.0, 1.0, 1.0, 1.0, 0.0, 0.0, 1.0)]
    [InlineData(0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0, 0.0)]
    [InlineData(0.0, 0.0, 1.0, 0.0, 1.0, double.NaN, 0.0, 1.0)]
    public void What_is_no_area_says_why(params double[] numbers) =>
        Assert.NotNull(LandingArea.WhyNot(numbers.Chunk(2).Select(p => new LandingPoint(p[0], p[1])).ToValueList()));

    /// <summary>
    /// Distances in the plane against the geodesic over the ellipsoid (Vincenty 1975), lifted to the height of the field by the radius of
    /// curvature in its direction (Euler), and azimuths against its azimuth.
    /// </summary>
    [Theory]
    [InlineData(33, -107, 1400)]
    [InlineData(52.2, 5.4, 10)]
    [InlineData(-34.9, 138.6, 50)]
    [InlineData(0.1, 20, 400)]
    public void The_plane_is_true_to_a_millimetre_at_five_kilometres(double latitude, double longitude, double elevation)
    {
        LandingPlane plane = new(latitude * Degree, longitude * Degree, elevation);
        Geodetic pad = new(latitude * Degree, longitude * Degree, 0);
        for (var azimuth = 10.0; azimuth < 360; azimuth += 50)
        {
            var (sine, cosine) = Math.SinCos(azimuth * Degree);
            var place = plane.ToPlace(new(5000 * sine, 5000 * cosine));
            var geodesic = Geodesic.Between(pad, new(place.Latitude, place.Longitude, 0))!.Value;
            var curvature = (cosine * cosine / EarthRadii.Meridian(pad.Latitude)) + (sine * sine / EarthRadii.PrimeVertical(pad.Latitude));
            Assert.Equal(5000, geodesic.Distance * (1 + (elevation * curvature)), 1e-3);

            // Not the plane's error: the normals of the ellipsoid at the two ends differ, which at 1400 m turns the place's foot by 2.2 mm.
            Assert.Equal(0, 5000 * Math.Sin(geodesic.Azimuth - (azimuth * Degree)), 3e-3);
            var back = plane.ToPlane(place.Latitude, place.Longitude);
            Assert.Equal(5000 * sine, back.East, 1e-6);
            Assert.Equal(5000 * cosine, back.North, 1e-6);
        }
    }

    /// <summary>Point of the check table of the exact transform: 33° N 107° W, 1400 m, to (−3000, 4000) with the pad's height kept.</summary>
    [Fact]
    public void A_known_point()
    {
        LandingPlane plane = new(33 * Degree, -107 * Degree, 1400);
        var point = plane.ToPlane(33.036054896 * Degree, -107.032107644 * Degree);

        // The table's point lies 1.96 m higher than the pad; the plane takes it down, which moves it by 1.96 m of 6371 km times its distance.
        Assert.Equal(-3000, point.East, 2e-3);
        Assert.Equal(4000, point.North, 2e-3);
    }
}
