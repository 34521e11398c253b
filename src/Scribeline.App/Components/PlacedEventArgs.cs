namespace Scribeline.App.Components;

/// <summary>Where something on a plate was put.</summary>
public sealed class PlacedEventArgs : EventArgs
{
    /// <summary>Name of the group.</summary>
    public string Group { get; set; } = "";

    /// <summary>From the middle of the plate, mm.</summary>
    public double From { get; set; }

    /// <summary>Clock angle, rad.</summary>
    public double Clock { get; set; }

    /// <summary>Whether on finer steps.</summary>
    public bool Fine { get; set; }
}
