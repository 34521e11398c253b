namespace Scribeline.Engine.Tables;

/// <summary>A material. Elastic values are those along the part's main direction (axis of a tube, face grain of a plate).</summary>
/// <param name="Name">As typed in a design.</param>
/// <param name="Density">kg/m³, more than 0.</param>
/// <param name="Modulus">Young's modulus, Pa; null where unknown.</param>
/// <param name="ShearModulus">In the plane of the sheet, Pa; null where unknown.</param>
/// <param name="Strength">Tensile strength (bending strength for wood), Pa; null where unknown.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record Material(string Name, double Density, double? Modulus, double? ShearModulus, double? Strength, string Source);
