namespace Scribeline.Engine.Numerics;

/// <summary>
/// The pair of orders 5 and 4 of Dormand and Prince, J. Comput. Appl. Math. 6 (1980) 19-26 (RK5(4)7M), with the dense
/// output of order 4 of Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, section II.6.
/// </summary>
public readonly struct DormandPrince54 : IRungeKuttaPair
{
    private static readonly double[] nodes = [0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1];

    private static readonly double[] matrix =
    [
        1.0 / 5,
        3.0 / 40, 9.0 / 40,
        44.0 / 45, -56.0 / 15, 32.0 / 9,
        19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729,
        9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656,
        35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84,
    ];

    private static readonly double[] errorWeights =
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    private static readonly double[] dense =
    [
        1, -8048581381.0 / 2820520608, 8663915743.0 / 2820520608, -12715105075.0 / 11282082432,
        0, 0, 0, 0,
        0, 131558114200.0 / 32700410799, -68118460800.0 / 10900136933, 87487479700.0 / 32700410799,
        0, -1754552775.0 / 470086768, 14199869525.0 / 1410260304, -10690763975.0 / 1880347072,
        0, 127303824393.0 / 49829197408, -318862633887.0 / 49829197408, 701980252875.0 / 199316789632,
        0, -282668133.0 / 205662961, 2019193451.0 / 616988883, -1453857185.0 / 822651844,
        0, 40617522.0 / 29380423, -110615467.0 / 29380423, 69997945.0 / 29380423,
    ];

    /// <inheritdoc/>
    public static int Stages => 7;

    /// <inheritdoc/>
    public static int Order => 5;

    /// <inheritdoc/>
    public static int DenseDegree => 4;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> Nodes => nodes;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> Matrix => matrix;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> ErrorWeights => errorWeights;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> Dense => dense;
}
