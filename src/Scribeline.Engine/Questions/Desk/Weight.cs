using Scribeline.Engine.Airframe;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>How heavy is it, and where does it balance? Loaded, at burnout, and each piece after each separation.</summary>
public sealed class Weight() : Question("weight", "How heavy is it, and where does it balance?", Place.Desk)
{
    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        var masses = study.Masses;
        Loaded(draft, study, masses);

        if (study.HasMotor)
        {
            draft.Find("mass at burnout", study.Burnt.Mass, Unit.Mass);
            draft.Find("balance at burnout, aft of the tip", study.Burnt.Station, Unit.Length);
        }
        else
        {
            draft.Miss("motor: a motor file, or its data");
        }

        foreach (var piece in study.LandingPieces)
        {
            var properties = study.PieceProperties(piece);
            draft.Find($"{study.Vehicle.NameOf(piece)}: mass after it comes apart", properties.Mass, Unit.Mass);
            draft.Find($"{study.Vehicle.NameOf(piece)}: balance aft of its own front", properties.Station - study.Vehicle.Parts[piece.First].Front, Unit.Length);
        }

        foreach (var open in study.Rocket.Open) draft.Miss(open.ToString());
        foreach (var assumed in study.Rocket.Assumed) draft.Note(assumed.Message);
        foreach (var difference in masses.Differences) Weighed(draft, study, difference);
        if (masses.Differences.Count == 0) draft.Note("The finished rocket has not been weighed: weigh and balance it without motor and write it under records.");
        return draft.Done();
    }

    private static void Loaded(Draft draft, Study study, MassBreakdown masses)
    {
        var w = draft.Working;
        List<string> m = [], x = [];
        for (var i = 0; i < masses.Parts.Count; i++)
        {
            var total = masses.Parts[i].Total;
            m.Add($"m_{i + 1}");
            x.Add($"x_{i + 1}");
            var known = total.Basis.ToString().ToLowerInvariant();
            w.Given(m[^1], total.Mass, "kg", $"mass of {study.Vehicle.Parts[i].Name}, with what is fixed and stowed in it ({known})", "design: typed mass, or volume times density");
            w.Given(x[^1], total.Station, "m", "its balance aft of the tip", "design");
        }

        if (study.HasMotor)
        {
            m.Add("m_m");
            x.Add("x_m");
            w.Given("m_m", study.LoadedMotor.Mass, "kg", $"mass of the motor {study.Motor.Name}, loaded", "motor file");
            w.Given("x_m", study.LoadedMotor.Station, "m", "its balance aft of the tip", "motor file, in its place");
        }

        var mass = w.Sum("m", m, "kg", "mass on the pad", "sum");
        var balance = w.Mean("x", m, x, "m", "balance aft of the tip", "centre of mass");
        var loaded = study.Loaded;
        w.Simulated("I_x", loaded.Inertia.Xx, "kg·m²", "moment of inertia about the long axis", "closed form of each solid, parallel axes");
        w.Simulated("I_y", loaded.Inertia.Yy, "kg·m²", "moment of inertia across it", "closed form of each solid, parallel axes");
        draft.Find("mass on the pad", mass, Unit.Mass);
        draft.Find("balance on the pad, aft of the tip", balance, Unit.Length);
        draft.Find("inertia about the long axis", loaded.Inertia.Xx, Unit.Inertia);
        draft.Find("inertia across it", loaded.Inertia.Yy, Unit.Inertia);
        draft.Find("balance off the centreline", Sqrt((loaded.OffsetY * loaded.OffsetY) + (loaded.OffsetZ * loaded.OffsetZ)), Unit.Length);
    }

    private static void Weighed(Draft draft, Study study, WeighingDifference difference)
    {
        var name = study.Vehicle.NameOf(difference.Weighing.Piece);
        if (difference.Weighing.Mass is { } weighed)
        {
            var off = Abs(weighed - difference.SummedMass) / weighed;
            draft.Find($"{name}: weighed against the sum of its parts", off, Unit.Share, "weight.agreement");
        }

        if (!difference.Applied) draft.Note($"{name} weighs less than what is known to be in it: weigh it again, or correct the parts.");
    }
}
