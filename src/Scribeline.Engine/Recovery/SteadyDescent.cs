namespace Scribeline.Engine.Recovery;

/// <summary>
/// Falling at a steady rate, weight against drag: Knacke, Parachute Recovery Systems Design Manual, 1991, chapter 4. What follows from it
/// is mechanics. SI.
/// </summary>
public static class SteadyDescent
{
    /// <summary>Scale height of the density from 0 to 3 km, m: slope of the standard atmosphere there.</summary>
    public const double DensityHeight = 10_400;

    /// <summary>v_e = √(2 m g/(ρ CdS)), m/s.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="dragArea">Of everything open or hanging, m².</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="gravity">m/s².</param>
    public static double Rate(double mass, double dragArea, double density, double gravity = 9.80665) =>
        Math.Sqrt(2 * mass * gravity / (density * dragArea));

    /// <summary>Drag area that gives a rate, m².</summary>
    /// <param name="rate">m/s.</param>
    /// <param name="mass">kg.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="gravity">m/s².</param>
    public static double DragAreaFor(double rate, double mass, double density, double gravity = 9.80665) =>
        2 * mass * gravity / (density * rate * rate);

    /// <summary>Kinetic energy, J.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="speed">m/s.</param>
    public static double Energy(double mass, double speed) => mass * speed * speed / 2;

    /// <summary>Greatest speed within an energy, m/s.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="energy">J.</param>
    public static double SpeedWithin(double mass, double energy) => Math.Sqrt(2 * energy / mass);

    /// <summary>Time through a layer, s: (2H/v0)[exp(-h1/2H) - exp(-h2/2H)], density falling with height by exp(-h/H).</summary>
    /// <param name="low">h1, m above the level of <paramref name="rate"/>.</param>
    /// <param name="high">h2, m.</param>
    /// <param name="rate">v0, at height 0, m/s.</param>
    /// <param name="densityHeight">H, m.</param>
    public static double LayerTime(double low, double high, double rate, double densityHeight = DensityHeight) =>
        2 * densityHeight / rate * (Math.Exp(-low / (2 * densityHeight)) - Math.Exp(-high / (2 * densityHeight)));

    /// <summary>Height lost while a rate settles from one speed to another, m: (v_e²/2g) ln((v² - v_e²)/(v2² - v_e²)).</summary>
    /// <param name="from">v, more than the steady rate, m/s.</param>
    /// <param name="to">v2, between, m/s.</param>
    /// <param name="steady">v_e, m/s.</param>
    /// <param name="gravity">m/s².</param>
    public static double SettlingHeight(double from, double to, double steady, double gravity = 9.80665) =>
        steady * steady / (2 * gravity) * Math.Log(((from * from) - (steady * steady)) / ((to * to) - (steady * steady)));

    /// <summary>Speed after a fall from rest in air of one density, m/s: v_t √(1 - exp(-2gh/v_t²)).</summary>
    /// <param name="height">h, m.</param>
    /// <param name="terminal">v_t, m/s: the steady rate of the falling body.</param>
    /// <param name="gravity">m/s².</param>
    public static double SpeedAfterFall(double height, double terminal, double gravity = 9.80665) =>
        terminal * Math.Sqrt(1 - Math.Exp(-2 * gravity * height / (terminal * terminal)));

    /// <summary>Drag area of canopies side by side, m²: each leans away, so Σ CdS cos θ.</summary>
    /// <param name="dragAreas">m².</param>
    /// <param name="tilt">θ from the vertical, rad.</param>
    public static double SideBySide(ReadOnlySpan<double> dragAreas, double tilt)
    {
        double sum = 0;
        foreach (var area in dragAreas) sum += area;
        return sum * Math.Cos(tilt);
    }

    /// <summary>Time in which a falling body follows a change of the wind, s: v_e/g (drag made linear).</summary>
    /// <param name="rate">v_e, m/s.</param>
    /// <param name="gravity">m/s².</param>
    public static double WindLag(double rate, double gravity = 9.80665) => rate / gravity;
}
