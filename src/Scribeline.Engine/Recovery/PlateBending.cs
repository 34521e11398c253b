namespace Scribeline.Engine.Recovery;

/// <summary>
/// A round plate pulled by what is bolted to it. Young and Budynas, Roark's Formulas for Stress and Strain, 7th ed.; Timoshenko and
/// Woinowsky-Krieger, Theory of Plates and Shells, article 16 (from memory). Thin plates: t under a quarter of the diameter, deflections
/// under t/2. A glued rim lies between the two ways to hold it; the free one is the safe one. SI.
/// </summary>
/// <param name="Radius">a, m.</param>
/// <param name="Thickness">t, m.</param>
/// <param name="Poisson">ν.</param>
public readonly record struct PlateBending(double Radius, double Thickness, double Poisson)
{
    /// <summary>Radius a small load acts over, m: √(1.6 r0² + t²) - 0.675 t below half the thickness.</summary>
    /// <param name="washer">r0, m.</param>
    public double Acting(double washer) =>
        washer < Thickness / 2 ? Math.Sqrt((1.6 * washer * washer) + (Thickness * Thickness)) - (0.675 * Thickness) : washer;

    /// <summary>Moment per length in the middle, rim clamped, N: W(1 + ν) ln(a/r0)/4π.</summary>
    /// <param name="load">W, N.</param>
    /// <param name="washer">Radius it acts over, m.</param>
    public double ClampedMoment(double load, double washer) => load * (1 + Poisson) * Math.Log(Radius / Acting(washer)) / (4 * Math.PI);

    /// <summary>Moment per length at a clamped rim, N: W/4π.</summary>
    /// <param name="load">W, N.</param>
    public static double RimMoment(double load) => load / (4 * Math.PI);

    /// <summary>Moment per length in the middle, rim free to turn, N: W[(1 + ν) ln(a/r0) + 1]/4π.</summary>
    /// <inheritdoc cref="ClampedMoment"/>
    public double FreeMoment(double load, double washer) => load * (((1 + Poisson) * Math.Log(Radius / Acting(washer))) + 1) / (4 * Math.PI);

    /// <summary>The same with the load on a ring, as of two legs: a lower bound.</summary>
    /// <param name="load">W, N.</param>
    /// <param name="ring">c: radius of the ring, m.</param>
    public double RingMoment(double load, double ring)
    {
        var (a, c) = (Radius, ring);
        return (load * (1 - Poisson) * ((a * a) - (c * c)) / (8 * Math.PI * a * a)) + (load * (1 + Poisson) * Math.Log(a / c) / (4 * Math.PI));
    }

    /// <summary>Moment per length in the middle under an even pressure, rim free to turn, N: q a²(3 + ν)/16.</summary>
    /// <param name="pressure">q, Pa.</param>
    public double UniformMoment(double pressure) => pressure * Radius * Radius * (3 + Poisson) / 16;

    /// <summary>Bending stress of a moment per length, Pa: 6M/t².</summary>
    /// <param name="moment">N.</param>
    public double Stress(double moment) => 6 * moment / (Thickness * Thickness);

    /// <summary>
    /// Bending stress of a plate on two rods with the load between them, Pa: a beam as wide as the plate less the rods' holes,
    /// M = W s/4 over (2a - 2d) t²/6.
    /// </summary>
    /// <param name="load">W, N.</param>
    /// <param name="spacing">s, of the rods, m.</param>
    /// <param name="hole">d, m.</param>
    public double OnTwoRods(double load, double spacing, double hole) =>
        load * spacing / 4 / (2 * (Radius - hole) * Thickness * Thickness / 6);

    /// <summary>Deflection of the middle, m: W a²/(16π D), rim clamped; (3 + ν)/(1 + ν) times that, rim free to turn.</summary>
    /// <param name="load">W, N.</param>
    /// <param name="modulus">E, Pa.</param>
    /// <param name="clamped">How the rim is held.</param>
    public double Deflection(double load, double modulus, bool clamped)
    {
        var stiffness = modulus * Math.Pow(Thickness, 3) / (12 * (1 - (Poisson * Poisson)));
        var held = load * Radius * Radius / (16 * Math.PI * stiffness);
        return clamped ? held : held * (3 + Poisson) / (1 + Poisson);
    }

    /// <summary>Load that punches a washer through it, N: π d t τ.</summary>
    /// <param name="washer">d: diameter, m.</param>
    /// <param name="shear">τ, Pa.</param>
    public double PunchedBy(double washer, double shear) => Math.PI * washer * Thickness * shear;
}
