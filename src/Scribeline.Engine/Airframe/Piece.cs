namespace Scribeline.Engine.Airframe;

/// <summary>What hangs together: a run of neighbouring parts.</summary>
/// <param name="First">Index of the foremost part.</param>
/// <param name="Last">Index of the aftmost part.</param>
public readonly record struct Piece(int First, int Last)
{
    /// <summary>Whether a part belongs to it.</summary>
    public bool Has(int part) => part >= First && part <= Last;
}
