using Scribeline.Engine.Airframe;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Pressure drag of noses on their base area at zero incidence. Cones: Taylor–Maccoll. Tangent ogive, full parabola and Haack noses:
/// Euler solutions at fineness 3 to 5 and Mach 1.5 to 4, as powers of the fineness. Other members lie between their
/// relatives: secant ogives between cone and ogive, parabolas between cone and full parabola, Haack noses between their two members;
/// power noses and ellipsoids by second-order shock expansion with a Newtonian tip. Below Mach 1.25 a cubic falls to the subsonic value
/// at Mach 0.8, which is 0.8 sin² of the half-angle for cones (Hoerner, from memory) and nothing for noses without a corner.
/// </summary>
public static class NoseDrag
{
    private const double LastSubsonic = 0.8;
    private const double FirstSupersonic = NoseLoads.First;

    private static readonly Dictionary<string, WaveFamily> Families = EmbeddedTable.Rows("Aerodynamics.nose-wave", 5)
        .GroupBy(r => r[0]).Where(g => g.Key != "cone")
        .ToDictionary(g => g.Key, g => new WaveFamily([.. g.Select(r =>
            (EmbeddedTable.Number(r[1]), EmbeddedTable.Number(r[2]), EmbeddedTable.Number(r[3])))]));

    /// <summary>C_D on base area at any Mach number; shock-expansion loads of the nose may be handed in.</summary>
    internal static double At(BodySection nose, double mach, NoseLoads? loads = null)
    {
        if (mach >= FirstSupersonic) return Wave(nose, loads, mach);
        var subsonic = Subsonic(nose);
        if (mach <= LastSubsonic) return subsonic;
        var top = Wave(nose, loads, FirstSupersonic);
        var slope = (Wave(nose, loads, FirstSupersonic + 0.05) - top) / 0.05;
        return Bridge.Hermite(mach, LastSubsonic, subsonic, 0, FirstSupersonic, top, slope);
    }

    /// <summary>Bonney's fit for cones (attribution from memory): (0.083 + 0.096/M²)(ε/10)^1.69, ε half-angle in rad here.</summary>
    public static double Bonney(double halfAngle, double mach) =>
        (0.083 + 0.096 / (mach * mach)) * Math.Pow(halfAngle * 18 / Math.PI, 1.69);

    /// <summary>Miles's tangent ogive (from memory): P[1 − (196 f² − 16)/(14 (M + 18) f²)], P Bonney's cone at the tip angle.</summary>
    public static double Miles(double fineness, double mach)
    {
        var f2 = fineness * fineness;
        return Bonney(Math.Asin(fineness / (f2 + 0.25)), mach) * (1 - (196 * f2 - 16) / (14 * (mach + 18) * f2));
    }

    private static double Subsonic(BodySection nose)
    {
        var sine = Math.Sin(ConeAngle(nose));
        return 0.8 * sine * sine * (nose.Profile.Shape switch
        {
            BodyShape.Conical => 1,
            BodyShape.SecantOgive => 1 - 1 / Math.Max(1, nose.Profile.Parameter),
            BodyShape.Parabola => 1 - nose.Profile.Parameter,
            BodyShape.Power => nose.Profile.Parameter,
            _ => 0,
        });
    }

    private static double Wave(BodySection nose, NoseLoads? loads, double mach)
    {
        var f = Fineness(nose);
        var parameter = nose.Profile.Parameter;
        double Cone() => ConeTable.At(mach, ConeAngle(nose)).Pressure;
        double Of(string family) => Families[family].At(f, mach);
        static double Mix(double a, double b, double share) => a + (b - a) * Math.Clamp(share, 0, 1);
        return nose.Profile.Shape switch
        {
            BodyShape.TangentOgive => Of("ogive"),
            BodyShape.SecantOgive => Mix(Cone(), Of("ogive"), 1 / Math.Max(1, parameter)),
            BodyShape.Parabola => Mix(Cone(), Of("parabola"), parameter),
            BodyShape.Haack => Mix(Of("haack_C0_vonkarman"), Of("haack_C1/3_lv"), 3 * parameter)
                * (1 + 9 * parameter * parameter / 8) / (1 + 9 * Math.Min(parameter * parameter, 1.0 / 9) / 8),
            BodyShape.Power or BodyShape.Ellipsoid => loads?.At(mach).Drag ?? ShockExpansion.Of(nose, 0, mach).Drag,
            _ => Cone(),
        };
    }

    private static double Fineness(BodySection nose) => nose.Length / nose.RearDiameter;

    private static double ConeAngle(BodySection nose) => Math.Atan(0.5 / Fineness(nose));
}

/// <summary>Wave drag of one family of noses over fineness and Mach number: powers of the fineness between tabulated Mach numbers.</summary>
internal sealed class WaveFamily
{
    private readonly double[] fineness;
    private readonly Curve[] overMach;

    /// <summary>From rows of fineness, Mach number and drag.</summary>
    public WaveFamily(IReadOnlyList<(double Fineness, double Mach, double Drag)> rows)
    {
        fineness = [.. rows.Select(r => r.Fineness).Distinct().Order()];
        overMach = [.. fineness.Select(f =>
        {
            var line = rows.Where(r => r.Fineness == f).OrderBy(r => r.Mach).Select(r => (r.Mach, Log: Math.Log(r.Drag))).ToList();
            // The ends run on with the slope of their last interval over ln M.
            var (a, b, y, z) = (line[0], line[1], line[^2], line[^1]);
            double Beyond(double mach, (double Mach, double Log) p, (double Mach, double Log) q) =>
                p.Log + (q.Log - p.Log) / Math.Log(q.Mach / p.Mach) * Math.Log(mach / p.Mach);
            line.Insert(0, (1.2, Beyond(1.2, a, b)));
            line.Add((6, Beyond(6, y, z)));
            return new Curve([.. line.Select(p => p.Mach)], [.. line.Select(p => p.Log)]);
        })];
    }

    /// <summary>C_D at any fineness above 0.5 (extended by the nearest power) and Mach 1.2 to 6.</summary>
    public double At(double f, double mach)
    {
        var i = 0;
        while (i < fineness.Length - 2 && f > fineness[i + 1]) i++;
        var (a, b) = (overMach[i].At(mach), overMach[i + 1].At(mach));
        var u = Math.Log(Math.Max(f, 0.5) / fineness[i]) / Math.Log(fineness[i + 1] / fineness[i]);
        return Math.Min(Math.Exp(a + u * (b - a)), CompressibleFlow.StagnationPressure(mach));
    }
}
