using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using static System.Math;

namespace Scribeline.Engine.Separation;

/// <summary>
/// Closed forms for bays that breathe slowly: the pressure difference is small against the pressure. They check the solver and size holes.
/// Derived from Bernoulli and the hydrostatic balance; density cancels.
/// </summary>
public static class VentRules
{
    /// <summary>Volume that the customary port serves, m³: 100 in³. Common practice.</summary>
    public const double CustomaryVolume = 100 * 0.0254 * 0.0254 * 0.0254;

    /// <summary>The customary port, m: a quarter inch. Common practice.</summary>
    public const double CustomaryPort = 0.25 * 0.0254;

    /// <summary>Speed of the air through the holes in a steady climb, m/s: u = (V/A) g w/(k C_d R T).</summary>
    /// <param name="volumePerArea">V/A of the bay, m.</param>
    /// <param name="climb">w, m/s.</param>
    /// <param name="temperature">Of the air, K.</param>
    /// <param name="dischargeCoefficient">Of the holes.</param>
    public static double HoleSpeed(
        double volumePerArea, double climb, double temperature = AirConstants.SeaLevelTemperature, double dischargeCoefficient = Orifice.SharpHole) =>
        volumePerArea * AirConstants.StandardGravity * climb / (dischargeCoefficient * AirConstants.GasConstant * temperature);

    /// <summary>How far an altimeter in the bay reads behind in a steady climb, m: u²/2g.</summary>
    /// <inheritdoc cref="HoleSpeed"/>
    public static double LagHeight(
        double volumePerArea, double climb, double temperature = AirConstants.SeaLevelTemperature, double dischargeCoefficient = Orifice.SharpHole) =>
        Pow(HoleSpeed(volumePerArea, climb, temperature, dischargeCoefficient), 2) / (2 * AirConstants.StandardGravity);

    /// <summary>Pressure difference while the pressure outside falls steadily, Pa: ρu²/2 with u = (V/A) (−dp/dt)/(C_d p).</summary>
    /// <param name="volumePerArea">V/A of the bay, m.</param>
    /// <param name="decay">−dp/dt outside, Pa/s.</param>
    /// <param name="pressure">Outside, Pa.</param>
    /// <param name="temperature">K.</param>
    /// <param name="dischargeCoefficient">Of the holes.</param>
    public static double SteadyDifference(
        double volumePerArea, double decay, double pressure, double temperature, double dischargeCoefficient = Orifice.SharpHole)
    {
        var u = volumePerArea * decay / (dischargeCoefficient * pressure);
        return pressure / (AirConstants.GasConstant * temperature) * u * u / 2;
    }

    /// <summary>Time until the pressures are equal after a step outside, s: (V/A) √(2ρΔp)/(k C_d p).</summary>
    /// <param name="volumePerArea">V/A of the bay, m.</param>
    /// <param name="step">Δp, Pa, small against the pressure.</param>
    /// <param name="pressure">Pa.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="dischargeCoefficient">Of the holes.</param>
    public static double EqualisingTime(
        double volumePerArea, double step, double pressure, double density, double dischargeCoefficient = Orifice.SharpHole) =>
        volumePerArea * Sqrt(2 * density * step) / (dischargeCoefficient * pressure);

    /// <summary>Whether altimeters sit in a bay: both its ends belong to one altimeter bay.</summary>
    public static bool HoldsAltimeters(Vehicle vehicle, Bay bay) => bay.Forward.Part == bay.Aft.Part && vehicle.Parts[bay.Forward.Part] is AltimeterBay;

    /// <summary>The air in a bay, m³. Packed cloth is mostly air, so in other bays than the altimeters' nothing is taken off.</summary>
    public static double AirOf(Vehicle vehicle, Bay bay) => HoldsAltimeters(vehicle, bay) ? bay.FreeVolume : bay.Volume;

    /// <summary>Diameter of each of several equal ports by the customary rule, m: one quarter-inch hole per 100 in³, its area shared.</summary>
    /// <param name="volume">m³.</param>
    /// <param name="count">Ports, 1 or more.</param>
    public static double CustomaryDiameter(double volume, int count) => CustomaryPort * Sqrt(volume / (CustomaryVolume * count));
}
