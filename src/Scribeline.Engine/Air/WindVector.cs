using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>Where the air goes, m/s: a wind <i>from</i> the west has a positive east component.</summary>
public readonly record struct WindVector<T>(T East, T North)
    where T : struct, IReal<T>;

/// <summary>Makes and reads wind vectors by the trade's speed and direction.</summary>
public static class WindVector
{
    /// <summary>The vector of a wind of <paramref name="speed"/>, m/s, from <paramref name="from"/>, rad clockwise from north.</summary>
    public static WindVector<Scalar> From(double speed, double from) => new(-speed * Math.Sin(from), -speed * Math.Cos(from));

    /// <summary>Speed, m/s.</summary>
    public static double Speed(this WindVector<Scalar> wind) => double.Hypot(wind.East, wind.North);

    /// <summary>Direction the wind comes from, rad clockwise from north, 0 up to 2π.</summary>
    public static double Direction(this WindVector<Scalar> wind)
    {
        var from = Math.Atan2(-wind.East.Value, -wind.North.Value);
        return from < 0 ? from + Math.Tau : from;
    }
}
