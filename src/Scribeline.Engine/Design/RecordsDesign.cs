using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>What was measured on the finished rocket.</summary>
public sealed record RecordsDesign : Placed
{
    [Key("Weighings of the whole or of pieces.")]
    public ValueList<WeighedDesign> Weighed { get; init; } = ValueList<WeighedDesign>.Empty;
}

/// <summary>A weighing or balancing of the whole rocket or of neighbouring parts together.</summary>
public sealed record WeighedDesign : Placed
{
    [Key("The parts on the scale, by name; the whole rocket if left out.")]
    public ValueList<string> Parts { get; init; } = ValueList<string>.Empty;

    [Key("Mass.", Sign = Sign.Above, Known = Basis.Measured)]
    public Measure<Mass>? Mass { get; init; }

    [Key("Balance point, aft of the front of the first part's own length (of the nose tip for the whole).", Known = Basis.Measured)]
    public Measure<Length>? Balance { get; init; }

    [Key("Whether what is stowed was aboard.", Required = true)]
    public required bool Stowed { get; init; }

    [Key("Whether the loaded motor was aboard.", Required = true)]
    public required bool Motor { get; init; }

    [Key("When.")]
    public string? Date { get; init; }
}
