using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>Transition between two diameters, or a boat tail; hollow or solid, with a shoulder at either end.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Front">Station of the front of its exposed surface, m.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Profile">Its profile.</param>
/// <param name="ExposedLength">m.</param>
/// <param name="FrontDiameter">m.</param>
/// <param name="RearDiameter">m.</param>
/// <param name="Wall">Thickness square to the surface, m; 0 for a solid part.</param>
/// <param name="FrontShoulder">Slides into the part ahead.</param>
/// <param name="RearShoulder">Slides into the part behind.</param>
public sealed record Transition(
    string Name, double Front, Material Material, BodyProfile Profile, double ExposedLength, double FrontDiameter, double RearDiameter, double Wall,
    Shoulder FrontShoulder = default, Shoulder RearShoulder = default)
    : Part(Name, Front, Material)
{
    /// <inheritdoc/>
    public override double Length => ExposedLength;

    /// <inheritdoc/>
    public override Shoulder Ahead => FrontShoulder;

    /// <inheritdoc/>
    public override Shoulder Behind => RearShoulder;

    /// <inheritdoc/>
    public override ValueList<BodySection> Outside => [Section];

    /// <inheritdoc/>
    public override RevolutionMoments Shell =>
        Section.Moments() - Section.Cavity(Wall)
        + RevolutionMoments.Ring(FrontReach, FrontShoulder.Length, FrontShoulder.OuterDiameter, FrontShoulder.InnerDiameter)
        + RevolutionMoments.Ring(Rear, RearShoulder.Length, RearShoulder.OuterDiameter, RearShoulder.InnerDiameter);

    private BodySection Section => new(Name, Profile, Front, ExposedLength, FrontDiameter, RearDiameter);

    /// <inheritdoc/>
    public override double? BoreAt(double station) =>
        station < FrontReach || station > RearReach ? null
        : station < Front ? FrontShoulder.InnerDiameter / 2
        : station <= Rear ? Section.InnerRadiusAt(station, Wall)
        : RearShoulder.InnerDiameter / 2;
}
