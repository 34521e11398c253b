using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>How a rocket is built.</summary>
public sealed record BuildDesign : Placed
{
    /// <summary>Length of an evening where none is typed, s.</summary>
    public const double UsualEvening = 3 * 3600;

    [Key("Length of an evening of building; 3 h if left out.", Sign = Sign.Above)]
    public Measure<Duration>? Evening { get; init; }
}
