namespace Scribeline.Store.Logs;

/// <summary>A column of an altimeter's file and what it is taken for.</summary>
/// <param name="Index">From 0, left to right.</param>
/// <param name="Name">As its header says; "column 3" without one.</param>
/// <param name="Meaning">What it holds.</param>
/// <param name="Unit">Its unit as read or guessed; empty where it has none.</param>
/// <param name="Guessed">Whether the unit was told by the values, not by words.</param>
public sealed record LogColumn(int Index, string Name, LogMeaning Meaning, string Unit, bool Guessed = false);

/// <summary>What a column holds.</summary>
public enum LogMeaning
{
    /// <summary>Nothing that is used.</summary>
    Other,

    /// <summary>Time.</summary>
    Time,

    /// <summary>Static pressure.</summary>
    Pressure,

    /// <summary>Height as the altimeter shows it.</summary>
    Height,

    /// <summary>Acceleration along the axis.</summary>
    Acceleration,

    /// <summary>Supply voltage.</summary>
    Voltage,

    /// <summary>Whether a channel has fired.</summary>
    Fired,
}
