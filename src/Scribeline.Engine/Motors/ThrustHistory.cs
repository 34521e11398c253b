using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Motors;

/// <summary>
/// Thrust by time, linear between the points of a table; a table that begins after time 0 is joined to zero thrust at time 0.
/// Impulse is the exact integral of that line. Nothing before time 0 and after the last point.
/// Burn time and average thrust by the usual definition of the testing standards: from 5 % of the highest thrust, first reached, to
/// 5 % last passed (NFPA 1125, from memory).
/// </summary>
public sealed record ThrustHistory
{
    private readonly Breakpoints segments;
    private readonly double[] time, thrust, slope, impulse;

    /// <param name="points">Two or more, times ascending from 0 or later; see <see cref="MotorProblems"/> for what makes sense.</param>
    /// <exception cref="ArgumentException">Fewer than two points, times that do not ascend, or a time below 0.</exception>
    public ThrustHistory(ValueList<ThrustPoint> points)
    {
        Points = points;
        if (points.Count < 2 || points[0].Time < 0) throw new ArgumentException("Two or more points from time 0 on are needed.", nameof(points));
        IEnumerable<ThrustPoint> joined = points[0].Time > 0 ? points.Prepend(new(0, 0)) : points;
        time = [.. joined.Select(p => p.Time)];
        thrust = [.. joined.Select(p => p.Thrust)];
        segments = new Breakpoints(time);
        (slope, impulse) = (new double[time.Length], new double[time.Length]);
        for (var i = 0; i + 1 < time.Length; i++)
        {
            var dt = time[i + 1] - time[i];
            slope[i] = (thrust[i + 1] - thrust[i]) / dt;
            impulse[i + 1] = impulse[i] + ((thrust[i] + thrust[i + 1]) / 2 * dt);
        }
        (MaximumThrust, TotalImpulse, EndTime) = (thrust.Max(), impulse[^1], time[^1]);
        (BurnStart, BurnEnd) = (FirstReach(0.05 * MaximumThrust), LastPass(0.05 * MaximumThrust));
        AverageThrust = (ImpulseAt<Scalar>(BurnEnd) - ImpulseAt<Scalar>(BurnStart)).Value / (BurnEnd - BurnStart);
        InitialThrust = Enumerable.Range(0, time.Length).Where(i => time[i] <= InitialPeriod).Select(i => thrust[i])
            .Append(ThrustAt<Scalar>(InitialPeriod).Value).Max();
    }

    /// <summary>The table as given.</summary>
    public ValueList<ThrustPoint> Points { get; }

    /// <summary>Highest thrust, N.</summary>
    public double MaximumThrust { get; }

    /// <summary>Total impulse, N·s: the area below the line.</summary>
    public double TotalImpulse { get; }

    /// <summary>Time of the last point, s.</summary>
    public double EndTime { get; }

    /// <summary>When thrust first reaches 5 % of its highest, s.</summary>
    public double BurnStart { get; }

    /// <summary>When thrust last passes 5 % of its highest, s.</summary>
    public double BurnEnd { get; }

    /// <summary>Burn time, s, between the 5 % points.</summary>
    public double BurnTime => BurnEnd - BurnStart;

    /// <summary>Average thrust, N, over the burn time.</summary>
    public double AverageThrust { get; }

    /// <summary>Highest thrust, N, within the first half second: what decides how fast the rail is left (common practice).</summary>
    public double InitialThrust { get; }

    /// <summary>The period of <see cref="InitialThrust"/>, s.</summary>
    public const double InitialPeriod = 0.5;

    /// <summary>Thrust, N, at a time in s after first thrust.</summary>
    public T ThrustAt<T>(T t)
        where T : struct, IReal<T>
    {
        var zero = T.From(0);
        var i = segments.Find(t);
        var value = T.Gather(thrust, i) + (T.Gather(slope, i) * (t - T.Gather(time, i)));
        return T.SelectLess(t, zero, zero, T.SelectLess(T.From(EndTime), t, zero, value));
    }

    /// <summary>Impulse given, N·s, from first thrust to a time in s.</summary>
    public T ImpulseAt<T>(T t)
        where T : struct, IReal<T>
    {
        var within = T.Min(T.Max(t, T.From(0)), T.From(EndTime));
        var i = segments.Find(within);
        var dt = within - T.Gather(time, i);
        return T.Gather(impulse, i) + (dt * (T.Gather(thrust, i) + (T.From(0.5) * T.Gather(slope, i) * dt)));
    }

    /// <inheritdoc/>
    public bool Equals(ThrustHistory? other) => other is not null && Points.Equals(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => Points.GetHashCode();

    private double FirstReach(double level)
    {
        var i = Array.FindIndex(thrust, f => f >= level);
        return i <= 0 ? time[0] : time[i - 1] + ((level - thrust[i - 1]) / slope[i - 1]);
    }

    private double LastPass(double level)
    {
        var i = Array.FindLastIndex(thrust, f => f >= level);
        return i < 0 || i == time.Length - 1 ? EndTime : time[i] + ((level - thrust[i]) / slope[i]);
    }
}
