using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Air;

/// <summary>
/// One frozen realisation of Dryden turbulence by height: drawn once on a fixed grid, then only interpolated, so that the step of an
/// integrator cannot change it. A vertical path crosses it: components along and across the mean wind have the spectrum across
/// the path, the vertical component that along the path. Each step of the grid is the exact one of the process with the scales at its middle.
/// Between grid heights values follow a smooth cubic; they are held above the top, which should lie above the flight.
/// Source: MIL-F-8785C (1980) spectra and scales, see <see cref="GustSpectrum"/> and <see cref="GustScales"/>.
/// </summary>
public sealed record GustField
{
    private readonly double[] east, north, up;

    private GustField(double spacing, double[] east, double[] north, double[] up)
    {
        (Spacing, this.east, this.north, this.up) = (spacing, east, north, up);
        Values = [.. east, .. north, .. up];
    }

    /// <summary>Distance of the grid heights, m; the first is at the ground.</summary>
    public double Spacing { get; }

    /// <summary>All drawn values, m/s: east by height, then north, then up.</summary>
    public ValueList<double> Values { get; }

    /// <summary>Draws a field.</summary>
    /// <param name="windAt20Feet">Mean wind 20 ft above ground, m/s, 0 or more.</param>
    /// <param name="windFrom">Direction of the mean wind, rad clockwise from north.</param>
    /// <param name="top">Height to draw to, m above ground.</param>
    /// <param name="normal">A stream of standard normal numbers of its own, such as <see cref="RandomStream.Normal"/>: six per grid height are taken.</param>
    /// <param name="spacing">Grid, m.</param>
    public static GustField Draw(double windAt20Feet, double windFrom, double top, Func<double> normal, double spacing = 3)
    {
        var n = (int)Math.Ceiling(top / spacing) + 1;
        var (east, north, up) = (new double[n], new double[n], new double[n]);
        var (along, across, vertical) = (default(DrydenAcross), default(DrydenAcross), 0.0);
        for (var i = 0; i < n; i++)
        {
            // The step to this height; at the ground the stationary state, which is where an endless step leads.
            var scales = GustScales.At((i - 0.5) * spacing, windAt20Feet);
            var step = i == 0 ? double.PositiveInfinity : spacing;
            along = along.Step(step / scales.LengthAlong, normal(), normal());
            across = across.Step(step / scales.LengthAlong, normal(), normal());
            var decay = Math.Exp(-step / scales.LengthVertical);
            vertical = (decay * vertical) + (Math.Sqrt(1 - (decay * decay)) * normal());
            normal(); // keeps six per height, a pair for each component

            var here = GustScales.At(i * spacing, windAt20Feet);
            var mean = WindVector.From(1, windFrom);
            var (u, v) = (here.SigmaAlong * along.Value, here.SigmaAlong * across.Value);
            east[i] = (u * mean.East) + (v * mean.North);
            north[i] = (u * mean.North) - (v * mean.East);
            up[i] = here.SigmaVertical * vertical;
        }
        return new(spacing, east, north, up);
    }

    /// <summary>Gust, m/s, at a height in m above ground.</summary>
    public (T East, T North, T Up) At<T>(T heightAboveGround)
        where T : struct, IReal<T>
    {
        var last = T.From(east.Length - 1);
        var x = T.Min(T.Max(heightAboveGround * T.From(1 / Spacing), T.From(0)), last);
        var i = T.Floor(x);
        var j = T.Min(i + T.From(1), last);
        var share = x - i;
        var before = T.Max(i - T.From(1), T.From(0));
        var after = T.Min(j + T.From(1), last);
        var (half, two, three, four, five) = (T.From(0.5), T.From(2), T.From(3), T.From(4), T.From(5));

        // Cubic with the mean slope of its neighbours at each grid height (Catmull and Rom, 1974): smooth, so that integrators need not stop there.
        T Between(double[] values)
        {
            var (a, b) = (T.Gather(values, before), T.Gather(values, i));
            var (c, d) = (T.Gather(values, j), T.Gather(values, after));
            var linear = c - a;
            var square = (two * a) - (five * b) + (four * c) - d;
            var cube = (three * (b - c)) + d - a;
            return b + (half * share * (linear + (share * (square + (share * cube)))));
        }
        return (Between(east), Between(north), Between(up));
    }

    /// <inheritdoc/>
    public bool Equals(GustField? other) => other is not null && Spacing.Equals(other.Spacing) && Values.Equals(other.Values);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Spacing, Values);
}
