using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Which value to take for a typed measure, SI: as typed, or drawn from its tolerance.</summary>
public static class Draws
{
    /// <summary>Every measure as typed.</summary>
    public static Func<IMeasure, double> Nominal { get; } = measure => measure.Si;

    /// <summary>
    /// Case number <paramref name="number"/>: each measure with a tolerance is drawn from a normal distribution whose two standard deviations
    /// are the tolerance, from a stream named by the measure's place in the file. Other measures, and other files, leave a draw as it is.
    /// </summary>
    /// <param name="seed">Of the whole set of cases.</param>
    /// <param name="number">0, 1, 2 ...</param>
    public static Func<IMeasure, double> Case(ulong seed, int number) => measure =>
        measure.Sigma == 0 ? measure.Si : measure.Si + (measure.Sigma * new RandomStream(seed + (ulong)number, measure.At).Normal());
}
