using MathNet.Numerics.Distributions;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// Drag area of all that hangs and falls, from a steady descent: CdS = 2 m g0/(rho V²) with rho = p/(R T), and its uncertainty by the law of
/// propagation (JCGM 100:2008, 5.1.2 and G.4.1).
/// </summary>
/// <param name="Mass">kg, with standard uncertainty.</param>
/// <param name="Temperature">Of the air, K.</param>
/// <param name="Pressure">Of the air, Pa.</param>
/// <param name="Rate">Downwards, m/s.</param>
/// <param name="RateFreedom">Degrees of freedom of the rate's uncertainty; infinite where it is known.</param>
public sealed record DragAreaEstimate(Estimate Mass, Estimate Temperature, Estimate Pressure, Estimate Rate, double RateFreedom = double.PositiveInfinity)
{
    private const double Gravity = 9.80665;
    private const double GasConstant = Air.AirConstants.GasConstant;

    /// <summary>kg/m³.</summary>
    public double Density => Pressure.Value / (GasConstant * Temperature.Value);

    /// <summary>m².</summary>
    public double Value => 2 * Mass.Value * Gravity / (Density * Rate.Value * Rate.Value);

    /// <summary>What each uncertainty does to the value, m², with its sign: of mass, temperature, pressure and rate.</summary>
    public ValueList<double> Contributions =>
    [
        Value * Mass.Sigma / Mass.Value, Value * Temperature.Sigma / Temperature.Value, -Value * Pressure.Sigma / Pressure.Value, -2 * Value * Rate.Sigma / Rate.Value,
    ];

    /// <summary>Standard uncertainty, m².</summary>
    public double Sigma => Math.Sqrt(Contributions.Sum(c => c * c));

    /// <summary>Effective degrees of freedom (Welch and Satterthwaite).</summary>
    public double Freedom => Math.Pow(Sigma, 4) / (Math.Pow(Contributions[3], 4) / RateFreedom);

    /// <summary>Factor of the expanded uncertainty, 95 %.</summary>
    public double Coverage => double.IsFinite(Freedom) ? StudentT.InvCDF(0, 1, Math.Floor(Freedom), 0.975) : Normal.InvCDF(0, 1, 0.975);

    /// <summary>Expanded uncertainty, 95 %, m².</summary>
    public double Expanded => Coverage * Sigma;

    /// <summary>
    /// Factor for falling into denser air, which brakes: the drag is m (g0 + V²/2H), H = R T/(g0 - R L) the height in which the density changes by e.
    /// </summary>
    public double Unsteady => 1 + (Rate.Value * Rate.Value / (2 * GasConstant * Temperature.Value / (Gravity - (GasConstant * Air.AirConstants.LapseRate))) / Gravity);

    /// <summary>As a value with its standard uncertainty, corrected for the unsteady fall.</summary>
    public Estimate Corrected => new(Value * Unsteady, Sigma * Unsteady);
}
