namespace Scribeline.Engine.Recovery;

/// <summary>Two channels that do the same, and what tests prove. Beta-factor model of IEC 61508-6 and NUREG/CR-4780 (from memory).</summary>
public static class ChannelReliability
{
    /// <summary>Probability that both channels fail: ((1 - β) q)² + β q.</summary>
    /// <param name="channel">q of one, 0 to 1.</param>
    /// <param name="common">β: share of its failures that takes the other with it, 0 to 1.</param>
    public static double BothFail(double channel, double common) => Math.Pow((1 - common) * channel, 2) + (common * channel);

    /// <summary>Reliability that a number of passes without a failure demonstrates: (1 - c)^(1/N).</summary>
    /// <param name="passes">N, 1 or more.</param>
    /// <param name="confidence">c, 0 to 1.</param>
    public static double Demonstrated(int passes, double confidence) => Math.Pow(1 - confidence, 1.0 / passes);

    /// <summary>Passes without a failure that demonstrate a reliability.</summary>
    /// <param name="reliability">Between 0 and 1.</param>
    /// <param name="confidence">0 to 1.</param>
    public static int PassesFor(double reliability, double confidence) => (int)Math.Ceiling(Math.Log(1 - confidence) / Math.Log(reliability));
}
