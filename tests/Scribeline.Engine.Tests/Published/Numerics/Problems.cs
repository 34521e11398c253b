using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>
/// The restricted three-body problem of Arenstorf: Hairer, Norsett and Wanner, Solving Ordinary Differential
/// Equations I, section II.0.
/// </summary>
internal readonly struct Arenstorf : IOdeSystem
{
    public const double Period = 17.0652165601579625588917206249;

    public static double[] Start => [0.994, 0, 0, -2.00158510637908252240537862224];

    public int Dimension => 4;

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate)
    {
        const double Mu = 0.012277471;
        const double Rest = 1 - Mu;
        var d1 = Math.Pow((y[0] + Mu) * (y[0] + Mu) + y[1] * y[1], 1.5);
        var d2 = Math.Pow((y[0] - Rest) * (y[0] - Rest) + y[1] * y[1], 1.5);
        rate[0] = y[2];
        rate[1] = y[3];
        rate[2] = y[0] + 2 * y[3] - Rest * (y[0] + Mu) / d1 - Mu * (y[0] - Rest) / d2;
        rate[3] = y[1] - 2 * y[2] - Rest * y[1] / d1 - Mu * y[1] / d2;
    }
}

/// <summary>The scalar problems A1 to A5 of Hull, Enright, Fellen and Sedgwick, SIAM J. Numer. Anal. 9 (1972) 603-637.</summary>
internal readonly struct DetestA(int number) : IOdeSystem
{
    public int Dimension => 1;

    public static double Start(int number) => number == 5 ? 4 : 1;

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate) => rate[0] = number switch
    {
        1 => -y[0],
        2 => -y[0] * y[0] * y[0] / 2,
        3 => y[0] * Math.Cos(time),
        4 => y[0] / 4 * (1 - y[0] / 20),
        _ => (y[0] - time) / (y[0] + time),
    };
}

/// <summary>Problem B5 of the same paper (Krogh): the Jacobi elliptic functions of parameter 0.51.</summary>
internal readonly struct DetestB5 : IOdeSystem
{
    public int Dimension => 3;

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate)
    {
        rate[0] = y[1] * y[2];
        rate[1] = -y[0] * y[2];
        rate[2] = -0.51 * y[0] * y[1];
    }
}

/// <summary>The orbits D of the same paper.</summary>
internal readonly struct DetestD : IOdeSystem
{
    public int Dimension => 4;

    public static double[] Start(double eccentricity) =>
        [1 - eccentricity, 0, 0, Math.Sqrt((1 + eccentricity) / (1 - eccentricity))];

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate)
    {
        var cube = Math.Pow(y[0] * y[0] + y[1] * y[1], 1.5);
        (rate[0], rate[1], rate[2], rate[3]) = (y[2], y[3], -y[0] / cube, -y[1] / cube);
    }
}

/// <summary>Problem E4 of the same paper: y'' = 0.032 - 0.4 y'^2, y(0) = 30, y'(0) = 0.</summary>
internal readonly struct DetestE4 : IOdeSystem
{
    public int Dimension => 2;

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate) => (rate[0], rate[1]) = (y[1], 0.032 - 0.4 * y[1] * y[1]);
}

/// <summary>
/// The forced rigid body EULR of Hairer, Norsett and Wanner I, section II.10. The force on the third component is taken
/// as it is, or as a torque divided by the third moment of inertia (the second form is from memory of the book).
/// </summary>
internal readonly struct Eulr(bool torque) : IOdeSystem
{
    public static double[] Start => [1, 0, 0.9];

    public static double[] Jumps => [ForceOn, ForceOff];

    public int Dimension => 3;

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate)
    {
        var force = time >= ForceOn && time < ForceOff ? 0.25 * Math.Sin(time) * Math.Sin(time) : 0;
        rate[0] = (2.0 - 3.0) * y[1] * y[2] / 0.5;
        rate[1] = (3.0 - 0.5) * y[2] * y[0] / 2.0;
        rate[2] = (0.5 - 2.0) * y[0] * y[1] / 3.0 + (torque ? force / 3.0 : force);
    }

    private static double ForceOn => 3 * Math.PI;

    private static double ForceOff => 4 * Math.PI;
}

/// <summary>A point falling freely at 9.80665 m/s^2: height m, upward speed m/s.</summary>
internal readonly struct Falling : IOdeSystem
{
    public int Dimension => 2;

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate) => (rate[0], rate[1]) = (y[1], -9.80665);
}

/// <summary>y' = y cos t, y(0) = 1: y = exp(sin t).</summary>
internal readonly struct CosineGrowth : IOdeSystem
{
    public int Dimension => 1;

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate) => rate[0] = y[0] * Math.Cos(time);
}

/// <summary>y' = -y.</summary>
internal readonly struct Decay : IOdeSystem<Scalar>
{
    public int Dimension => 1;

    public void Derivative(Scalar time, ReadOnlySpan<Scalar> y, Span<Scalar> rate) => rate[0] = -y[0];
}
