namespace Scribeline.Engine.Recovery;

/// <summary>An opening as integrated.</summary>
/// <param name="Inputs">What it began with.</param>
/// <param name="Peak">Greatest pull of the canopy, N.</param>
/// <param name="PeakTime">s after line stretch.</param>
/// <param name="FillTime">s: of the first filling where it is reefed.</param>
/// <param name="FullTime">s after line stretch at which it is first full.</param>
/// <param name="SpeedWhenFull">m/s.</param>
/// <param name="HeightWhenFull">Lost since line stretch, m.</param>
/// <param name="EnergyLost">What the balance of motion, height and drag lacks, J: a measure of its accuracy; NaN with added mass.</param>
public sealed record Opening(
    OpeningInputs Inputs, double Peak, double PeakTime, double FillTime, double FullTime, double SpeedWhenFull, double HeightWhenFull, double EnergyLost);
