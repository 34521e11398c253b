using Scribeline.Engine.Air;

namespace Scribeline.Engine.Separation;

/// <summary>
/// Closed forms of what pulls a joint apart before it should: unlike drag, trapped air, a tumble, the pull of a cord. Positive pulls apart, N.
/// Derived from Newton's law for the parts ahead of and behind the joint; the gas law for trapped air.
/// </summary>
public static class EarlyParting
{
    /// <summary>Pull of unlike drag: (m_f/M)(D − T) − D_f. Gravity pulls on every part alike and cancels.</summary>
    /// <param name="massAhead">Of what is ahead of the joint, kg.</param>
    /// <param name="mass">Of everything, kg.</param>
    /// <param name="drag">Of everything, N.</param>
    /// <param name="dragAhead">Of what is ahead, N.</param>
    /// <param name="thrust">At the tail, N.</param>
    public static double OfDrag(double massAhead, double mass, double drag, double dragAhead, double thrust = 0) =>
        (massAhead / mass * (drag - thrust)) - dragAhead;

    /// <summary>Pressure difference of a bay sealed at one pressure and brought to another, Pa, its air warmed in place.</summary>
    /// <param name="sealedAt">Pa.</param>
    /// <param name="outside">Pa.</param>
    /// <param name="temperature">When sealed, K.</param>
    /// <param name="warming">K; negative for cooling.</param>
    public static double OfTrappedAir(
        double sealedAt, double outside, double temperature = AirConstants.SeaLevelTemperature, double warming = 0) =>
        (sealedAt * (1 + (warming / temperature))) - outside;

    /// <summary>Pull of a tumble: m ω² r.</summary>
    /// <param name="mass">Of the part flung outwards, kg.</param>
    /// <param name="rate">rad/s.</param>
    /// <param name="arm">From the common centre of mass to the part's, m.</param>
    public static double OfTumble(double mass, double rate, double arm) => mass * rate * rate * arm;

    /// <summary>Pull of a cord on the other end of a body: what lies beyond the joint wants to go on, and what is stowed leans on it.</summary>
    /// <param name="cordForce">N.</param>
    /// <param name="mass">Of the body the cord pulls, kg.</param>
    /// <param name="massBeyond">Of the part beyond the joint and of what is stowed against it, kg.</param>
    public static double OfCord(double cordForce, double mass, double massBeyond) => massBeyond * cordForce / mass;
}
