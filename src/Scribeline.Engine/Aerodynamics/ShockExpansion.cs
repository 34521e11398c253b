using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>What second-order shock expansion gives for a nose and the cylinder behind it.</summary>
/// <param name="NoseSlope">C_Nα of the nose on its base area, 1/rad.</param>
/// <param name="NoseCentre">Where it acts, m from the nose's front.</param>
/// <param name="CarryOver">C_Nα of the cylinder behind, on the same area.</param>
/// <param name="CarryOverCentre">m from the nose's front.</param>
/// <param name="Drag">Pressure drag of the nose on its base area.</param>
public readonly record struct ShockExpansionLoad(double NoseSlope, double NoseCentre, double CarryOver, double CarryOverCentre, double Drag);

/// <summary>
/// Second-order shock-expansion method for pointed bodies: C. A. Syvertson and D. H. Dennis, NACA TR 1328, 1957 (from memory). The nose
/// is a row of frusta; at each corner the flow turns by Prandtl–Meyer expansion, along each frustum pressure p and loading Λ = dp/dα relax
/// exponentially towards those of the cone of the same angle; on a cylinder towards p∞ and nothing. Tip: Taylor–Maccoll; loading of
/// cones: Stone. Tips too blunt for an attached shock are cut to a cone of 25° at most, and the drag they lose is made good
/// by modified Newtonian theory.
/// </summary>
internal static class ShockExpansion
{
    private const int Elements = 16;
    private const double Bluntest = 25 * Math.PI / 180;

    /// <summary>Loads at a Mach number above about 1.2.</summary>
    /// <param name="nose">Nose from radius 0.</param>
    /// <param name="cylinder">Length of the cylinder behind it, m.</param>
    /// <param name="mach">Free stream.</param>
    public static ShockExpansionLoad Of(BodySection nose, double cylinder, double mach)
    {
        var limit = Math.Min(Bluntest, 0.8 * ConeTable.Steepest(mach));
        var dynamic = CompressibleFlow.Gamma * mach * mach;
        var radius = nose.RearDiameter / 2;
        double x0 = 0, r0 = 0, slope = 0, moment = 0, drag = 0, blunt = 0;
        Surface at = default;
        for (var i = 1; i <= Elements + 1; i++)
        {
            var onNose = i <= Elements;
            var x = onNose ? nose.Length * i / Elements : nose.Length + cylinder;
            var r = onNose ? nose.RadiusAtShare((double)i / Elements) : radius;
            var steep = Math.Atan2(r - r0, x - x0);
            var delta = Math.Min(steep, limit);
            if (steep > limit) blunt += Blunt(steep, delta, mach) * (r * r - r0 * r0);
            var target = Cone(delta, mach);
            at = i == 1 ? Tip(delta, mach, target) : at.Turn(delta, r0, target);
            if (!onNose) break;
            var (load, loadMoment, pressure) = at.Along(x0, x, r0, r);
            slope += load;
            moment += loadMoment;
            drag += pressure;
            at = at.After((x - x0) / Math.Cos(delta));
            (x0, r0) = (x, r);
        }
        var (after, afterMoment, _) = at.Along(x0, x0 + cylinder, radius, radius);
        var scale = 2 / (dynamic * radius * radius);
        return new(
            scale * slope, moment / slope, scale * after,
            after > 0 ? afterMoment / after : nose.Length, 2 * scale * drag + blunt / (radius * radius));
    }

    /// <summary>What a cut tip's C_p lacks: modified Newtonian pressure (Lees 1955, from memory) less that of the cut cone.</summary>
    private static double Blunt(double steep, double delta, double mach) =>
        Math.Max(0, CompressibleFlow.StagnationPressure(mach) * Math.Pow(Math.Sin(steep), 2) - ConeTable.At(mach, delta).Pressure);

    /// <summary>Pressure over p∞ and loading over p∞ of the cone of an angle.</summary>
    private static (double Pressure, double Load) Cone(double delta, double mach)
    {
        if (delta <= 0) return (1, 0);
        var dynamic = CompressibleFlow.Gamma * mach * mach;
        var cone = ConeTable.At(mach, delta);
        return (1 + dynamic / 2 * cone.Pressure, cone.NormalForceSlope * dynamic * Math.Tan(delta));
    }

