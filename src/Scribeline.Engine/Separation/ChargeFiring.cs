using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Separation;

/// <summary>One charge fired alone, as loaded, on the flown day.</summary>
/// <param name="Charge">As loaded.</param>
/// <param name="Bay">It fills.</param>
/// <param name="Retention">Of the joint it opens.</param>
/// <param name="Ahead">Piece ahead of the joint then.</param>
/// <param name="Behind">Piece behind.</param>
/// <param name="Height">Above the pad, m.</param>
/// <param name="Fired">With pins and friction as expected.</param>
/// <param name="Held">With the joint held shut whatever the pressure.</param>
public sealed record ChargeFiring(
    ChargeLoad Charge, Bay Bay, JointRetention Retention, Piece Ahead, Piece Behind, double Height, Ejection Fired, Ejection Held);
