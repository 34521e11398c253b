using CsCheck;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Tests.Properties.Range;

/// <summary>What must hold for any scatter and any field.</summary>
public sealed class LandingProperties
{
    private static readonly Gen<LandingPoint> Point = Gen.Select(Gen.Double[-1000, 1000], Gen.Double[-1000, 1000], (e, n) => new LandingPoint(e, n));

    private static readonly Gen<LandingPoint[]> Points = Point.Array[3, 60];

    // A ring that is drawn round a middle cannot cross itself.
    private static readonly Gen<LandingArea> Area = Gen.Select(Gen.Double[200, 900].Array[3, 9], Point, (radii, middle) => new LandingArea(radii
        .Select((r, i) => new LandingPoint(middle.East + (r * Math.Sin(Math.Tau * i / radii.Length)), middle.North + (r * Math.Cos(Math.Tau * i / radii.Length))))
        .ToValueList()));

    [Fact]
    public void Turning_wind_and_field_together_changes_no_share() => Gen.Select(Points, Area, Gen.Double[0, 6.28]).Sample((points, area, angle) =>
    {
        LandingArea turned = new(area.Corners.Select(c => Turned(c, angle)).ToValueList());

        // A point that lies on the edge but for rounding may be told either way.
        foreach (var point in points.Where(p => Math.Abs(area.Inside(p)) > 1e-6)) Assert.Equal(area.Contains(point), turned.Contains(Turned(point, angle)));
        Assert.Equal(area.Size, turned.Size, 1e-6 * area.Size);
    });

    [Fact]
    public void A_bigger_field_never_has_more_outside() => Gen.Select(Points, Area, Gen.Double[1, 3]).Sample((points, area, factor) =>
    {
        var (east, north) = (area.Corners.Average(c => c.East), area.Corners.Average(c => c.North));

        // The ring is star-shaped about its middle, so the larger one holds the smaller.
        if (area.Inside(new(east, north)) <= 0) return;
        LandingArea bigger = new(area.Corners.Select(c => new LandingPoint(east + (factor * (c.East - east)), north + (factor * (c.North - north)))).ToValueList());
        if (!area.Corners.All(bigger.Contains)) return;
        Assert.True(points.Count(p => !bigger.Contains(p)) <= points.Count(p => !area.Contains(p)));
    });

    [Fact]
    public void Turning_a_scatter_turns_its_ellipse() => Gen.Select(Points, Gen.Double[0, 3.14]).Sample((points, angle) =>
    {
        LandingScatter one = new(points.ToValueList()), other = new(points.Select(p => Turned(p, angle)).ToValueList());
        LandingEllipse a = one.Ellipse(0.95), b = other.Ellipse(0.95);
        Assert.Equal(a.Major, b.Major, 1e-6 * (1 + a.Major));
        Assert.Equal(a.Minor, b.Minor, 1e-4 * (1 + a.Major));
        if (a.Major - a.Minor > 0.01 * a.Major) Assert.Equal(0, Math.Sin(b.Azimuth - a.Azimuth - angle), 1e-5);
    });

    [Fact]
    public void More_seen_means_a_higher_bound() => Gen.Select(Gen.Int[1, 2000], Gen.Double[0, 1]).Sample((of, share) =>
    {
        var count = (int)(share * (of - 1));
        LandingShare less = new(count, of), more = new(count + 1, of);
        Assert.InRange(less.Value, less.AtLeast, less.AtMost);
        Assert.True(more.AtMost > less.AtMost || less.AtMost == 1);
        Assert.True(more.AtLeast > less.AtLeast);
    });

    [Fact]
    public void Outline_points_lie_on_the_ellipse() => Gen.Select(Gen.Double[1, 500], Gen.Double[0.1, 1], Gen.Double[0, 3.14]).Sample((major, ratio, azimuth) =>
    {
        LandingEllipse ellipse = new(new(10, 20), major, ratio * major, azimuth, 0.5), wider = ellipse with { Major = 1.0001 * major, Minor = 1.0001 * ratio * major };
        LandingEllipse narrower = ellipse with { Major = 0.9999 * major, Minor = 0.9999 * ratio * major };
        Assert.All(ellipse.Outline(), p => Assert.True(wider.Contains(p) && !narrower.Contains(p)));
    });

    // Clockwise, as azimuths go.
    private static LandingPoint Turned(LandingPoint point, double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);
        return new((point.East * cosine) + (point.North * sine), (point.North * cosine) - (point.East * sine));
    }
}
