namespace Scribeline.Engine.Flight;

/// <summary>
/// Coefficients of an embedded Runge-Kutta pair of orders 5 and 4 whose last stage is the next step's first, with a continuous
/// extension of order 4. Source: Tsitouras, Comput. Math. Appl. 62 (2011) 770-775.
/// </summary>
internal static class TsitourasPair
{
    /// <summary>Nodes of the stages.</summary>
    public static ReadOnlySpan<double> Nodes => [0, 0.161, 0.327, 0.9, 0.98002554090450966, 1, 1];

    /// <summary>Weights of the slopes of the stages before a stage, 1 to 6; those of stage 6 propagate.</summary>
    public static ReadOnlySpan<double> Stage(int stage) => Stages.Slice(stage * (stage - 1) / 2, stage);

    /// <summary>Propagating less embedded weights.</summary>
    public static ReadOnlySpan<double> Error =>
    [
        0.0017800110522257714,
        0.0008164344596567469,
        -0.007880878010261995,
        0.1447110071732629,
        -0.5823571654525552,
        0.45808210592918697,
        -0.015151515151515152,
    ];

    private static ReadOnlySpan<double> Stages =>
    [
        0.161,
        -0.0084806554923569887, 0.335480655492357,
        2.8971530571054935, -6.3594484899750752, 4.3622954328695815,
        5.3258648284392569, -11.748883564062828, 7.4955393428898365, -0.092495066361755252,
        5.8614554429464203, -12.92096931784711, 8.1593678985761589, -0.071584973281400996, -0.028269050394068383,
        0.09646076681806523, 0.01, 0.4798896504144996, 1.3790085741037419, -3.2900695154360808, 2.3247105240997739,
    ];

    private static ReadOnlySpan<double> Powers =>
    [
        1, 0, 0, 0, 0, 0, 0,
        -2.7637061972748258, 0.13169999999999998, 3.9302962368947512, -12.411077166933676, 37.509313416511041, -27.896526289197286, 1.5,
        2.9132554618219126, -0.22339999999999999, -5.9410338721315048, 30.338188630282318, -88.178904894766404, 65.091894674793679, -4,
        -1.0530884977290216, 0.1017, 2.4906272856512528, -16.548102889244902, 47.379521962819283, -34.870657861496611, 2.5,
    ];

    /// <summary>Weights of the slopes of the stages in the coefficient of a power of θ, 1 to 4.</summary>
    public static ReadOnlySpan<double> Dense(int power) => Powers.Slice((power - 1) * 7, 7);
}
