using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>Integrals of a body section or of a whole body of revolution. SI units.</summary>
/// <param name="Volume">m³.</param>
/// <param name="WettedArea">Lateral surface, m².</param>
/// <param name="PlanformArea">Side view, m².</param>
/// <param name="PlanformMoment">∫ 2 r x dx about the nose tip, m³.</param>
public readonly record struct BodyIntegrals(double Volume, double WettedArea, double PlanformArea, double PlanformMoment)
{
    /// <summary>Integrals of one section, by Gauss quadrature over x = x₀ + L (1 − cos θ)/2, which tames blunt tips.</summary>
    public static BodyIntegrals Of(BodySection section)
    {
        double volume = 0, planform = 0, moment = 0;
        var (front, length) = (section.Front, section.Length);
        foreach (var (u, w) in GaussRule.Twenty)
        {
            var theta = Math.PI * u;
            var xi = (1 - Math.Cos(theta)) / 2;
            var dx = w * Math.PI * length * Math.Sin(theta) / 2;
            var r = section.RadiusAtShare(xi);
            volume += Math.PI * r * r * dx;
            planform += 2 * r * dx;
            moment += 2 * r * (front + xi * length) * dx;
        }
        // Frusta on n and 2n points, and the error of second order removed between them.
        var coarse = FrustumArea(section, 64);
        var fine = FrustumArea(section, 128);
        return new(volume, fine + (fine - coarse) / 3, planform, moment);
    }

    /// <summary>Integrals of a whole body.</summary>
    public static BodyIntegrals Of(IEnumerable<BodySection> body)
    {
        BodyIntegrals sum = default;
        foreach (var section in body)
        {
            var s = Of(section);
            sum = new(sum.Volume + s.Volume, sum.WettedArea + s.WettedArea, sum.PlanformArea + s.PlanformArea, sum.PlanformMoment + s.PlanformMoment);
        }
        return sum;
    }

    private static double FrustumArea(BodySection section, int count)
    {
        double area = 0, x0 = 0, r0 = section.RadiusAtShare(0);
        for (var i = 1; i <= count; i++)
        {
            var xi = (1 - Math.Cos(Math.PI * i / count)) / 2;
            var (x, r) = (xi * section.Length, section.RadiusAtShare(xi));
            area += Math.PI * (r + r0) * Math.Sqrt((x - x0) * (x - x0) + (r - r0) * (r - r0));
            (x0, r0) = (x, r);
        }
        return area;
    }
}

/// <summary>Radius by share of the length.</summary>
internal static class SectionShare
{
    /// <summary>Radius, m, at the share 0…1 of the section's length.</summary>
    public static double RadiusAtShare(this BodySection section, double share)
    {
        var station = Math.Clamp(section.Front + share * section.Length, section.Front, section.Front + section.Length);
        // A rounded station may fall outside by one bit; the ends are known.
        return share <= 0 ? section.FrontDiameter / 2 : share >= 1 ? section.RearDiameter / 2 : section.RadiusAt(station);
    }
}

/// <summary>Gauss–Legendre points on 0…1.</summary>
internal static class GaussRule
{
    /// <summary>Three points: exact to degree five.</summary>
    public static readonly (double U, double Weight)[] Three = Make(3);

    /// <summary>Twenty points: exact to degree 39.</summary>
    public static readonly (double U, double Weight)[] Twenty = Make(20);

    private static (double, double)[] Make(int order)
    {
        var rule = new MathNet.Numerics.Integration.GaussLegendreRule(0, 1, order);
        return [.. Enumerable.Range(0, order).Select(i => (rule.GetAbscissa(i), rule.GetWeight(i)))];
    }
}