    private static Surface Tip(double delta, double mach, (double Pressure, double Load) cone)
    {
        var surface = Math.Max(1.02, ConeTable.At(mach, delta).SurfaceMach);
        return new(delta, surface, cone.Pressure, 0, cone.Load, cone, cone.Pressure / CompressibleFlow.StaticRatio(surface));
    }

    /// <summary>State at the start of a frustum.</summary>
    /// <param name="Angle">Slope of the surface, rad.</param>
    /// <param name="Mach">On the surface.</param>
    /// <param name="Pressure">Over p∞.</param>
    /// <param name="Gradient">∂p/∂s, 1/m.</param>
    /// <param name="Load">Λ over p∞.</param>
    /// <param name="Cone">Values far along the frustum.</param>
    /// <param name="Stagnation">Stagnation pressure over p∞ behind the tip shock.</param>
    private readonly record struct Surface(
        double Angle, double Mach, double Pressure, double Gradient, double Load, (double Pressure, double Load) Cone, double Stagnation)
    {
        // TR 1328: B = γ p M²/(2 (M² − 1)), Ω the area of the stream tube, λ = 2 γ p/sin 2μ, the pressure an isentropic turn costs per radian.
        private double B => 0.7 * Pressure * Mach * Mach / (Mach * Mach - 1);

        private double Omega => Math.Pow((1 + 0.2 * Mach * Mach) / 1.2, 3) / Mach;

        private double Lambda => CompressibleFlow.Gamma * Pressure * Mach * Mach / Math.Sqrt(Mach * Mach - 1);

        /// <summary>Decay per metre along the surface; 0 where the pressure does not run towards the cone's.</summary>
        private double Decay
        {
            get
            {
                var gap = Cone.Pressure - Pressure;
                return Math.Abs(gap) < 1e-9 ? 0 : Math.Clamp(Gradient / gap, 0, 1e6);
            }
        }

        /// <summary>Around a corner.</summary>
        public Surface Turn(double angle, double radius, (double Pressure, double Load) cone)
        {
            var mach = Math.Max(1.02, CompressibleFlow.MachOf(CompressibleFlow.PrandtlMeyer(Mach) + Angle - angle));
            var next = new Surface(angle, mach, Stagnation * CompressibleFlow.StaticRatio(mach), 0, 0, cone, Stagnation);
            var tube = Omega / next.Omega;
            return next with
            {
                Gradient = next.B / radius * (tube * Math.Sin(Angle) - Math.Sin(angle)) + next.B / B * tube * Gradient,
                Load = Load * next.Lambda / Lambda,
            };
        }

        /// <summary>State at the rear end of the frustum, s metres along it.</summary>
        public Surface After(double s)
        {
            var left = Math.Exp(-Decay * s);
            var pressure = Cone.Pressure + (Pressure - Cone.Pressure) * left;
            var mach = Math.Sqrt(5 * (Math.Pow(Stagnation / pressure, 2 / 7.0) - 1));
            return this with
            {
                Mach = Math.Max(1.02, mach),
                Pressure = pressure,
                Gradient = Gradient * left,
                Load = Cone.Load + (Load - Cone.Load) * left,
            };
        }

        /// <summary>∫Λ r dx, ∫Λ r x dx and ∫(p − p∞)/p∞ r dr along a frustum.</summary>
        public (double Load, double Moment, double Pressure) Along(double x0, double x1, double r0, double r1)
        {
            double load = 0, moment = 0, pressure = 0;
            var decay = Decay / Math.Cos(Angle);
            // A long cylinder is cut so that no piece spans more than one decay length, and none beyond ten.
            var end = decay > 0 ? Math.Min(x1, x0 + 10 / decay) : x1;
            var pieces = Math.Clamp((int)(decay * (end - x0)) + 1, 1, 12);
            for (var i = 0; i < pieces; i++)
            {
                foreach (var (g, w) in GaussRule.Three)
                {
                    var x = (i + g) / pieces * (end - x0);
                    var dx = w * (end - x0) / pieces;
                    var share = x1 > x0 ? x / (x1 - x0) : 0;
                    var r = r0 + share * (r1 - r0);
                    var left = Math.Exp(-decay * x);
                    var local = (Cone.Load + (Load - Cone.Load) * left) * r * dx;
                    load += local;
                    moment += local * (x0 + x);
                    if (x1 > x0) pressure += (Cone.Pressure + (Pressure - Cone.Pressure) * left - 1) * r * dx * (r1 - r0) / (x1 - x0);
                }
            }
            return (load, moment, pressure);
        }
    }
}
