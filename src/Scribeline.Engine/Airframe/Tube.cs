using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>Body tube.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Front">Station of its front edge, m.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="TubeLength">m.</param>
/// <param name="OuterDiameter">m.</param>
/// <param name="InnerDiameter">m.</param>
public sealed record Tube(string Name, double Front, Material Material, double TubeLength, double OuterDiameter, double InnerDiameter)
    : Part(Name, Front, Material)
{
    /// <summary>Strength of a seam along it over that of its wall, 0 to 1; 1 for none.</summary>
    public double SeamShare { get; init; } = 1;

    /// <inheritdoc/>
    public override double Length => TubeLength;

    /// <inheritdoc/>
    public override ValueList<BodySection> Outside => [new(Name, new(BodyShape.Conical), Front, TubeLength, OuterDiameter, OuterDiameter)];

    /// <inheritdoc/>
    public override RevolutionMoments Shell => RevolutionMoments.Ring(Front, TubeLength, OuterDiameter, InnerDiameter);

    /// <inheritdoc/>
    public override double? BoreAt(double station) => station < Front || station > Rear ? null : InnerDiameter / 2;
}
