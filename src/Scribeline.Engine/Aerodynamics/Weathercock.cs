namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Turn into the wind of a stiff rocket after a vertical rail, drag neglected, thrust over weight n constant: in axes that move with the wind
/// it flies a gravity turn (Culler and Fried, 1957, from memory).
/// </summary>
/// <param name="Speed">Relative to the air, m/s.</param>
/// <param name="Angle">From the vertical, up-wind, rad.</param>
/// <param name="Time">Since leaving the rail, s.</param>
public readonly record struct Weathercock(double Speed, double Angle, double Time)
{
    /// <summary>Angle of attack on leaving a vertical rail in a level wind: atan(w/V).</summary>
    public static double ExitAngle(double exitSpeed, double wind) => Math.Atan2(wind, exitSpeed);

    /// <summary>State when the air speed has grown to a value.</summary>
    /// <param name="exitSpeed">Leaving the rail, m/s, above 0.</param>
    /// <param name="wind">Level wind, m/s, above 0.</param>
    /// <param name="thrustToWeight">n, above 1.</param>
    /// <param name="speed">Air speed asked for, m/s, at least that at the exit.</param>
    /// <param name="gravity">m/s².</param>
    public static Weathercock At(double exitSpeed, double wind, double thrustToWeight, double speed, double gravity = 9.80665)
    {
        var n = thrustToWeight;
        var z0 = Math.Tan(ExitAngle(exitSpeed, wind) / 2);
        var k = Math.Sqrt(exitSpeed * exitSpeed + wind * wind) / (Math.Pow(z0, n - 1) * (1 + z0 * z0));
        // V = k z^(n−1)(1 + z²) grows with z: bisect in ln z.
        double low = Math.Log(z0), high = 0;
        while (Rate(Math.Exp(high)) < speed) high += 1;
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            if (Rate(Math.Exp(middle)) < speed) low = middle;
            else high = middle;
        }
        var z = Math.Exp((low + high) / 2);
        return new(speed, 2 * Math.Atan(z), k / gravity * (Clock(z) - Clock(z0)));

        double Rate(double at) => k * Math.Pow(at, n - 1) * (1 + at * at);
        double Clock(double at) => Math.Pow(at, n - 1) / (n - 1) + Math.Pow(at, n + 1) / (n + 1);
    }
}
