using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Air;

/// <summary>
/// Wind from a table of heights: east and north components are linear between rows (never angles), held above the top row, and
/// below the lowest row fall to the ground by the power law from that row, held below 2 m. Rows more than 60° apart in direction
/// lose speed between them and ask for a finer table.
/// </summary>
public sealed record LayeredWind : Wind
{
    private readonly Breakpoints? segments;
    private readonly double[] height, east, north, eastSlope, northSlope;

    /// <param name="rows">One or more, ascending in height above ground.</param>
    /// <param name="exponent">α of the power law below the lowest row, 0 or more.</param>
    /// <exception cref="ArgumentException">No rows, or heights that do not ascend.</exception>
    public LayeredWind(ValueList<WindLayer> rows, double exponent)
    {
        if (rows.Count == 0) throw new ArgumentException("At least one row is needed.", nameof(rows));
        (Rows, Exponent) = (rows, exponent);
        height = [.. rows.Select(r => r.Height)];
        east = [.. rows.Select(r => WindVector.From(r.Speed, r.From).East.Value)];
        north = [.. rows.Select(r => WindVector.From(r.Speed, r.From).North.Value)];
        (eastSlope, northSlope) = (new double[rows.Count], new double[rows.Count]);
        for (var i = 0; i + 1 < rows.Count; i++)
        {
            eastSlope[i] = (east[i + 1] - east[i]) / (height[i + 1] - height[i]);
            northSlope[i] = (north[i + 1] - north[i]) / (height[i + 1] - height[i]);
        }
        segments = rows.Count > 1 ? new Breakpoints(height) : null;
    }

    /// <summary>The table, ascending in height.</summary>
    public ValueList<WindLayer> Rows { get; }

    /// <summary>α of the power law below the lowest row.</summary>
    public double Exponent { get; }

    /// <inheritdoc/>
    public bool Equals(LayeredWind? other) => other is not null && Rows.Equals(other.Rows) && Exponent.Equals(other.Exponent);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Rows, Exponent);

    internal WindVector<T> Evaluate<T>(T heightAboveGround)
        where T : struct, IReal<T>
    {
        var lowest = T.From(height[0]);
        var z = T.Min(T.Max(heightAboveGround, lowest), T.From(height[^1]));
        var i = segments is null ? T.From(0) : segments.Find(z);
        var dz = z - T.Gather(height, i);
        var factor = SurfaceFactor(heightAboveGround);
        return new(
            factor * (T.Gather(east, i) + (T.Gather(eastSlope, i) * dz)),
            factor * (T.Gather(north, i) + (T.Gather(northSlope, i) * dz)));
    }

    private T SurfaceFactor<T>(T heightAboveGround)
        where T : struct, IReal<T>
    {
        var foot = Math.Max(height[0], 2);
        var z = T.Min(T.Max(heightAboveGround, T.From(2)), T.From(foot));
        return T.Exp(T.From(Exponent) * T.Log(z / T.From(foot)));
    }
}
