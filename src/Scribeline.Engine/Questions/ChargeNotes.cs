namespace Scribeline.Engine.Questions;

/// <summary>Cautions that stand wherever a charge or its loads are shown.</summary>
internal static class ChargeNotes
{
    /// <summary>Adds those of any charge.</summary>
    public static void OfCharges(Draft draft)
    {
        draft.Note(Cautions.Powder);
        draft.Note(Cautions.GroundTest);
        draft.Note(Cautions.PowderLaw);
    }

    /// <summary>Adds those of any load or strength.</summary>
    public static void OfStrength(Draft draft) => draft.Note(Cautions.Strength);

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
