using CsCheck;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Properties.Flight;

/// <summary>Lanes compute what one flight computes.</summary>
public sealed class LaneProperties
{
    private static readonly FlightEquations<RocketModel> Equations = new(new(SampleRocket.Inputs, SampleRocket.Table));

    private static readonly Gen<double[]> State =
        from p in Gen.Double[-500, 3000].Array[3]
        from v in Gen.Double[-300, 300].Array[3]
        from q in Gen.Double[-1, 1].Array[4]
        from w in Gen.Double[-5, 5].Array[3]
        from j in Gen.Double[0, 1900]
        where q.Sum(x => x * x) > 0.1
        select (double[])[p[0], p[1], Math.Abs(p[2]), .. v, .. q.Select(x => x / Math.Sqrt(q.Sum(y => y * y))), .. w, j];

    [Fact]
    public void Four_lanes() => State.Array[4].Sample(states => Check<Wide4>(states), iter: 200);

    [Fact]
    public void Eight_lanes() => State.Array[8].Sample(states => Check<Wide8>(states), iter: 200);

    private static void Check<T>(double[][] states)
        where T : struct, IReal<T>
    {
        double[] times = [.. states.Select((_, i) => 0.3 * i)];
        T[] packed = [.. Enumerable.Range(0, FlightState<T>.Size).Select(i => T.Load([.. states.Select(s => s[i])]))];
        FlightState<T> state = FlightState<T>.Read(packed);
        T time = T.Load(times), burning = T.From(1), friction = T.From(0.1), zero = T.From(0);
        T[] free = Written(Equations.Free(time, state, burning));
        T[] guided = Written(RailEquations.Guided<T, RocketModel>(Equations, time, state, burning, friction));
        T[] pivoting = Written(RailEquations.Pivoting<T, RocketModel>(
            Equations, time, state, burning, friction, new(zero, zero, T.From(1)), T.From(2.1)));
        for (int lane = 0; lane < T.Width; lane++)
        {
            Scalar[] one = [.. states[lane].Select(x => (Scalar)x)];
            FlightState<Scalar> s = FlightState<Scalar>.Read(one);
            Scalar[] freed = Written(Equations.Free<Scalar>(times[lane], s, 1));
            Same(free, freed, lane);

            // What the rail leaves of the accelerations is a difference: no more exact than what it is taken from.
            double whole = freed[3..6].Concat(freed[10..13]).Max(a => Math.Abs(a));
            Same(guided, Written(RailEquations.Guided<Scalar, RocketModel>(Equations, times[lane], s, 1, 0.1)), lane, whole);
            Same(pivoting, Written(RailEquations.Pivoting<Scalar, RocketModel>(Equations, times[lane], s, 1, 0.1, new(0, 0, 1), 2.1)), lane, whole);
        }
    }

    private static T[] Written<T>(FlightState<T> state)
        where T : struct, IReal<T>
    {
        T[] y = new T[FlightState<T>.Size];
        state.Write(y);
        return y;
    }

    /// <summary>Transcendentals of lanes and scalars differ in the last digits; a vector's components share its size.</summary>
    private static void Same<T>(T[] lanes, Scalar[] one, int lane, double accelerations = 0)
        where T : struct, IReal<T>
    {
        foreach ((int from, int to) in (ReadOnlySpan<(int, int)>)[(0, 3), (3, 6), (6, 10), (10, 13), (13, 14)])
        {
            double size = from is 3 or 10 ? Math.Max(1e-9, accelerations) : 1e-9;
            for (int i = from; i < to; i++) size = Math.Max(size, Math.Abs(one[i]));
            for (int i = from; i < to; i++) Assert.Equal(one[i], T.Lane(lanes[i], lane), 1e-11 * size);
        }
    }
}
