using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Separation;

/// <summary>
/// How the forces of the air are shared along the body: for every joint, what acts ahead of it, over the Mach number. The components of the
/// aerodynamic build-up are laid on the part they belong to: pressure on its section, friction by wetted area, fins on the part that carries
/// them, protuberances by frontal area, base drag on the last part.
/// </summary>
internal sealed class AirLoads
{
    private const double MachStep = 0.05;
    private readonly AirShare[] rows;
    private readonly int width;

    private AirLoads(AirShare[] rows, int width) => (this.rows, this.width) = (rows, width);

    /// <summary>Tabulates the build-up once.</summary>
    /// <param name="vehicle">Parts and joints.</param>
    /// <param name="shape">Its outside, the nozzle in its base.</param>
    /// <param name="mach">Greatest Mach number.</param>
    /// <param name="reynoldsPerMach">Reynolds number per metre at Mach 1; shares hardly feel it.</param>
    public static AirLoads Of(Vehicle vehicle, OuterShape shape, double mach, double reynoldsPerMach)
    {
        var owners = new PartOwners(vehicle, shape);
        int parts = vehicle.Parts.Count, steps = Math.Max(2, (int)Math.Ceiling(mach / MachStep) + 1);
        var rows = new AirShare[steps * parts];
        for (var i = 0; i < steps; i++)
        {
            var m = i * MachStep;
            var own = owners.At(AeroBreakdown.Of(shape, m, Math.Max(m, 0.02) * reynoldsPerMach));

            // What acts ahead of joint j is the sum over parts 0 to j; the last row is everything.
            var sum = default(AirShare);
            for (var j = 0; j < parts; j++) rows[(i * parts) + j] = sum += own[j];
        }

        return new(rows, parts);
    }

    /// <summary>What acts on parts 0 to <paramref name="part"/>.</summary>
    public AirShare Ahead(int part, double mach)
    {
        var at = Math.Clamp(mach / MachStep, 0, (rows.Length / width) - 1.000001);
        var low = (int)at;
        AirShare a = rows[(low * width) + part], b = rows[((low + 1) * width) + part];
        return a + ((at - low) * (b - a));
    }

    /// <summary>What acts on everything.</summary>
    public AirShare Whole(double mach) => Ahead(width - 1, mach);
}

/// <summary>Coefficients on the reference area of what acts on some parts, and the moments of the side view. Linear, so that rows add.</summary>
/// <param name="Axial">C_D0, thrust off.</param>
/// <param name="Relief">Of it, what full thrust takes away.</param>
/// <param name="Slope">Σ C_Nα, 1/rad.</param>
/// <param name="Slope1">Σ C_Nα X, m/rad.</param>
/// <param name="Slope2">Σ C_Nα X², m²/rad.</param>
/// <param name="Side">Side view of the body, m².</param>
/// <param name="Side1">Its moment about the tip, m³.</param>
internal readonly record struct AirShare(double Axial, double Relief, double Slope, double Slope1, double Slope2, double Side, double Side1)
{
    public static AirShare operator +(AirShare a, AirShare b) => new(
        a.Axial + b.Axial, a.Relief + b.Relief, a.Slope + b.Slope, a.Slope1 + b.Slope1, a.Slope2 + b.Slope2, a.Side + b.Side, a.Side1 + b.Side1);

    public static AirShare operator -(AirShare a, AirShare b) => a + (-1 * b);

    public static AirShare operator *(double k, AirShare a) => new(
        k * a.Axial, k * a.Relief, k * a.Slope, k * a.Slope1, k * a.Slope2, k * a.Side, k * a.Side1);
}
