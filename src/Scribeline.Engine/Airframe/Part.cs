using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// A part of the stack, nose to tail. Its front is the station where its own length begins; shoulders and coupler ends that slide into a
/// neighbour reach beyond it and add no length.
/// </summary>
/// <param name="Name">As typed, for messages.</param>
/// <param name="Front">Station of the front, m.</param>
/// <param name="Material">What it is made of.</param>
public abstract record Part(string Name, double Front, Material Material)
{
    /// <summary>What is fixed to it: plates, rings, fins, mount, guides, rods.</summary>
    public ValueList<Fitting> Fittings { get; init; } = ValueList<Fitting>.Empty;

    /// <summary>What lies in it loose and leaves it when it opens: canopies, cords, protectors.</summary>
    public ValueList<Stowed> Stowed { get; init; } = ValueList<Stowed>.Empty;

    /// <summary>Weighed as built, with its fittings, without what is stowed in it and without the motor; null if never weighed.</summary>
    public Weighing? Weighing { get; init; }

    /// <summary>Where measurements on the part itself begin, m: its front, or the forward end of a coupler's tube.</summary>
    public virtual double Datum => Front;

    /// <summary>What it adds to the length of the rocket, m.</summary>
    public abstract double Length { get; }

    /// <summary>Station of its rear end, m.</summary>
    public double Rear => Front + Length;

    /// <summary>What slides into the part ahead; length 0 for nothing.</summary>
    public virtual Shoulder Ahead => default;

    /// <summary>What slides into the part behind; length 0 for nothing.</summary>
    public virtual Shoulder Behind => default;

    /// <summary>Station where its material begins, shoulders included, m.</summary>
    public double FrontReach => Front - Ahead.Length;

    /// <summary>Station where its material ends, shoulders included, m.</summary>
    public double RearReach => Rear + Behind.Length;

    /// <summary>Station where the inside begins to be hollow, m.</summary>
    public virtual double CavityFront => FrontReach;

    /// <summary>What the air sees of it, in order; empty for a part that lies wholly inside others.</summary>
    public abstract ValueList<BodySection> Outside { get; }

    /// <summary>Material of the bare part, without fittings.</summary>
    public abstract RevolutionMoments Shell { get; }

    /// <summary>Inner radius at a station, m; 0 where it is solid, null where the part does not reach.</summary>
    /// <param name="station">m.</param>
    public abstract double? BoreAt(double station);

    /// <summary>Inner radius by station, m, as by <see cref="BoreAt"/>, for asking at many stations.</summary>
    public virtual Func<double, double?> Inside() => BoreAt;

    /// <summary>The bare part at its material's density.</summary>
    public virtual MassProperties Bare => Shell.Filled(Material.Density);
}

/// <summary>A weighing and balancing of a part or of something built of parts.</summary>
/// <param name="Mass">kg; null if only balanced.</param>
/// <param name="Balance">Centre of mass aft of the part's <see cref="Part.Datum"/>, m; null if only weighed.</param>
/// <param name="Basis">How it is known.</param>
public sealed record Weighing(double? Mass, double? Balance, Basis Basis = Basis.Measured);

/// <summary>Something that slides into the neighbouring part.</summary>
/// <param name="Length">m; 0 for none.</param>
/// <param name="OuterDiameter">m.</param>
/// <param name="InnerDiameter">m; 0 if solid.</param>
public readonly record struct Shoulder(double Length, double OuterDiameter, double InnerDiameter);
