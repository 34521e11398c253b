using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>A hole drilled towards the axis through one wall or several. Walls drilled together are drilled assembled and clocked.</summary>
/// <param name="Mark">Letter of its row and number in it, such as "B2", unique in the rocket; what templates print beside it.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Row">Name of its row, such as "pins of Nose and Payload".</param>
/// <param name="Joint">Index of the joint it holds; -1 for none.</param>
/// <param name="Station">m aft of the nose tip.</param>
/// <param name="Clock">Clockwise looking forward from the tail, from the scribe line, 0 to 2π rad; NaN where none is typed.</param>
/// <param name="SurfaceDiameter">Outside diameter of the outermost wall there, m.</param>
/// <param name="Cuts">Through each wall, outermost first.</param>
/// <param name="HeadDiameter">Of what stands out of the surface there, m; 0 for an open hole.</param>
/// <param name="Edge">The edge it is measured from along the tube.</param>
/// <param name="FromEdge">From that edge to its middle, m.</param>
public sealed record Hole(
    string Mark, HoleKind Kind, string Row, int Joint, double Station, double Clock, double SurfaceDiameter, ValueList<HoleCut> Cuts, double HeadDiameter, TubeEdge Edge, double FromEdge)
{
    /// <summary>Major diameter of the fastener in it, m; 0 for an open hole.</summary>
    public double Fastener { get; init; }

    /// <summary>Round the outside from the scribe line, m; NaN where no clock angle is typed.</summary>
    public double Arc => Clock * SurfaceDiameter / 2;

    /// <summary>At the surface, m: the finished hole or its countersink.</summary>
    public double OpenDiameter => Math.Max(Cuts[0].Diameter, Cuts[0].Countersink);

    /// <summary>Of the finished hole in the outermost wall, m.</summary>
    public double Diameter => Cuts[0].Diameter;

    /// <summary>Through all walls, m.</summary>
    public double Depth => Cuts.Sum(c => c.Depth);

    /// <summary>The parts drilled together, outermost first.</summary>
    public ValueList<string> Parts => Cuts.Select(c => c.PartName).Distinct().ToValueList();

    /// <summary>What the first pass is drilled with, through all walls: the thinnest of its cuts, m.</summary>
    public double Pilot => Cuts.Min(c => c.Diameter);
}

/// <summary>An edge of a part that things are measured from.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="Forward">Whether it is the forward edge.</param>
/// <param name="Name">In words, such as "aft edge of Payload".</param>
/// <param name="Station">m.</param>
public sealed record TubeEdge(int Part, bool Forward, string Name, double Station);
