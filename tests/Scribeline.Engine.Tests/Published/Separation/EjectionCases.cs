using System.Globalization;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tests.Published.Flight;

namespace Scribeline.Engine.Tests.Published.Separation;

/// <summary>Check values by row name, and the cases they belong to; the basis of each stands in separation-ejection.csv.</summary>
internal static class EjectionCases
{
    private static readonly Dictionary<string, (double Value, double Tolerance)> Rows = FlightChecks.Lines("separation-ejection.csv").ToDictionary(
        f => f[0], f => (double.Parse(f[2], CultureInfo.InvariantCulture), double.Parse(f[4], CultureInfo.InvariantCulture)));

    /// <summary>98 mm class main bay at sea level.</summary>
    public static EjectionInputs B { get; } = new()
    {
        ChargeMass = 2.00e-3,
        FreeVolume = 3.000e-3,
        Bore = 99.0e-3,
        Stroke = 0.100,
        ForwardMass = 1.5,
        AftMass = 4.0,
        PinForce = 400,
        StaticFriction = 60,
        SlidingFriction = 40,
        AmbientPressure = 101_325,
        AmbientTemperature = 288.15,
        WallArea = 0.150,
        VentArea = 20e-6,
    };

    /// <summary>54 mm drogue bay at 3000 m.</summary>
    public static EjectionInputs C { get; } = new()
    {
        ChargeMass = 0.600e-3,
        FreeVolume = 0.600e-3,
        Bore = 54.0e-3,
        Stroke = 0.054,
        ForwardMass = 1.2,
        AftMass = 2.0,
        PinForce = 265,
        StaticFriction = 30,
        SlidingFriction = 20,
        AmbientPressure = 70_108.5,
        AmbientTemperature = 268.65,
        WallArea = 0.030,
        VentArea = 6e-6,
    };

    public static double Value(string id) => Rows[id].Value;

    /// <summary>Fails unless a number agrees with a row within the row's own tolerance.</summary>
    public static void Holds(string id, double actual)
    {
        var (value, tolerance) = Rows[id];
        Assert.True(
            Math.Abs(actual - value) <= tolerance * Math.Abs(value),
            FormattableString.Invariant($"{id}: expected {value:R} within {tolerance:G2}, got {actual:R}, {(actual / value) - 1:E2} off"));
    }
}
