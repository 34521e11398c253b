using Microsoft.AspNetCore.Components;

namespace Scribeline.App.Components;

/// <summary>Text as typed, with the version of the design it was typed into.</summary>
public sealed class TypedEventArgs : EventArgs
{
    /// <summary>The whole text.</summary>
    public string Value { get; set; } = "";

    /// <summary>The version that was shown when it was typed.</summary>
    public int Version { get; set; }

    /// <summary>Number of the event in its window, from 1.</summary>
    public int Number { get; set; }

    /// <summary>Letters before the caret.</summary>
    public int At { get; set; }
}

/// <summary>Events of our own pages.</summary>
[EventHandler("oncaret", typeof(TypedEventArgs), enableStopPropagation: true, enablePreventDefault: false)]
[EventHandler("ontyped", typeof(TypedEventArgs), enableStopPropagation: true, enablePreventDefault: false)]
[EventHandler("onplaced", typeof(PlacedEventArgs), enableStopPropagation: true, enablePreventDefault: false)]
public static class EventHandlers;
