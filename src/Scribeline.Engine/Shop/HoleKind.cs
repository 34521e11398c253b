namespace Scribeline.Engine.Shop;

/// <summary>What a hole is for.</summary>
public enum HoleKind
{
    /// <summary>Shear pin.</summary>
    Pin,

    /// <summary>Screw of a joint that opens on the bench.</summary>
    Screw,

    /// <summary>Static port of an altimeter bay.</summary>
    StaticPort,

    /// <summary>Vent of a bay.</summary>
    Vent,

    /// <summary>Access to a switch.</summary>
    Switch,

    /// <summary>Screw of a rail guide.</summary>
    RailGuide,
}
