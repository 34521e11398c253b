using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>Nose cone, hollow or solid, with a shoulder behind.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Front">Station of the tip, m.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Profile">Its profile.</param>
/// <param name="ExposedLength">Tip to the shoulder, m.</param>
/// <param name="OuterDiameter">At its base, m.</param>
/// <param name="Wall">Thickness square to the surface, m; 0 for a solid nose.</param>
/// <param name="Shoulder">Slides into the part behind.</param>
public sealed record NoseCone(
    string Name, double Front, Material Material, BodyProfile Profile, double ExposedLength, double OuterDiameter, double Wall, Shoulder Shoulder)
    : Part(Name, Front, Material)
{
    /// <inheritdoc/>
    public override double Length => ExposedLength;

    /// <inheritdoc/>
    public override Shoulder Behind => Shoulder;

    /// <inheritdoc/>
    public override double CavityFront => Wall > 0 ? Math.Min(Section.CavityFront(Wall), Rear) : Shoulder.InnerDiameter > 0 ? Rear : RearReach;

    /// <inheritdoc/>
    public override ValueList<BodySection> Outside => [Section];

    /// <inheritdoc/>
    public override RevolutionMoments Shell =>
        Section.Moments() - Section.Cavity(Wall) + RevolutionMoments.Ring(Rear, Shoulder.Length, Shoulder.OuterDiameter, Shoulder.InnerDiameter);

    private BodySection Section => new(Name, Profile, Front, ExposedLength, 0, OuterDiameter);

    /// <inheritdoc/>
    public override double? BoreAt(double station) =>
        station < Front || station > RearReach ? null
        : station <= Rear ? Section.InnerRadiusAt(station, Wall)
        : Shoulder.InnerDiameter / 2;

    /// <inheritdoc/>
    public override Func<double, double?> Inside()
    {
        var hollow = Section.Inside(Wall);
        return station => station < Front || station > RearReach ? null
            : station <= Rear ? hollow(station)
            : Shoulder.InnerDiameter / 2;
    }
}
