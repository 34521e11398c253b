using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>Something fixed to a part. Its place is given from the front of that part's own length, so that it moves with it.</summary>
/// <param name="Name">As typed, for messages.</param>
/// <param name="Offset">Its front, m aft of the front of the part (negative in a forward shoulder or coupler end).</param>
public abstract record Fitting(string Name, double Offset)
{
    /// <summary>Along the axis, m.</summary>
    public abstract double Length { get; }

    /// <summary>Mass, balance and inertia when the part's front is at a station.</summary>
    /// <param name="partFront">m.</param>
    public abstract MassProperties At(double partFront);
}

/// <summary>Bulk plate: a full disc that closes a bay.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Offset">m.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Diameter">m.</param>
/// <param name="Thickness">m.</param>
/// <param name="OpenArea">Area of the holes in it, m²; taken out evenly.</param>
public sealed record BulkPlate(string Name, double Offset, Material Material, double Diameter, double Thickness, double OpenArea = 0)
    : Fitting(Name, Offset)
{
    /// <inheritdoc/>
    public override double Length => Thickness;

    /// <inheritdoc/>
    public override MassProperties At(double partFront)
    {
        MassProperties full = RevolutionMoments.Ring(partFront + Offset, Thickness, Diameter, 0).Filled(Material.Density);
        return full.WithMass(full.Mass * (1 - OpenArea / (Math.PI * Diameter * Diameter / 4)));
    }
}

/// <summary>Centring ring.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Offset">m.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="OuterDiameter">m.</param>
/// <param name="InnerDiameter">m.</param>
/// <param name="Thickness">m.</param>
public sealed record CentringRing(string Name, double Offset, Material Material, double OuterDiameter, double InnerDiameter, double Thickness)
    : Fitting(Name, Offset)
{
    /// <inheritdoc/>
    public override double Length => Thickness;

    /// <inheritdoc/>
    public override MassProperties At(double partFront) =>
        RevolutionMoments.Ring(partFront + Offset, Thickness, OuterDiameter, InnerDiameter).Filled(Material.Density);
}

/// <summary>Motor mount tube.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Offset">m.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="TubeLength">m.</param>
/// <param name="OuterDiameter">m.</param>
/// <param name="InnerDiameter">m.</param>
public sealed record MotorMount(string Name, double Offset, Material Material, double TubeLength, double OuterDiameter, double InnerDiameter)
    : Fitting(Name, Offset)
{
    /// <summary>How far a motor's aft end stands out behind the mount, m.</summary>
    public double Overhang { get; init; }

    /// <inheritdoc/>
    public override double Length => TubeLength;

    /// <inheritdoc/>
    public override MassProperties At(double partFront) =>
        RevolutionMoments.Ring(partFront + Offset, TubeLength, OuterDiameter, InnerDiameter).Filled(Material.Density);
}

/// <summary>Rods parallel to the axis, evenly spaced on a circle.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Offset">m.</param>
/// <param name="Material">What they are made of.</param>
/// <param name="RodLength">m.</param>
/// <param name="Diameter">Of a rod of the same mass: the pitch diameter for a threaded rod, m.</param>
/// <param name="Count">1 or more.</param>
/// <param name="CircleRadius">Axis of the part to axis of a rod, m.</param>
/// <param name="FirstClock">rad.</param>
public sealed record Rods(
    string Name, double Offset, Material Material, double RodLength, double Diameter, int Count, double CircleRadius, double FirstClock)
    : Fitting(Name, Offset)
{
    /// <inheritdoc/>
    public override double Length => RodLength;

    /// <summary>Of all rods, m³.</summary>
    public double Volume => Count * Math.PI * Diameter * Diameter / 4 * RodLength;

    /// <inheritdoc/>
    public override MassProperties At(double partFront)
    {
        MassProperties rod = RevolutionMoments.Ring(partFront + Offset, RodLength, Diameter, 0).Filled(Material.Density);
        return MassProperties.Sum(Enumerable.Range(0, Count).Select(i =>
        {
            (double sin, double cos) = Math.SinCos(FirstClock + 2 * Math.PI * i / Count);
            return rod with { OffsetY = CircleRadius * sin, OffsetZ = -CircleRadius * cos };
        }));
    }
}

/// <summary>Rail guide or any small thing on the outside that the air sees.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Offset">Its middle, m.</param>
/// <param name="Mass">kg.</param>
/// <param name="Height">Out of the surface, m.</param>
/// <param name="Width">Across the flow, m.</param>
/// <param name="Radius">Of the body under it, m.</param>
/// <param name="Clock">rad.</param>
/// <param name="Faired">Whether it is streamlined.</param>
public sealed record RailGuide(
    string Name, double Offset, double Mass, double Height, double Width, double Radius, double Clock, bool Faired = false)
    : Fitting(Name, Offset)
{
    /// <inheritdoc/>
    public override double Length => 0;

    /// <inheritdoc/>
    public override MassProperties At(double partFront)
    {
        double r = Radius + Height / 2;
        return MassProperties.Point(Mass, partFront + Offset, r * Math.Sin(Clock), -r * Math.Cos(Clock));
    }
}

/// <summary>A mass of no account of shape: ballast, electronics, an eye bolt.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Offset">Its centre, m.</param>
/// <param name="Mass">kg.</param>
/// <param name="Radius">Axis to its centre, m.</param>
/// <param name="Clock">rad.</param>
/// <param name="Basis">How the mass is known.</param>
public sealed record PointMass(string Name, double Offset, double Mass, double Radius = 0, double Clock = 0, Basis Basis = Basis.Estimated)
    : Fitting(Name, Offset)
{
    /// <inheritdoc/>
    public override double Length => 0;

    /// <inheritdoc/>
    public override MassProperties At(double partFront) =>
        MassProperties.Point(Mass, partFront + Offset, Radius * Math.Sin(Clock), -Radius * Math.Cos(Clock), Basis);
}

/// <summary>Something that lies loose in a part: canopy, cord, protector. Its mass is spread evenly through its packed cylinder.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Offset">Front of the packed cylinder, m aft of the front of the part.</param>
/// <param name="PackedLength">m; 0 if unknown.</param>
/// <param name="PackedDiameter">m; 0 if unknown.</param>
/// <param name="Mass">kg.</param>
/// <param name="Volume">What it takes from the bay, m³; 0 if unknown.</param>
/// <param name="Basis">How the mass is known.</param>
public sealed record Stowed(
    string Name, double Offset, double PackedLength, double PackedDiameter, double Mass, double Volume, Basis Basis = Basis.Estimated)
{
    /// <summary>Mass, balance and inertia when the part's front is at a station.</summary>
    /// <param name="partFront">m.</param>
    public MassProperties At(double partFront)
    {
        double r = PackedDiameter / 2, across = Mass * (r * r / 4 + PackedLength * PackedLength / 12);
        return new(Mass, partFront + Offset + PackedLength / 2, 0, 0, new(Mass * r * r / 2, across, across), Basis);
    }
}
