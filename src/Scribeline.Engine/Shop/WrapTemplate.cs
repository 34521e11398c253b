using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// A strip of paper that closes round a tube. Unrolled and read from outside with the forward edge up, <c>along</c> runs to the right
/// from the scribe line as clock angles rise, <c>down</c> from the forward edge of the strip. A strip of thickness t outside a tube of
/// diameter D bends about its own middle, so it just closes at π (D + t).
/// </summary>
/// <param name="Name">What it is wrapped round.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Part">Index of the part.</param>
/// <param name="PartName">As typed.</param>
/// <param name="Diameter">Outside of the tube, m.</param>
/// <param name="Paper">Thickness of the paper, m.</param>
/// <param name="Front">Station of its forward edge, m.</param>
/// <param name="Rear">Station of its aft edge, m.</param>
/// <param name="Register">The edge of the part it is laid against or measured from.</param>
/// <param name="FromRegister">From that edge to the nearer edge of the strip, m; 0 where they meet.</param>
/// <param name="Lines">Along the tube: the scribe line, fins, divisions.</param>
/// <param name="Edges">Round the tube: edges of parts, bonds, fin roots.</param>
/// <param name="Marks">Holes.</param>
public sealed record WrapTemplate(
    string Name, WrapKind Kind, int Part, string PartName, double Diameter, double Paper, double Front, double Rear, TubeEdge Register, double FromRegister,
    ValueList<WrapLine> Lines, ValueList<WrapEdge> Edges, ValueList<WrapMark> Marks)
{
    /// <summary>Thickness of 80 g/m² office paper, m: common practice.</summary>
    public const double OfficePaper = 0.1e-3;

    /// <summary>Paper beyond the closing line, glued under the other end, m: common practice. Drawn and counted alike.</summary>
    public const double Tab = 0.015;

    /// <summary>Length that just closes, m: π (D + t).</summary>
    public double Length => LengthOf(Diameter, Paper);

    /// <summary>Along the tube, m.</summary>
    public double Height => Rear - Front;

    /// <summary>Distance along the strip of a clock angle, m, 0 to <see cref="Length"/>.</summary>
    /// <param name="clock">rad.</param>
    public double Along(double clock) => Turn(clock) / (2 * Math.PI) * Length;

    /// <summary>Clock angle of a distance along the strip, rad.</summary>
    /// <param name="along">m.</param>
    public double ClockAt(double along) => 2 * Math.PI * along / Length;

    /// <summary>Length of strip that just closes round a tube, m.</summary>
    /// <param name="diameter">Outside of the tube, m.</param>
    /// <param name="paper">m.</param>
    public static double LengthOf(double diameter, double paper) => Math.PI * (diameter + paper);

    /// <summary>Outside diameter of the tube that a strip just closes round, m: L/π - t.</summary>
    /// <param name="length">Between the two pricks, m.</param>
    /// <param name="paper">m.</param>
    public static double DiameterOf(double length, double paper) => (length / Math.PI) - paper;

    /// <summary>An angle brought to 0 to 2π, rad.</summary>
    internal static double Turn(double clock)
    {
        var turned = Math.IEEERemainder(clock, 2 * Math.PI);
        return turned < 0 ? turned + (2 * Math.PI) : turned;
    }
}

/// <summary>What a strip is for.</summary>
public enum WrapKind
{
    /// <summary>Holes to drill.</summary>
    Holes,

    /// <summary>Where fins stand.</summary>
    Fins,

    /// <summary>A shoulder or coupler: how far it reaches, and the holes that come through to it.</summary>
    Shoulder,
}

/// <summary>A line along the tube.</summary>
/// <param name="Name">As printed.</param>
/// <param name="Kind">What it marks.</param>
/// <param name="Along">m from the scribe line.</param>
/// <param name="Clock">rad.</param>
public sealed record WrapLine(string Name, WrapLineKind Kind, double Along, double Clock);

/// <summary>What a line along the tube marks.</summary>
public enum WrapLineKind
{
    /// <summary>The datum itself, where the strip closes.</summary>
    Scribe,

    /// <summary>Rail guides.</summary>
    Rail,

    /// <summary>Middle of a fin.</summary>
    Fin,

    /// <summary>One face of a fin.</summary>
    FinFace,

    /// <summary>An even share of the circle.</summary>
    Division,
}

/// <summary>A line round the tube.</summary>
/// <param name="Name">As printed.</param>
/// <param name="Down">m from the forward edge of the strip.</param>
/// <param name="Station">m.</param>
public sealed record WrapEdge(string Name, double Down, double Station);

/// <summary>Where a hole is drilled.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="Along">m from the scribe line.</param>
/// <param name="Down">m from the forward edge of the strip.</param>
public sealed record WrapMark(Hole Hole, double Along, double Down);
