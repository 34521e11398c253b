using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// The rocket seen from the side, at right angles to its axis, as one geometry for every drawing of it. Stations in metres aft of the nose
/// tip; across in metres from the axis, positive to the right when the nose is up. Nothing here says how it is drawn.
/// </summary>
/// <param name="Name">Of the rocket.</param>
/// <param name="Length">Tip to tail of the airframe, m.</param>
/// <param name="Facing">Clock angle of the side that faces the onlooker, rad; 0 faces the scribe line.</param>
/// <param name="Shapes">Outlines, in the order to draw them: what lies behind first.</param>
/// <param name="Joints">Nose to tail.</param>
/// <param name="Bays">Nose to tail.</param>
/// <param name="Charges">In the order of the design.</param>
/// <param name="Holes">Nose to tail, those on the far side too.</param>
/// <param name="Balance">Centre of mass; null where it is not known.</param>
/// <param name="CentreOfPressure">Where the side force of the air acts; null where it is not known.</param>
public sealed record SideView(
    string Name,
    double Length,
    double Facing,
    ValueList<SideShape> Shapes,
    ValueList<SideJoint> Joints,
    ValueList<SideBay> Bays,
    ValueList<SideCharge> Charges,
    ValueList<SideHole> Holes,
    SideStation? Balance,
    SideStation? CentreOfPressure)
{
    /// <summary>Foremost station of any outline, m; the tip unless something stands ahead of it.</summary>
    public double Front => Shapes.Count == 0 ? 0 : Shapes.Min(s => s.Front);

    /// <summary>Aftmost station of any outline, m: past the tail where fins or the motor stand out.</summary>
    public double Rear => Shapes.Count == 0 ? Length : Shapes.Max(s => s.Rear);

    /// <summary>Greatest distance of any outline from the axis, m.</summary>
    public double Reach => Shapes.SelectMany(s => s.Outline).Select(p => Math.Abs(p.Across)).DefaultIfEmpty(0).Max();

    /// <summary>Greatest radius of the body, m.</summary>
    public double BodyRadius => Shapes.Where(s => s.Kind == SideKind.Body).SelectMany(s => s.Outline).Select(p => p.Across).DefaultIfEmpty(0).Max();
}

/// <summary>A point of an outline.</summary>
/// <param name="Station">m aft of the tip.</param>
/// <param name="Across">m from the axis, positive to the right when the nose is up.</param>
public readonly record struct SidePoint(double Station, double Across);

/// <summary>One closed outline.</summary>
/// <param name="Id">Name unlike any other of the view, the same from one look to the next: for picking.</param>
/// <param name="Kind">What it is of.</param>
/// <param name="Layer">Whether it hides or is hidden.</param>
/// <param name="Name">As typed.</param>
/// <param name="Part">Index of the part it belongs to.</param>
/// <param name="Outline">Corners in order; the last meets the first. Curves come as corners close enough for any sheet.</param>
public sealed record SideShape(string Id, SideKind Kind, SideLayer Layer, string Name, int Part, ValueList<SidePoint> Outline)
{
    /// <summary>Foremost station, m.</summary>
    public double Front => Outline.Min(p => p.Station);

    /// <summary>Aftmost station, m.</summary>
    public double Rear => Outline.Max(p => p.Station);

    /// <summary>Leftmost place, m.</summary>
    public double Left => Outline.Min(p => p.Across);

    /// <summary>Rightmost place, m.</summary>
    public double Right => Outline.Max(p => p.Across);
}

/// <summary>What an outline is of.</summary>
public enum SideKind
{
    /// <summary>Outside of a part: nose, tube, transition, band.</summary>
    Body,

    /// <summary>Shoulder or coupler tube that lies inside a neighbour.</summary>
    Coupler,

    /// <summary>Inside of a hollow part.</summary>
    Hollow,

    /// <summary>Bulk plate.</summary>
    Plate,

    /// <summary>Centring ring, cut through the axis: two outlines.</summary>
    Ring,

    /// <summary>Motor mount tube.</summary>
    Mount,

    /// <summary>Motor case.</summary>
    Motor,

    /// <summary>Rod between plates.</summary>
    Rod,

    /// <summary>Fin outside the body.</summary>
    Fin,

    /// <summary>Tab of a fin inside the body.</summary>
    FinTab,

    /// <summary>Rail guide.</summary>
    Guide,

    /// <summary>Packed canopy, cord or protector.</summary>
    Stowed,
}

/// <summary>What hides what.</summary>
public enum SideLayer
{
    /// <summary>Beyond the body, partly hidden by it.</summary>
    Behind,

    /// <summary>The outside of the body.</summary>
    Body,

    /// <summary>Inside the body, hidden by it.</summary>
    Inside,

    /// <summary>On this side of the body.</summary>
    Front,
}

/// <summary>A joint: a labelled waist.</summary>
/// <param name="Id">For picking.</param>
/// <param name="Joint">Index of the joint of the vehicle.</param>
/// <param name="Name">The two parts it joins.</param>
/// <param name="Held">How it is held, in one word.</param>
/// <param name="Separable">Whether it is meant to let go in flight.</param>
/// <param name="Break">Station of the line where the outsides meet, m.</param>
/// <param name="From">Foremost station of the engagement, m.</param>
/// <param name="To">Aftmost station of the engagement, m.</param>
/// <param name="Radius">Of the outside at the break, m.</param>
public sealed record SideJoint(string Id, int Joint, string Name, string Held, bool Separable, double Break, double From, double To, double Radius);

/// <summary>A closed volume and what is in it.</summary>
/// <param name="Id">For picking.</param>
/// <param name="Name">Of the part that holds most of it.</param>
/// <param name="Front">Station of its forward end, m.</param>
/// <param name="Rear">Station of its aft end, m.</param>
/// <param name="Radius">Of its smallest bore, m.</param>
/// <param name="Contents">Names of what is stowed in it, nose to tail.</param>
/// <param name="Charges">Names of the charges that fill it.</param>
public sealed record SideBay(string Id, string Name, double Front, double Rear, double Radius, ValueList<string> Contents, ValueList<string> Charges);

/// <summary>A charge at the plate that carries it.</summary>
/// <param name="Id">For picking.</param>
/// <param name="Name">As typed.</param>
/// <param name="Joint">Index of the joint it opens.</param>
/// <param name="Station">Of the face it stands on, m.</param>
/// <param name="Aftward">Whether it fires aft of that face; otherwise forward of it.</param>
public sealed record SideCharge(string Id, string Name, int Joint, double Station, bool Aftward);

/// <summary>A hole through the outside.</summary>
/// <param name="Id">For picking.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Name">In plain words.</param>
/// <param name="Station">m.</param>
/// <param name="Clock">rad.</param>
/// <param name="Across">m.</param>
/// <param name="Near">Whether it is on the side that faces the onlooker.</param>
/// <param name="Diameter">m; null where not known.</param>
public sealed record SideHole(string Id, SideHoleKind Kind, string Name, double Station, double Clock, double Across, bool Near, double? Diameter);

/// <summary>What a hole is for.</summary>
public enum SideHoleKind
{
    /// <summary>Shear pin.</summary>
    Pin,

    /// <summary>Screw that stays.</summary>
    Screw,

    /// <summary>Static port.</summary>
    Port,

    /// <summary>Vent of another bay.</summary>
    Vent,

    /// <summary>Switch.</summary>
    Switch,
}

/// <summary>A named station.</summary>
/// <param name="Station">m.</param>
/// <param name="Words">What it is, and when.</param>
public sealed record SideStation(double Station, string Words);
