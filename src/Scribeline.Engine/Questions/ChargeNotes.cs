namespace Scribeline.Engine.Questions;

/// <summary>Cautions that stand wherever a charge or its loads are shown.</summary>
internal static class ChargeNotes
{
    /// <summary>Adds those of any charge.</summary>
    public static void OfCharges(Draft draft)
    {
        draft.Note("Black powder and igniters can injure. Handle small amounts, away from flame, static and powered circuits, with eye and ear protection, and only where you are permitted to.");
        draft.Note("Confirm by a ground test in flight configuration, remotely fired, with people clear of both ends. Test again after any change of volume, pins or fit.");
        draft.Note("Buying, storing and carrying black powder and igniters is regulated and differs by place. This program gives no legal advice; ask the authority or a licensed person.");
    }

    /// <summary>Adds those of any load or strength.</summary>
    public static void OfStrength(Draft draft) =>
        draft.Note("Strength values are nominal or from the source named; real parts vary. Test a sample or use a larger margin when a failure could hurt someone.");

    /// <summary>Names what the charges lack; true where a charge cannot be fired.</summary>
    public static void Missing(Draft draft, Study study)
    {
        foreach (var missing in study.Rocket.Separation.Missing) draft.Miss(missing);
        if (study.Rocket.Separation.Charges.Count == 0) draft.Miss("charges: an ejection charge");
        foreach (var charge in study.Rocket.Separation.Charges)
        {
            if (study.Rocket.Separation.Of(charge.Joint) is null) continue;
            if (study.BayOf(charge) is not { FreeVolume: > 0 }) draft.Miss($"stowed: what fills the bay of {charge.Name} leaves no room for its gas");
            else if (charge.Mass is null) draft.Miss($"charges: {charge.Name}: mass, which could not be chosen");
        }
    }
}
