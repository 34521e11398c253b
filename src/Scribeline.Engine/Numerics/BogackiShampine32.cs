namespace Scribeline.Engine.Numerics;

/// <summary>
/// The pair of orders 3 and 2 of Bogacki and Shampine, Appl. Math. Lett. 2 (1989) 321-325, with the cubic Hermite
/// polynomial through both ends as its dense output. Cheap where little accuracy is asked.
/// </summary>
public readonly struct BogackiShampine32 : IRungeKuttaPair
{
    private static readonly double[] nodes = [0, 1.0 / 2, 3.0 / 4, 1];

    private static readonly double[] matrix = [1.0 / 2, 0, 3.0 / 4, 2.0 / 9, 1.0 / 3, 4.0 / 9];

    private static readonly double[] errorWeights = [-5.0 / 72, 1.0 / 12, 1.0 / 9, -1.0 / 8];

    private static readonly double[] dense =
    [
        1, -4.0 / 3, 5.0 / 9,
        0, 1, -2.0 / 3,
        0, 4.0 / 3, -8.0 / 9,
        0, -1, 1,
    ];

    /// <inheritdoc/>
    public static int Stages => 4;

    /// <inheritdoc/>
    public static int Order => 3;

    /// <inheritdoc/>
    public static int DenseDegree => 3;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> Nodes => nodes;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> Matrix => matrix;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> ErrorWeights => errorWeights;

    /// <inheritdoc/>
    public static ReadOnlySpan<double> Dense => dense;
}
