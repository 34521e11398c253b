using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <content>What flights taught.</content>
public sealed partial record Rocket
{
    /// <summary>How its drag is known: flown where a flight's drag scale was accepted.</summary>
    public Basis DragBasis { get; init; }

    /// <summary>Impulse over that printed, from flights; 1 where never flown.</summary>
    public double ThrustScale { get; init; } = 1;

    /// <summary>Time by which the pressure at the altimeters is behind that outside, s; null where it is not stated.</summary>
    public double? PortLag { get; init; }
}
