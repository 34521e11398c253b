using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Shop;

/// <summary>A bonded face or a set of like ones.</summary>
/// <param name="Name">What is bonded.</param>
/// <param name="Kind">How it lies.</param>
/// <param name="Part">Index of the part it belongs to.</param>
/// <param name="Joint">Index of the joint; -1 for none.</param>
/// <param name="Owner">Name of the fitting it holds; empty for none.</param>
/// <param name="Diameter">Of a round face, m; NaN for fin roots.</param>
/// <param name="Length">Along the load, m; of a fin root its chord.</param>
/// <param name="Gap">Thickness of the line, m; 0 where faces are of one size.</param>
/// <param name="Count">Like faces that share the load.</param>
/// <param name="Area">Of all of them, m².</param>
/// <param name="Volume">Of adhesive in line and fillets, m³.</param>
/// <param name="Wood">Whether one of the faces is wood.</param>
/// <param name="Adhesive">null where not typed or not known.</param>
/// <param name="At">Where to type the adhesive.</param>
/// <param name="Mask">What to mask or keep free.</param>
public sealed record BondLine(
    string Name, BondKind Kind, int Part, int Joint, string Owner, double Diameter, double Length, double Gap, int Count, double Area, double Volume, bool Wood,
    Adhesive? Adhesive, string At, string Mask)
{
    /// <summary>Radius of its fillets, m; 0 for none.</summary>
    public double Fillet { get; init; }
}

/// <summary>How a bond lies.</summary>
public enum BondKind
{
    /// <summary>Two parts of the stack, one in the other.</summary>
    Joint,

    /// <summary>Band on a coupler.</summary>
    Band,

    /// <summary>Rings in a tube.</summary>
    RingsInTube,

    /// <summary>Rings on a motor mount.</summary>
    RingsOnMount,

    /// <summary>Plate in a tube.</summary>
    Plate,

    /// <summary>Fins on a tube.</summary>
    FinRoots,
}

/// <summary>How the bench works.</summary>
/// <param name="Temperature">K; null where that of the day counts.</param>
/// <param name="Prepared">Share of the tested strength that the preparation leaves; null where none is typed.</param>
/// <param name="Waste">Adhesive mixed over adhesive needed.</param>
/// <param name="Absorbed">Share of sunlight the skin takes; null where no colour is typed.</param>
/// <param name="Paper">Thickness of the paper for templates, m.</param>
public sealed record BenchPractice(double? Temperature, double? Prepared, double Waste, double? Absorbed, double Paper)
{
    /// <summary>Where nothing is typed; the waste is the middle of 1.3 to 1.5, common practice.</summary>
    public static BenchPractice Usual { get; } = new(null, null, 1.4, null, WrapTemplate.OfficePaper);

    /// <summary>Length of an evening of building, s.</summary>
    public double Evening { get; init; } = 3 * 3600;
}
