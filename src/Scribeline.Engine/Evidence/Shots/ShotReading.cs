namespace Scribeline.Engine.Evidence.Shots;

/// <summary>A value read off a shot.</summary>
/// <param name="Value">SI, more than 0.</param>
/// <param name="Share">Its standard uncertainty over itself, more than 0.</param>
public readonly record struct ShotReading(double Value, double Share)
{
    /// <summary>Share taken for a speed typed without a tolerance: an assumption.</summary>
    public const double UsualSpeed = 0.10;

    /// <summary>Share taken for a pressure typed without a tolerance: an assumption.</summary>
    public const double UsualPressure = 0.10;

    /// <summary>
    /// A speed from pictures, v = d f/n. The first and the last frame are each late by up to one, evenly spread, so the count is uncertain by
    /// √(1/6) of a frame (difference of two rectangular distributions, JCGM 100:2008, 4.3.7).
    /// </summary>
    /// <param name="distance">m.</param>
    /// <param name="distanceShare">Standard uncertainty of the distance over itself.</param>
    /// <param name="frames">1 or more.</param>
    /// <param name="rate">Hz.</param>
    public static ShotReading Filmed(double distance, double distanceShare, int frames, double rate) =>
        new(distance * rate / frames, Math.Sqrt((distanceShare * distanceShare) + (1 / (6.0 * frames * frames))));
}
