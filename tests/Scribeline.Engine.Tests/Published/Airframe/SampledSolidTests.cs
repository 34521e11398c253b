using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Tests.Published.Airframe;

/// <summary>Masses and inertias against brute force: the same shapes cut into small cells, each in or out by an independent rule.</summary>
public class SampledSolidTests
{
    // In the wall: under the outer surface but nearer than the wall to it, found by distance to a fine polyline.
    [Theory]
    [InlineData(BodyShape.Haack, 0)]
    [InlineData(BodyShape.Ellipsoid, 0)]
    [InlineData(BodyShape.TangentOgive, 0)]
    [InlineData(BodyShape.Conical, 0)]
    [InlineData(BodyShape.Power, 0.6)]
    public void Hollow_noses_have_a_wall_of_even_thickness(BodyShape shape, double parameter)
    {
        const double length = 0.2, radius = 0.04, wall = 0.006, density = 1000;
        const int along = 800, across = 240, points = 4000;
        BodySection nose = new("nose", new(shape, parameter), 0, length, 0, 2 * radius);
        (double S, double R)[] curve = [.. Enumerable.Range(0, points + 1).Select(i =>
        {
            double s = length * Math.Pow(i / (double)points, 2);
            return (s, nose.RadiusAt(Math.Min(s, length)));
        })];

        // A cone or ogive goes on past its base plane; the wall's distance must not be cut short there.
        double slope = nose.SlopeAt(length);
        curve = [.. curve, .. Enumerable.Range(1, 40).Select(i => (length + i * wall / 40, radius + slope * i * wall / 40))];
        double ds = length / along, dr = radius / across, m = 0, ms = 0, mss = 0, mrr = 0;
        int near = 0;
        for (int i = 0; i < along; i++)
        {
            double s = (i + 0.5) * ds, outer = nose.RadiusAt(s);
            while (curve[near].S < s - 1.5 * wall) near++;
            for (int j = 0; j < across; j++)
            {
                double r = (j + 0.5) * dr;
                if (r > outer || Distance(curve, near, s, r, wall) > wall) continue;
                double cell = density * 2 * Math.PI * r * dr * ds;
                m += cell;
                ms += cell * s;
                mss += cell * s * s;
                mrr += cell * r * r;
            }
        }

        MassProperties shell = (nose.Moments() - nose.Cavity(wall)).Filled(density);
        Assert.Equal(1, m / shell.Mass, 0.004);
        Assert.Equal(ms / m, shell.Station, 0.002 * length);
        Assert.Equal(1, mrr / shell.Inertia.Xx, 0.006);
        Assert.Equal(1, (mss - ms * ms / m + mrr / 2) / shell.Inertia.Yy, 0.006);
    }

    private static double Distance((double S, double R)[] curve, int from, double s, double r, double wall)
    {
        double best = double.PositiveInfinity;
        for (int k = from; k < curve.Length && curve[k].S < s + 1.5 * wall; k++)
        {
            double a = curve[k].S - s, b = curve[k].R - r;
            best = Math.Min(best, a * a + b * b);
        }

        return Math.Sqrt(best);
    }

    // One fin at an odd clock angle, cut into boxes in the rocket's own axes; the boxes fill a block that just holds it.
    [Fact]
    public void A_fin_at_any_clock_angle()
    {
        const double clock = 0.7, radius = 0.05, thickness = 0.02;
        FinCorner[] corners = [new(0, 0), new(0.09, 0.08), new(0.14, 0.08), new(0.16, 0)];
        FinPlates fin = FinMassTests.Fins(new FreeFin([.. corners]), 1, radius, thickness, clock);
        MassProperties exact = fin.At(0);
        const int n = 120;
        const double y0 = 0.02, z0 = -0.11, side = 0.08;
        double dx = 0.16 / n, dy = side / n, cell = fin.Material.Density * dx * dy * dy;
        double m = 0, mx = 0, my = 0, mz = 0;
        InertiaTensor about = default;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                for (int k = 0; k < n; k++)
                {
                    // x forward from the tip; the fin's root leading edge is at station 0.5.
                    double aft = (i + 0.5) * dx, x = -(0.5 + aft), y = y0 + (j + 0.5) * dy, z = z0 + (k + 0.5) * dy;
                    double outward = y * Math.Sin(clock) - z * Math.Cos(clock), tangential = y * Math.Cos(clock) + z * Math.Sin(clock);
                    if (Math.Abs(tangential) > thickness / 2 || !Inside(corners, aft, outward - radius)) continue;
                    m += cell;
                    mx += cell * x;
                    my += cell * y;
                    mz += cell * z;
                    about += cell * InertiaTensor.OfPoint(x, y, z);
                }
            }
        }

        Assert.Equal(1, m / exact.Mass, 0.01);
        Assert.Equal(-mx / m, exact.Station, 0.001);
        Assert.Equal(my / m, exact.OffsetY, 0.001);
        Assert.Equal(mz / m, exact.OffsetZ, 0.001);

        // About the tip, as sampled.
        InertiaTensor tip = exact.InertiaAbout(0);
        double scale = tip.Yy;
        Assert.Equal(about.Xx / scale, tip.Xx / scale, 0.001);
        Assert.Equal(about.Yy / scale, tip.Yy / scale, 0.01);
        Assert.Equal(about.Zz / scale, tip.Zz / scale, 0.01);
        Assert.Equal(about.Xy / scale, tip.Xy / scale, 0.002);
        Assert.Equal(about.Xz / scale, tip.Xz / scale, 0.002);
        Assert.Equal(about.Yz / scale, tip.Yz / scale, 0.001);
    }

    private static bool Inside(FinCorner[] corners, double x, double y)
    {
        bool inside = false;
        for (int i = 0, j = corners.Length - 1; i < corners.Length; j = i++)
        {
            (FinCorner a, FinCorner b) = (corners[i], corners[j]);
            if (a.Y > y != b.Y > y && x < (b.X - a.X) * (y - a.Y) / (b.Y - a.Y) + a.X) inside = !inside;
        }

        return inside;
    }
}
