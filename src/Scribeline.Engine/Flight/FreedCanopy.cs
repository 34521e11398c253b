using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>A canopy that left its bay.</summary>
/// <param name="Canopy">The canopy.</param>
/// <param name="LineStretch">s after ignition.</param>
/// <param name="FillTime">s; null before line stretch.</param>
internal readonly record struct FreedCanopy(FlightCanopy Canopy, double LineStretch, double? FillTime)
{
    /// <summary>Frees canopies at a time; a second charge frees only what the first has not.</summary>
    public static void Free(List<FreedCanopy> canopies, ValueList<FlightCanopy> freed, double time)
    {
        foreach (FlightCanopy canopy in freed)
        {
            if (canopies.Exists(c => c.Canopy.Name == canopy.Name && c.Canopy.Piece == canopy.Piece)) continue;
            canopies.Add(new(canopy, time + canopy.LineStretchDelay, null));
        }
    }
}
