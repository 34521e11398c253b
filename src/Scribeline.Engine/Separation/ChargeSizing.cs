namespace Scribeline.Engine.Separation;

/// <summary>The least charge that opens a joint in the worst corner of the tolerances.</summary>
/// <param name="Corner">
/// The ejection in that corner, its charge left 0: largest bay, strongest pins, most friction. The powder as at its best.
/// </param>
/// <param name="ForceRatio">Least ratio of the pressure's force to pins and friction.</param>
/// <param name="DrawOut">Least ratio of the pieces' energy to <paramref name="Pull"/>; 0 for none.</param>
/// <param name="Pull">Energy to draw the gear out of its bay, J; 0 for none.</param>
public sealed record ChargeSizing(EjectionInputs Corner, double ForceRatio, double DrawOut, double Pull)
{
    /// <summary>Largest charge looked at, kg; more is no recovery charge.</summary>
    public const double Most = 0.05;

    // More than enough for a charge that is rounded to a tenth of a gram; a coarser step is refused so often that it takes longer.
    private const double Coarse = 1e-7;

    // A hundredth of a tenth of a gram, or a thousandth of the energy, settles the charge.
    private const double Settled = 1e-6, Near = 1e-3;

    /// <summary>Charge whose customary pressure meets the force ratio, kg; 0 where nothing holds the joint.</summary>
    public double ForForce =>
        StaticCharge.Mass(ForceRatio * (Corner.PinForce + Corner.StaticFriction) / Corner.Area, Corner.FreeVolume);

    /// <summary>
    /// Charge that drives the pieces apart and draws the gear out with the share of the impetus that success is planned with, kg; infinite
    /// where <see cref="Most"/> does not.
    /// </summary>
    public double ForDrawOut
    {
        get
        {
            var wanted = DrawOut * Pull;
            if (wanted <= 0) return 0;
            double low = 0, high = 1e-3, above = Energy(high) - wanted, below = -wanted;
            while (above < 0)
            {
                if (high >= Most) return double.PositiveInfinity;
                (low, high, below) = (high, 2 * high, above);
                above = Energy(high) - wanted;
            }

            // False position in its Illinois form, Dowell and Jarratt, BIT 11 (1971), to well within the step the charge is rounded to.
            for (var kept = 0; high - low > Settled && above > Near * wanted;)
            {
                var next = Math.Clamp(((low * above) - (high * below)) / (above - below), low + (Settled / 2), high - (Settled / 2));
                var miss = Energy(next) - wanted;
                if (miss < 0)
                {
                    (low, below) = (next, miss);
                    if (kept < 0) above /= 2;
                    kept = -1;
                }
                else
                {
                    (high, above) = (next, miss);
                    if (kept > 0) below /= 2;
                    kept = 1;
                }
            }

            return high;
        }
    }

    private double Energy(double mass) =>
        (Corner with { ChargeMass = mass, Powder = Corner.Powder.Scaled(StaticCharge.SuccessShare) }).Fire(Coarse).KineticEnergy;
}
