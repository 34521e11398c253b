namespace Scribeline.Engine.Airframe;

/// <summary>
/// The inside of a section whose wall has the same thickness everywhere, measured square to the outer surface as on a moulded or wound part.
/// The inner surface is the offset curve: the point (s, r) of the outside lies over (s + t sin φ, r - t cos φ), tan φ = dr/ds.
/// </summary>
/// <remarks>Source: offset (parallel) curve, do Carmo, Differential Geometry of Curves and Surfaces (1976), from memory; a cone's is exact in closed form.</remarks>
public static class HollowBody
{
    /// <summary>Moments of the cavity between the section's two end planes, about its front; empty for a wall of 0 (a solid part).</summary>
    /// <param name="section">The outside.</param>
    /// <param name="wall">Thickness square to the surface, m; 0 means solid.</param>
    public static RevolutionMoments Cavity(this BodySection section, double wall)
    {
        RevolutionMoments none = new(section.Front, 0, 0, 0, 0);
        if (wall <= 0) return none;
        double rear = section.Front + section.Length;
        double first = section.CavityFront(wall);
        if (IsCurvedNose(section)) return first >= rear ? none : ProfileVolume.Integrate(section.Front, first, rear, section.Inside(wall));

        double last = section.InnerRadiusAt(rear, wall) > 0 ? rear : ConicalEnd(section, wall);
        if (last <= first) return none;
        return section.Profile.Shape == BodyShape.Conical
            ? RevolutionMoments.Frustum(first, last - first, section.InnerRadiusAt(first, wall), section.InnerRadiusAt(last, wall)).About(section.Front)
            : ProfileVolume.Integrate(section.Front, first, last, s => section.InnerRadiusAt(s, wall));
    }

    /// <summary>Inner radius at a station, m; 0 where the section is solid.</summary>
    /// <param name="section">The outside.</param>
    /// <param name="station">m, within the section.</param>
    /// <param name="wall">Thickness square to the surface, m; 0 means solid.</param>
    public static double InnerRadiusAt(this BodySection section, double station, double wall) => section.Inside(wall)(station);

    /// <summary>Inner radius by station, m, for asking at many stations; 0 where the section is solid.</summary>
    /// <param name="section">The outside.</param>
    /// <param name="wall">Thickness square to the surface, m; 0 means solid.</param>
    public static Func<double, double> Inside(this BodySection section, double wall)
    {
        if (wall <= 0) return _ => 0;
        if (IsCurvedNose(section))
        {
            double tip = OverTip(section, wall);
            return station => UnderCurvedNose(section, tip, station, wall);
        }

        return station =>
        {
            // Exact for cones and cylinders; good to second order in wall over radius of curvature for a curved transition.
            double slope = section.SlopeAt(station);
            return double.IsFinite(slope) ? Math.Max(section.RadiusAt(station) - wall * Math.Sqrt(1 + slope * slope), 0) : 0;
        };
    }

    /// <summary>Station where the cavity begins, m; the rear face if the section is solid.</summary>
    /// <param name="section">The outside.</param>
    /// <param name="wall">Thickness square to the surface, m; 0 means solid.</param>
    public static double CavityFront(this BodySection section, double wall)
    {
        double rear = section.Front + section.Length;
        if (wall <= 0) return rear;
        if (!IsCurvedNose(section)) return section.InnerRadiusAt(section.Front, wall) > 0 ? section.Front : ConicalEnd(section, wall);
        double tip = OverTip(section, wall);
        return Math.Min(tip + wall * Sine(section, tip), rear);
    }

    private static bool IsCurvedNose(BodySection section) => section.FrontDiameter == 0 && section.Profile.Shape != BodyShape.Conical;

    /// <summary>Inner radius of a nose: looks for the outer point over this station, between the point over the cavity's tip and the station.</summary>
    private static double UnderCurvedNose(BodySection section, double tip, double station, double wall)
    {
        if (station <= tip + wall * Sine(section, tip)) return 0;
        double s = Over(section, tip, station, wall);
        return Math.Max(section.RadiusAt(s) - wall * Cosine(section, s), 0);
    }

    /// <summary>Station of the outer point over an inner one, m. The wall hardly moves it: chords find it in a few steps, but for a blunt tip.</summary>
    private static double Over(BodySection section, double tip, double station, double wall)
    {
        double Miss(double x) => x + wall * Sine(section, x) - station;
        double last = station, missed = wall * Sine(section, station), s = Math.Max(station - missed, tip);
        for (int step = 0; step < 8; step++)
        {
            double miss = Miss(s);
            if (Math.Abs(miss) < 1e-15 * section.Length) return s;
            double next = s - miss * (s - last) / (miss - missed);
            if (!(next > tip && next < station)) break;
            if (Math.Abs(next - s) <= 1e-15 * station) return next;
            (last, missed, s) = (s, miss, next);
        }

        return Root(Miss, tip, station);
    }

    /// <summary>Station of the outer point that lies over the tip of a nose's cavity; the rear where there is no cavity, m.</summary>
    private static double OverTip(BodySection section, double wall) => Root(
        s => section.RadiusAt(s) - wall * Cosine(section, s),
        section.Front + 1e-9 * section.Length,
        section.Front + section.Length);

    /// <summary>Station where a cone's inner radius passes zero, kept within the section, m.</summary>
    private static double ConicalEnd(BodySection section, double wall)
    {
        double slope = (section.RearDiameter - section.FrontDiameter) / (2 * section.Length);
        double distance = slope == 0 ? 0 : (wall * Math.Sqrt(1 + slope * slope) - section.FrontDiameter / 2) / slope;
        return section.Front + Math.Clamp(distance, 0, section.Length);
    }

    // Of the angle whose tangent is the slope; at a round tip the slope is infinite.
    private static double Sine(BodySection section, double station)
    {
        double slope = section.SlopeAt(station);
        return double.IsInfinity(slope) ? Math.Sign(slope) : slope / Math.Sqrt(1 + slope * slope);
    }

    private static double Cosine(BodySection section, double station)
    {
        double slope = section.SlopeAt(station);
        return 1 / Math.Sqrt(1 + slope * slope);
    }

    /// <summary>Root of a rising function, or the end it lies beyond: false position in its Illinois form, Dowell and Jarratt, BIT 11 (1971).</summary>
    private static double Root(Func<double, double> f, double low, double high)
    {
        double fLow = f(low), fHigh = f(high);
        if (fLow >= 0) return low;
        if (fHigh <= 0) return high;
        int kept = 0;
        for (int step = 0; step < 100 && high - low > 1e-14 * high; step++)
        {
            double s = (low * fHigh - high * fLow) / (fHigh - fLow), value = f(s);
            if (Math.Abs(value) < 1e-15) return s;
            if (value < 0)
            {
                (low, fLow) = (s, value);
                if (kept == 1) fHigh /= 2;
                kept = 1;
            }
            else
            {
                (high, fHigh) = (s, value);
                if (kept == -1) fLow /= 2;
                kept = -1;
            }
        }

        return (low + high) / 2;
    }
}
