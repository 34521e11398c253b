namespace Scribeline.App.Terminal;

/// <summary>What stands beneath every set of answers.</summary>
internal static class Cautions
{
    /// <summary>Printed with everything.</summary>
    public const string Everything =
        "Computed from the inputs shown. It is an aid to judgement, not permission to fly. Local law, the safety code in force at the launch, "
        + "and the range safety officer take precedence over this result.";
}
