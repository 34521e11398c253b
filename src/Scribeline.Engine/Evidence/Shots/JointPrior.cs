namespace Scribeline.Engine.Evidence.Shots;

/// <summary>
/// What is held of a charge and a joint before any shot: the effectiveness of the powder (its share of the customary impetus, the same for
/// every shot of a bay) and the strength of the hold (its share of the nominal one), each log-normal and independent of the other, and how
/// much one shot differs from the next.
/// </summary>
/// <param name="PowderSpread">Standard deviation of ln of the effectiveness, about a median of 1; more than 0.</param>
/// <param name="PowderScatter">Standard deviation of ln of the effectiveness from shot to shot; more than 0.</param>
/// <param name="HoldMiddle">ln of the median strength.</param>
/// <param name="HoldSpread">Standard deviation of ln of the strength; 0 where it is known.</param>
public sealed record JointPrior(double PowderSpread, double PowderScatter, double HoldMiddle, double HoldSpread)
{
    /// <summary>Spread of the effectiveness where nothing has been fired: an assumption, nine of ten between 0.56 and 1.78.</summary>
    public const double UsualSpread = 0.35;

    /// <summary>Scatter from shot to shot: an assumption.</summary>
    public const double UsualScatter = 0.15;

    /// <summary>Quantile of the normal distribution for one side of 5 %.</summary>
    public const double FivePerCent = 1.6448536269514722;

    /// <summary>How far the computed speed or pressure may be off, as a share, with the right effectiveness: an assumption.</summary>
    public double ModelShare { get; init; } = 0.10;

    /// <summary>A prior whose hold lies between two bounds in nine of ten cases.</summary>
    /// <param name="least">N, 5 % below.</param>
    /// <param name="nominal">N.</param>
    /// <param name="most">N, 5 % above.</param>
    public static JointPrior Between(double least, double nominal, double most)
    {
        // A hold that may be nothing at all has no logarithm: a tenth of the most is as little as is looked at.
        var low = Math.Max(least, 0.1 * most);
        return nominal <= 0 || most <= low
            ? new(UsualSpread, UsualScatter, 0, 0)
            : new(UsualSpread, UsualScatter, Math.Log(Math.Sqrt(low * most) / nominal), Math.Log(most / low) / (2 * FivePerCent));
    }
}
