using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// Coupler tube between two parts, with or without a band round it that shows outside. Only the band adds length: the station of the part is
/// the band's front edge, or the meeting of the two neighbours where there is no band. An altimeter bay is a coupler closed by plates.
/// </summary>
/// <param name="Name">As typed.</param>
/// <param name="Front">Station of the band's front edge, m.</param>
/// <param name="Material">Of the coupler and the band.</param>
/// <param name="TubeLength">Whole length of the coupler tube, m.</param>
/// <param name="OuterDiameter">m.</param>
/// <param name="InnerDiameter">m.</param>
/// <param name="Forward">How far the coupler reaches forward of the band, m.</param>
/// <param name="BandLength">m; 0 for none.</param>
/// <param name="BandDiameter">Outside of the band, m; the band fills the space down to the coupler.</param>
public record Coupler(
    string Name, double Front, Material Material, double TubeLength, double OuterDiameter, double InnerDiameter,
    double Forward, double BandLength, double BandDiameter)
    : Part(Name, Front, Material)
{
    /// <summary>What the band is made of, if not of what the coupler is.</summary>
    public Material? BandMaterial { get; init; }

    /// <inheritdoc/>
    public override double Length => BandLength;

    /// <inheritdoc/>
    public override double Datum => FrontReach;

    /// <summary>How far the coupler reaches aft of the band, m.</summary>
    public double Aft => TubeLength - Forward - BandLength;

    /// <inheritdoc/>
    public override Shoulder Ahead => new(Forward, OuterDiameter, InnerDiameter);

    /// <inheritdoc/>
    public override Shoulder Behind => new(Aft, OuterDiameter, InnerDiameter);

    /// <inheritdoc/>
    public override ValueList<BodySection> Outside =>
        BandLength > 0 ? [new(Name, new(BodyShape.Conical), Front, BandLength, BandDiameter, BandDiameter)] : [];

    /// <inheritdoc/>
    public override RevolutionMoments Shell => TubeShell + BandShell;

    /// <inheritdoc/>
    public override MassProperties Bare =>
        MassProperties.Sum(TubeShell.Filled(Material.Density), BandShell.Filled((BandMaterial ?? Material).Density));

    private RevolutionMoments TubeShell => RevolutionMoments.Ring(FrontReach, TubeLength, OuterDiameter, InnerDiameter);

    private RevolutionMoments BandShell => RevolutionMoments.Ring(Front, BandLength, BandDiameter, OuterDiameter);

    /// <inheritdoc/>
    public override double? BoreAt(double station) => station < FrontReach || station > RearReach ? null : InnerDiameter / 2;
}

/// <summary>Coupler that carries the altimeters between its plates.</summary>
/// <inheritdoc cref="Coupler"/>
public sealed record AltimeterBay(
    string Name, double Front, Material Material, double TubeLength, double OuterDiameter, double InnerDiameter,
    double Forward, double BandLength, double BandDiameter)
    : Coupler(Name, Front, Material, TubeLength, OuterDiameter, InnerDiameter, Forward, BandLength, BandDiameter)
{
    /// <summary>Volume of sled, electronics and batteries between the plates, m³.</summary>
    public double Filled { get; init; }
}
