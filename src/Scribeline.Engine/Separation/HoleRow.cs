using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Separation;

/// <summary>Equal holes in one row round the body, through which a bay breathes.</summary>
/// <param name="Name">For messages.</param>
/// <param name="Part">Index of the part they are drilled through.</param>
/// <param name="Station">m.</param>
/// <param name="Count">1 or more.</param>
/// <param name="Diameter">m; null where the program chooses.</param>
/// <param name="Clocks">Clock angle of each, rad; empty where not known.</param>
/// <param name="StaticPort">Whether an altimeter reads through them.</param>
public sealed record HoleRow(string Name, int Part, double Station, int Count, double? Diameter, ValueList<double> Clocks, bool StaticPort)
{
    /// <summary>Whether a bay breathes through it.</summary>
    public bool Opens(Bay bay) => Station >= bay.Front && Station <= bay.Rear;

    /// <summary>Diameter of each, m: as typed, or the drill that the customary port rule asks for.</summary>
    /// <param name="air">In its bay, m³.</param>
    /// <param name="inch">Whether the drill is one of the inch sizes.</param>
    public double DiameterIn(double air, bool inch)
    {
        var wanted = VentRules.CustomaryDiameter(air, Count);
        return Diameter ?? Drill.NotBelow(wanted, inch)?.Diameter ?? wanted;
    }

    /// <summary>Area of all of them with a diameter, m².</summary>
    public double AreaAt(double diameter) => Count * Math.PI / 4 * diameter * diameter;
}

/// <summary>Something on the surface that disturbs the stream behind it.</summary>
/// <param name="Name">For messages.</param>
/// <param name="Station">m.</param>
/// <param name="Clock">rad.</param>
public sealed record SurfaceThing(string Name, double Station, double Clock);
