namespace Scribeline.Engine.Separation;

/// <summary>A closed bay with holes to the outside.</summary>
/// <param name="Volume">Left for the air, m³, more than 0.</param>
/// <param name="Area">Of all holes together, m², 0 or more.</param>
/// <param name="Temperature">Of the air in the bay and through the holes, K.</param>
/// <param name="DischargeCoefficient">Of the holes, see <see cref="Orifice.SharpHole"/>.</param>
/// <param name="Exponent">1 where the air keeps its temperature (slow, conservative), 1.4 where no heat reaches it.</param>
public sealed record BreathingBay(
    double Volume, double Area, double Temperature, double DischargeCoefficient = Orifice.SharpHole, double Exponent = 1);
