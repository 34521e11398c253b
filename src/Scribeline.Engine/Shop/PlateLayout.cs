using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// A bulk plate or ring with all that sits on it. Looked at from the forward end, x points to the scribe line and clock angles run
/// counter-clockwise; the aft face is the mirror image.
/// </summary>
/// <param name="Name">As typed.</param>
/// <param name="Part">Index of the part it belongs to.</param>
/// <param name="Diameter">Outside, m.</param>
/// <param name="InnerDiameter">Of a ring, m; 0 for a full plate.</param>
/// <param name="Thickness">m.</param>
/// <param name="Station">Of its forward face, m.</param>
/// <param name="ForwardBore">Inside diameter its forward side passes or sits in, m.</param>
/// <param name="AftBore">Inside diameter its aft side passes or sits in, m.</param>
/// <param name="Things">What sits on it or goes through it.</param>
public sealed record PlateLayout(
    string Name, int Part, double Diameter, double InnerDiameter, double Thickness, double Station, double ForwardBore, double AftBore, ValueList<PlateThing> Things)
{
    /// <summary>Places the program proposes for what the builder left open.</summary>
    public ValueList<PlateProposal> Proposals { get; init; } = [];

    /// <summary>Whether it is a ring.</summary>
    public bool IsRing => InnerDiameter > 0;

    /// <summary>Inside diameter that a face's things must pass, m.</summary>
    /// <param name="face">Forward or aft.</param>
    public double BoreAt(PlateFace face) => face == PlateFace.Aft ? AftBore : ForwardBore;
}

/// <summary>Something on a plate, or a hole through it.</summary>
/// <param name="Name">For messages, unique on the plate.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Face">Where it stands; a hole goes through.</param>
/// <param name="Outline">Seen from the forward end.</param>
/// <param name="Owner">What moves with it, such as a rod, its hole and its nut; unique on the plate.</param>
/// <param name="Fixed">Whether the builder placed it; otherwise the program proposes its place.</param>
public sealed record PlateThing(string Name, PlateThingKind Kind, PlateFace Face, PlateOutline Outline, string Owner, bool Fixed);

/// <summary>Side of a plate.</summary>
public enum PlateFace
{
    /// <summary>Towards the nose.</summary>
    Forward,

    /// <summary>Towards the tail.</summary>
    Aft,

    /// <summary>Both: it goes through.</summary>
    Through,
}

/// <summary>What sits on a plate.</summary>
public enum PlateThingKind
{
    /// <summary>Hole through it for a rod or bolt.</summary>
    Hole,

    /// <summary>Hole through it for wires.</summary>
    WireHole,

    /// <summary>Hexagon nut with its washer.</summary>
    Nut,

    /// <summary>Wing nut, as the circle its wings sweep.</summary>
    WingNut,

    /// <summary>U-bolt or eye bolt, as the place it takes on its face.</summary>
    Bolt,

    /// <summary>Backing plate of a bolt.</summary>
    BackingPlate,

    /// <summary>Charge cup.</summary>
    ChargeCup,

    /// <summary>Terminal block.</summary>
    TerminalBlock,

    /// <summary>Space that an antenna or something else needs free.</summary>
    KeepClear,

    /// <summary>Something else of the builder's.</summary>
    Other,
}

/// <summary>An outline on a plate, m; its middle is at (X, Y).</summary>
/// <param name="X">Towards the scribe line.</param>
/// <param name="Y">Towards clock angle 90°.</param>
public abstract record PlateOutline(double X, double Y)
{
    /// <summary>The same outline elsewhere.</summary>
    /// <param name="x">m.</param>
    /// <param name="y">m.</param>
    /// <param name="turn">Further turn about its middle, counter-clockwise seen from the forward end, rad.</param>
    public abstract PlateOutline At(double x, double y, double turn = 0);
}

/// <summary>A circle.</summary>
/// <param name="X">m.</param>
/// <param name="Y">m.</param>
/// <param name="Radius">m.</param>
public sealed record PlateCircle(double X, double Y, double Radius) : PlateOutline(X, Y)
{
    /// <inheritdoc/>
    public override PlateOutline At(double x, double y, double turn = 0) => new PlateCircle(x, y, Radius);
}

/// <summary>A rectangle.</summary>
/// <param name="X">m.</param>
/// <param name="Y">m.</param>
/// <param name="Length">Along its own first side, m.</param>
/// <param name="Width">Across it, m.</param>
/// <param name="Turn">Of its first side from x, counter-clockwise seen from the forward end, rad.</param>
public sealed record PlateRectangle(double X, double Y, double Length, double Width, double Turn) : PlateOutline(X, Y)
{
    /// <inheritdoc/>
    public override PlateOutline At(double x, double y, double turn = 0) => new PlateRectangle(x, y, Length, Width, Turn + turn);

    /// <summary>Its corners, counter-clockwise.</summary>
    public ValueList<(double X, double Y)> Corners
    {
        get
        {
            var (sin, cos) = Math.SinCos(Turn);
            (double X, double Y) Corner(double l, double w) => (X + (l * cos) - (w * sin), Y + (l * sin) + (w * cos));
            double a = Length / 2, b = Width / 2;
            return [Corner(a, b), Corner(-a, b), Corner(-a, -b), Corner(a, -b)];
        }
    }
}
