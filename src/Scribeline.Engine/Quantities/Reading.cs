using System.Diagnostics.CodeAnalysis;

namespace Scribeline.Engine.Quantities;

/// <summary>A value read from text, or what is wrong with the text.</summary>
/// <typeparam name="T">Kind of value.</typeparam>
/// <param name="Value">The value; null if the text could not be read.</param>
/// <param name="Problem">What is wrong; null if the text was read.</param>
public sealed record Reading<T>(T? Value, TextProblem? Problem)
    where T : class
{
    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool Good => Problem is null;

    /// <summary>A value that was read.</summary>
    public static implicit operator Reading<T>(T value) => new(value, null);

    /// <summary>Text that could not be read.</summary>
    public static implicit operator Reading<T>(TextProblem problem) => new(null, problem);

    /// <summary>The same reading as another kind of value.</summary>
    public Reading<TOther> Select<TOther>(Func<T, TOther> turn)
        where TOther : class => Good ? new(turn(Value), null) : new(null, Problem);
}
