namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Mean skin friction coefficient C_F on wetted area. Sources: H. Schlichting, Boundary-Layer Theory, 7th ed.;
/// S. F. Hoerner, Fluid-Dynamic Drag, 1965; J. S. Barrowman 1967; Hopkins and Inouye, AIAA J. 9(6), 1971 (from memory but for
/// Blasius and Prandtl–Schlichting).
/// </summary>
public static class SkinFriction
{
    /// <summary>Laminar, Blasius: 1.328/√Re.</summary>
    public static double Laminar(double reynolds) => 1.328 / Math.Sqrt(reynolds);

    /// <summary>Turbulent, Prandtl–Schlichting: 0.455/(log₁₀ Re)^2.58.</summary>
    public static double PrandtlSchlichting(double reynolds) => 0.455 / Math.Pow(Math.Log10(reynolds), 2.58);

    /// <summary>Turbulent with transition at Re 5·10⁵ (Prandtl's correction 1700/Re), never below laminar.</summary>
    public static double Transitional(double reynolds) =>
        Math.Max(Laminar(reynolds), PrandtlSchlichting(reynolds) - 1700 / reynolds);

    /// <summary>Turbulent, smooth, Hoerner's form: 1/(3.46 log₁₀ Re − 5.6)²; constant below Re 10⁴.</summary>
    public static double Turbulent(double reynolds)
    {
        var root = 3.46 * Math.Log10(Math.Max(reynolds, 1e4)) - 5.6;
        return 1 / (root * root);
    }

    /// <summary>Turbulent, smooth, Kármán–Schoenherr: 0.242/√C_F = log₁₀(Re C_F).</summary>
    public static double KarmanSchoenherr(double reynolds)
    {
        var c = Turbulent(reynolds);
        for (var i = 0; i < 30; i++)
        {
            var root = Math.Sqrt(c);
            var error = 0.242 / root - Math.Log10(reynolds * c);
            var step = error / (-0.121 / (root * c) - 1 / (c * Math.Log(10)));
            c -= step;
            if (Math.Abs(step) < 1e-15) break;
        }
        return c;
    }

    /// <summary>Floor of a rough surface: 0.032 (k/l)^0.2, sand roughness k and length l in the same unit.</summary>
    public static double Rough(double roughness, double length) => 0.032 * Math.Pow(roughness / length, 0.2);

    /// <summary>Turbulent friction of a smooth adiabatic wall over its incompressible value: (1 + 0.15 M²)^−0.58.</summary>
    public static double Compressibility(double mach) => Math.Pow(1 + 0.15 * mach * mach, -0.58);

    /// <summary>The same for a fully rough wall: 1/(1 + 0.18 M²).</summary>
    public static double RoughCompressibility(double mach) => 1 / (1 + 0.18 * mach * mach);

    /// <summary>C_F of a smooth wall by Van Driest II with Kármán–Schoenherr; γ 1.4, recovery 0.88, Sutherland's viscosity.</summary>
    /// <param name="reynolds">On the length.</param>
    /// <param name="mach">At the edge of the layer, 0 or more.</param>
    /// <param name="edgeTemperature">K.</param>
    /// <param name="wallRatio">Wall over adiabatic wall temperature.</param>
    public static double VanDriest(double reynolds, double mach, double edgeTemperature = 288.15, double wallRatio = 1)
    {
        const double recovery = 0.88;
        var m = 0.2 * mach * mach;
        var f = wallRatio * (1 + recovery * m);
        var viscosity = Math.Pow(f, -1.5) * (edgeTemperature * f + 110.4) / (edgeTemperature + 110.4);
        double heat;
        if (recovery * m < 1e-9)
        {
            heat = Math.Pow((1 + Math.Sqrt(f)) / 2, 2);
        }
        else
        {
            var a2 = recovery * m / f;
            var b = (1 + recovery * m - f) / f;
            var q = Math.Sqrt(4 * a2 + b * b);
            heat = recovery * m / Math.Pow(Math.Asin((2 * a2 - b) / q) + Math.Asin(b / q), 2);
        }
        return KarmanSchoenherr(viscosity / heat * reynolds) / heat;
    }

    /// <summary>Form factor of a slender body, subsonic: 1 + 1.5 (d/L)^1.5 + 7 (d/L)³ (Hoerner).</summary>
    public static double BodyForm(double fineness) => 1 + 1.5 * Math.Pow(fineness, -1.5) + 7 * Math.Pow(fineness, -3);

    /// <summary>Form factor of a fin section, subsonic, thickest near 0.3 c: 1 + 2 t/c + 60 (t/c)⁴ (Hoerner).</summary>
    public static double FinForm(double thickness) => 1 + 2 * thickness + 60 * Math.Pow(thickness, 4);
}
