using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>Cautions, in the words every face shows.</summary>
public static class Cautions
{
    /// <summary>Stands with everything.</summary>
    public const string Everything =
        "Computed from the inputs shown. It is an aid to judgement, not permission to fly. Local law, the safety code in force at the launch, "
        + "and the range safety officer take precedence over this result.";

    /// <summary>With any charge.</summary>
    public const string Powder =
        "Black powder and igniters can injure. Handle small amounts, away from flame, static and powered circuits, with eye and ear protection, and only where you are permitted to.";

    /// <summary>With any charge.</summary>
    public const string GroundTest =
        "Confirm by a ground test in flight configuration, remotely fired, with people clear of both ends. Test again after any change of volume, pins or fit.";

    /// <summary>With any amount of powder.</summary>
    public const string PowderLaw =
        "Buying, storing and carrying black powder and igniters is regulated and differs by place. This program gives no legal advice; ask the authority or a licensed person.";

    /// <summary>With any load or strength.</summary>
    public const string Strength =
        "Strength values are nominal or from the source named; real parts vary. Test a sample or use a larger margin when a failure could hurt someone.";

    /// <summary>With any height, landing or drift.</summary>
    public const string Estimate =
        "Weather, motor lot and assembly differ from the model. Treat heights and landings as estimates with the spread shown; a recovery that fails lands elsewhere and faster.";

    /// <summary>With lists for the pad.</summary>
    public const string Pad = "Keep every energetic circuit inhibited until the rocket is vertical on the pad and only the people needed are there.";

    /// <summary>With lists for recovery.</summary>
    public const string Recovery = "Treat a landed rocket as armed until its power is off and its charges are shown safe.";

    /// <summary>With batteries.</summary>
    public const string Batteries = "Damaged lithium cells can burn later. Isolate them; do not fly or charge them.";

    /// <summary>With any energy at landing.</summary>
    public const string Landing = "The energy limit shown is a programme limit for hardware, not a level that is harmless to people.";

    /// <summary>All of them, in the order to print.</summary>
    public static ValueList<string> All => [Everything, Powder, GroundTest, PowderLaw, Strength, Estimate, Pad, Recovery, Batteries, Landing];
}
