using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using static System.Math;

namespace Scribeline.Engine.Separation;

/// <summary>
/// What the stream does to the pressure at a hole in the side of the body: suction behind the shoulder, and the flow across the body at an
/// angle of attack. Good below Mach 0.8 only (Gracey, NACA Report 1364, 1957); the shock that crosses a port near Mach 1 is beyond any of it.
/// </summary>
public static class StaticPressure
{
    /// <summary>Mach number up to which a hole in the side measures pressure, NACA Report 1364.</summary>
    public const double GoodToMach = 0.8;

    /// <summary>
    /// Pressure coefficient on the cylinder behind a nose: −(1/8)/(s + 0.53 f)², the far field of the source the nose is. Within about 15 % for
    /// a tangent ogive 1 to 6 calibres behind its shoulder (potential flow, computed by panels); nearer the suction is underrated.
    /// </summary>
    /// <param name="calibresBehind">s: distance behind the shoulder, calibres, 0 or more.</param>
    /// <param name="fineness">f: length of the nose over its diameter.</param>
    public static double BehindShoulder(double calibresBehind, double fineness) => -0.125 / Pow(calibresBehind + (0.53 * fineness), 2);

    /// <summary>Pressure coefficient at a station of a rocket; 0 where it stands on the nose itself, of which nothing is said.</summary>
    /// <param name="shape">What the air sees.</param>
    /// <param name="station">Of the hole, m.</param>
    public static double At(OuterShape shape, double station)
    {
        var nose = shape.Body[0];
        var shoulder = nose.Front + nose.Length;
        return station < shoulder || nose.RearDiameter <= 0 ? 0
            : BehindShoulder((station - shoulder) / nose.RearDiameter, nose.Length / nose.RearDiameter);
    }

    /// <summary>What a pressure coefficient does to a barometric height, m: −C_p V²/2g, independent of density.</summary>
    /// <param name="coefficient">C_p.</param>
    /// <param name="airspeed">m/s.</param>
    public static double HeightError(double coefficient, double airspeed) =>
        -coefficient * airspeed * airspeed / (2 * AirConstants.StandardGravity);

    /// <summary>
    /// Pressure coefficient in a bay with equal holes evenly round it, over sin² of the angle of attack, in potential flow across the body:
    /// each hole sees 1 − 4 sin²θ, and Σ sgn(C_i − C) √|C_i − C| = 0.
    /// </summary>
    /// <param name="count">Holes, 1 or more.</param>
    /// <param name="turn">Angle of the first hole from the side the wind meets, rad.</param>
    public static double AcrossWind(int count, double turn)
    {
        var holes = new double[count];
        for (var i = 0; i < count; i++) holes[i] = 1 - (4 * Pow(Sin(turn + (2 * PI * i / count)), 2));
        double low = holes.Min(), high = holes.Max();

        // The sum falls as C rises, so halving finds it; 60 halvings exhaust a double.
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (holes.Sum(c => Sign(c - middle) * Sqrt(Abs(c - middle))) > 0) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>The most negative and the most positive of <see cref="AcrossWind(int, double)"/> as the rocket rolls.</summary>
    /// <param name="count">Holes, 1 or more.</param>
    public static (double Low, double High) AcrossWind(int count)
    {
        // Whatever the count, a quarter turn holds every value by symmetry; whole degrees hold the extremes of up to six holes.
        var over = Enumerable.Range(0, 91).Select(i => AcrossWind(count, PI / 2 * i / 90)).ToArray();
        return (over.Min(), over.Max());
    }

    /// <summary>Static pressure behind a normal shock over that ahead: 1 + 2γ/(γ+1) (M² − 1). NACA Report 1135, eq. 93.</summary>
    /// <param name="mach">Ahead, 1 or more.</param>
    public static double AcrossShock(double mach) => 1 + (2 * AirConstants.HeatRatio / (AirConstants.HeatRatio + 1) * ((mach * mach) - 1));
}
