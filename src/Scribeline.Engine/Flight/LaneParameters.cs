namespace Scribeline.Engine.Flight;

/// <summary>What each lane flies with, by parameter and lane.</summary>
/// <param name="width">Lanes.</param>
/// <param name="canopies">Canopies that may fill at once.</param>
internal sealed class LaneParameters(int width, int canopies)
{
    /// <summary>Numbers of one lane.</summary>
    public const int Table = 0, Gusts = 1, Thrust = 2, Impulse = 3, Axial = 4, Normal = 5, CentreShift = 6, Friction = 7,
        RailEast = 8, RailNorth = 9, RailUp = 10, AftGuide = 11, Burning = 12, BodyMass = 13, DragArea = 14, Mass = 15, Canopies = Mass + 16;

    /// <summary>Numbers of one canopy that fills: see <see cref="Inflation"/>.</summary>
    public const int Stretched = 0, PerSecond = 1, StartRoot = 2, RootGrowth = 3, HalfExponent = 4, Filling = 5;

    private readonly double[] values = new double[(Canopies + (Filling * canopies)) * width];

    /// <summary>Lanes.</summary>
    public int Width => width;

    /// <summary>Canopies that may fill at once.</summary>
    public int CanopyCount => canopies;

    /// <summary>One parameter of all lanes.</summary>
    public ReadOnlySpan<double> this[int parameter] => values.AsSpan(parameter * width, width);

    /// <summary>One parameter of one lane.</summary>
    public void Set(int parameter, int lane, double value) => values[(parameter * width) + lane] = value;

    /// <summary>Puts a flight into a lane, as it is now.</summary>
    public void Set(int lane, EnsembleFlight flight)
    {
        flight.Constants.CopyTo(this, lane);
        Set(Burning, lane, flight.IsBurning ? 1 : 0);
        Set(BodyMass, lane, flight.BodyMass);
        var (open, slot) = (flight.BodyDragArea, 0);
        foreach (var canopy in flight.Canopies)
        {
            if (canopy.FillTime is not { } fill) continue;
            if (canopy.LineStretch + fill <= flight.Time) open += canopy.Canopy.DragArea;
            else Fill(slot++, lane, canopy, fill);
        }

        Set(DragArea, lane, open);
        for (; slot < canopies; slot++)
        {
            for (var i = 0; i < Filling; i++) Set(Canopies + (Filling * slot) + i, lane, 0);
        }
    }

    private void Fill(int slot, int lane, FreedCanopy canopy, double fill)
    {
        var at = Canopies + (Filling * slot);
        var start = Math.Sqrt(canopy.Canopy.InitialFraction * canopy.Canopy.DragArea);
        Set(at + Stretched, lane, canopy.LineStretch);
        Set(at + PerSecond, lane, 1 / fill);
        Set(at + StartRoot, lane, start);
        Set(at + RootGrowth, lane, Math.Sqrt(canopy.Canopy.DragArea) - start);
        Set(at + HalfExponent, lane, canopy.Canopy.GrowthExponent / 2);
    }
}
