namespace Scribeline.Engine.Airframe;

/// <summary>
/// Radius and slope of the profiles of a body of revolution. A nose runs from radius 0 at its front; a section that widens or narrows between two
/// radii carries the same curve over the step between them, its blunt end against the larger radius.
/// </summary>
/// <remarks>
/// Source: Crowell, The Descriptive Geometry of Nose Cones (1996) for the families, from memory; tangent ogive as in Barrowman,
/// Stability of a Model Rocket in Flight (1966); Haack series as in Haack, Geschossformen kleinsten Wellenwiderstandes (1941), from memory.
/// </remarks>
public static class ProfileCurve
{
    /// <summary>Radius at a station, m; NaN outside the section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="station">m aft of the nose tip.</param>
    public static double RadiusAt(this BodySection section, double station)
    {
        double x = Within(section, station), r1 = section.FrontDiameter / 2, r2 = section.RearDiameter / 2;
        return r2 >= r1
            ? r1 + Rise(section.Profile, section.Length, r2 - r1, x).Radius
            : r2 + Rise(section.Profile, section.Length, r1 - r2, section.Length - x).Radius;
    }

    /// <summary>Slope dr/ds at a station, positive where the body widens aft; infinite at a round tip.</summary>
    /// <param name="section">The section.</param>
    /// <param name="station">m aft of the nose tip.</param>
    public static double SlopeAt(this BodySection section, double station)
    {
        double x = Within(section, station), r1 = section.FrontDiameter / 2, r2 = section.RearDiameter / 2;
        return r2 >= r1
            ? Rise(section.Profile, section.Length, r2 - r1, x).Slope
            : -Rise(section.Profile, section.Length, r1 - r2, section.Length - x).Slope;
    }

    /// <summary>Distance aft of the front; a station off an end by no more than rounding counts as the end, any other as NaN.</summary>
    private static double Within(BodySection section, double station)
    {
        double x = station - section.Front, rounding = 1e-12 * (Math.Abs(section.Front) + section.Length);
        return x < -rounding || x > section.Length + rounding ? double.NaN : Math.Clamp(x, 0, section.Length);
    }

    /// <summary>Radius and slope of a nose of length L and base radius R, x aft of its tip, 0 &lt;= x &lt;= L.</summary>
    private static (double Radius, double Slope) Rise(BodyProfile profile, double L, double R, double x)
    {
        if (R == 0) return (0, 0);
        double xi = x / L, k = profile.Parameter;
        switch (profile.Shape)
        {
            case BodyShape.TangentOgive:
                return Arc(1, L, R, x);
            case BodyShape.SecantOgive:
                return Arc(k, L, R, x);
            case BodyShape.Ellipsoid:
                double y = Math.Sqrt(xi * (2 - xi));
                return (R * y, R / L * (1 - xi) / y);
            case BodyShape.Parabola:
                return (R * xi * (2 - k * xi) / (2 - k), R / L * 2 * (1 - k * xi) / (2 - k));
            case BodyShape.Power:
                return (R * Math.Pow(xi, k), R / L * k * Math.Pow(xi, k - 1));
            case BodyShape.Haack:
                return Haack(k, L, R, xi);
            default:
                return (R * xi, R / L);
        }
    }

    /// <summary>Arc through tip and base whose radius is k times the tangent ogive's.</summary>
    private static (double Radius, double Slope) Arc(double k, double L, double R, double x)
    {
        double chord = Math.Sqrt(L * L + R * R), rho = k * chord * chord / (2 * R);
        double h = Math.Sqrt(Math.Max(rho * rho - chord * chord / 4, 0));
        double xc = L / 2 + h * R / chord, yc = R / 2 - h * L / chord;
        double root = Math.Sqrt(Math.Max(rho * rho - (x - xc) * (x - xc), 0));
        // The tip lies on the arc, so y = root + yc also equals x(2 xc - x)/(root - yc), which keeps its digits on a long arc.
        double y = yc < 0 ? x * (2 * xc - x) / (root - yc) : root + yc;
        return (Math.Max(y, 0), (xc - x) / root);
    }

    private static (double Radius, double Slope) Haack(double C, double L, double R, double xi)
    {
        double theta = Math.Acos(1 - 2 * xi), sin = Math.Sin(theta), cos = 1 - 2 * xi;
        double y = Math.Sqrt(Math.Max(theta - sin * cos + C * sin * sin * sin, 0) / Math.PI);
        double slope = xi <= 0 ? double.PositiveInfinity : sin * (2 + 3 * C * cos) / (Math.PI * y);
        return (R * y, R / L * slope);
    }
}
