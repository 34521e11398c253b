using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Recovery;

/// <summary>The edge of a tube that a cord runs over on its way out. SI.</summary>
/// <param name="Name">Of the part.</param>
/// <param name="Wall">m.</param>
/// <param name="Strength">Edgewise compressive strength, Pa.</param>
/// <param name="Source">Of the strength.</param>
public sealed record TubeEdge(string Name, double Wall, double Strength, string Source)
{
    /// <summary>The edge between a tie and the open end of its piece; null where the tie lies at the end, or the piece slides into the other.</summary>
    /// <param name="vehicle">The airframe.</param>
    /// <param name="joint">Index of the joint that opened.</param>
    /// <param name="anchor">The end of the cord.</param>
    public static TubeEdge? Of(Vehicle vehicle, int joint, Anchor anchor)
    {
        var outer = vehicle.Joints[joint].ShoulderAhead ? vehicle.Joints[joint].Aft : vehicle.Joints[joint].Forward;
        var behind = anchor.Part > joint;
        if (behind != (outer > joint) || vehicle.Parts[outer] is not Tube { OuterDiameter: var outside, InnerDiameter: var inside } tube) return null;
        var laminate = tube.Material.Name.Contains("glass", StringComparison.Ordinal) || tube.Material.Name.Contains("carbon", StringComparison.Ordinal);
        return laminate
            ? new(tube.Name, (outside - inside) / 2, EdgeBearing.GlassEpoxy, "NEMA LI 1 G10 sheet, edgewise, 35 ksi")
            : new(tube.Name, (outside - inside) / 2, EdgeBearing.WeakTubeShare * EdgeBearing.GlassEpoxy, "a tenth of that of G10 sheet: common practice");
    }
}
