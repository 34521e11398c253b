using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Values of a design that flights taught and its builder accepted: <c>known: flown</c>.</summary>
public static class FlownValues
{
    /// <summary>Whether there are any that can be taken away again.</summary>
    public static bool AreIn(RocketDesign design) => !ReferenceEquals(Without(design), design);

    /// <summary>The design without them: as it was before any flight taught anything. What has no other value keeps its own.</summary>
    /// <param name="design">As typed.</param>
    public static RocketDesign Without(RocketDesign design)
    {
        var stowed = design.Stowed.Any(s => s.Canopy is { } c && IsFlown(c))
            ? design.Stowed.Select(s => s.Canopy is { } c && IsFlown(c) ? s with { Canopy = c with { DragArea = null } } : s).ToValueList()
            : design.Stowed;
        return ReferenceEquals(stowed, design.Stowed) && !IsFlown(design.DragScale) && !IsFlown(design.ThrustScale) && !IsFlown(design.PortLag) ? design : design with
        {
            Stowed = stowed,
            DragScale = IsFlown(design.DragScale) ? null : design.DragScale,
            ThrustScale = IsFlown(design.ThrustScale) ? null : design.ThrustScale,
            PortLag = IsFlown(design.PortLag) ? null : design.PortLag,
        };
    }

    // A canopy known by its drag area alone has nothing to go back to.
    private static bool IsFlown(CanopyDesign canopy) => IsFlown(canopy.DragArea) && canopy.Diameter is not null && canopy.Type is not CanopyType.Streamer;

    private static bool IsFlown(IMeasure? measure) => measure is { Known: Basis.Flown };
}
