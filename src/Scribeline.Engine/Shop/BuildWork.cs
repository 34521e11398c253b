namespace Scribeline.Engine.Shop;

/// <summary>Kinds of work in building a rocket, about in the order they come; what each is stands in the table of works.</summary>
public enum BuildWork
{
    /// <summary>A part as it came.</summary>
    Measure,

    /// <summary>A joint slid together dry.</summary>
    FitJoint,

    /// <summary>The scribe line.</summary>
    MarkDatum,

    /// <summary>A row of holes.</summary>
    MarkHoles,

    /// <summary>A row of holes.</summary>
    Drill,

    /// <summary>A row of holes.</summary>
    Deburr,

    /// <summary>A row of holes.</summary>
    Countersink,

    /// <summary>A row of holes.</summary>
    Tap,

    /// <summary>Captive nuts behind a row of holes.</summary>
    BondNuts,

    /// <summary>A wait.</summary>
    CureNuts,

    /// <summary>For fins with tabs.</summary>
    CutSlots,

    /// <summary>What will be bonded.</summary>
    DryFit,

    /// <summary>Faces of a bond.</summary>
    Scuff,

    /// <summary>Faces of a bond.</summary>
    Clean,

    /// <summary>Round a bond.</summary>
    Mask,

    /// <summary>Adhesive.</summary>
    Mix,

    /// <summary>The bond itself.</summary>
    Bond,

    /// <summary>Squeeze-out.</summary>
    Wipe,

    /// <summary>Tape.</summary>
    Unmask,

    /// <summary>A wait, to handling.</summary>
    Cure,

    /// <summary>A wait, from handling to full strength.</summary>
    FullCure,

    /// <summary>Rods and bolts of a bay.</summary>
    FitHardware,

    /// <summary>A wait.</summary>
    CureLocker,

    /// <summary>Sled and electronics.</summary>
    Wire,

    /// <summary>The outside.</summary>
    Paint,

    /// <summary>A wait.</summary>
    DryPaint,

    /// <summary>As it will fly.</summary>
    TestFit,

    /// <summary>A part, or what is stowed.</summary>
    Weigh,

    /// <summary>The whole.</summary>
    Balance,

    /// <summary>The end of building: powder may come into the room.</summary>
    Ready,
}
