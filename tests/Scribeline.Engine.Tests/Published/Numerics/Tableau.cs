using System.Globalization;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>One published pair as listed in numerics-rk-tableaux.csv (sources in the file), and the pair under test beside it.</summary>
public sealed class Tableau
{
    private readonly Dictionary<string, double> cells = [];

    private Tableau(string name) => Name = name;

    public string Name { get; }

    public int Stages { get; private init; }

    public int Order { get; private init; }

    public int DenseDegree { get; private init; }

    public double[] Nodes { get; private init; } = [];

    public double[] Matrix { get; private init; } = [];

    public double[] ErrorWeights { get; private init; } = [];

    public double[] Dense { get; private init; } = [];

    /// <summary>The published number; kinds c, b, bh with i, kinds a, p with i and j, counted from 1.</summary>
    public double Published(string kind, int i, int j = 0) => cells[Key(kind, i, j)];

    public double A(int i, int j) => Matrix[i * (i - 1) / 2 + j];

    public double B(int i) => i < Stages - 1 ? A(Stages - 1, i) : 0;

    public override string ToString() => Name;

    public static Tableau Of(string name)
    {
        var tableau = name switch
        {
            "DP54" => Take<DormandPrince54>(name),
            "TS54" => Take<Tsitouras54>(name),
            _ => Take<BogackiShampine32>(name),
        };
        foreach (var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "Data", "numerics-rk-tableaux.csv")))
        {
            var cell = line.Split(',');
            if (cell[0] != name) continue;
            tableau.cells.Add(
                Key(cell[1], int.Parse(cell[2], CultureInfo.InvariantCulture), cell[3].Length == 0 ? 0 : int.Parse(cell[3], CultureInfo.InvariantCulture)),
                double.Parse(cell[5], CultureInfo.InvariantCulture));
        }

        return tableau;
    }

    private static Tableau Take<TPair>(string name)
        where TPair : struct, IRungeKuttaPair => new(name)
        {
            Stages = TPair.Stages,
            Order = TPair.Order,
            DenseDegree = TPair.DenseDegree,
            Nodes = TPair.Nodes.ToArray(),
            Matrix = TPair.Matrix.ToArray(),
            ErrorWeights = TPair.ErrorWeights.ToArray(),
            Dense = TPair.Dense.ToArray(),
        };

    private static string Key(string kind, int i, int j) => FormattableString.Invariant($"{kind} {i} {j}");
}
