using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>Masses of the parts of a vehicle, without motor.</summary>
/// <param name="Parts">In the order of the vehicle's parts.</param>
/// <param name="Differences">What each weighing of the whole or of a piece differed by, in the order they were applied.</param>
public sealed record MassBreakdown(ValueList<PartMass> Parts, ValueList<WeighingDifference> Differences)
{
    /// <summary>Mass properties of a piece, without motor.</summary>
    /// <param name="piece">Which parts.</param>
    /// <param name="stowed">Whether what is stowed is aboard.</param>
    public MassProperties Of(Piece piece, bool stowed = true) => MassProperties.Sum(Items(Parts, piece, stowed));

    /// <summary>
    /// Weighs part by part, then lets the weighings of pieces rule, the smaller piece first: the weighing's surplus is laid on the parts still
    /// estimated, in proportion to their mass, and those parts are moved together along the axis until the balance agrees. Where nothing in the
    /// piece is estimated it is laid on everything. Mass and balance then match the weighing exactly.
    /// </summary>
    internal static MassBreakdown Of(Vehicle vehicle)
    {
        PartMass[] parts = [.. vehicle.Parts.Select(PartMass.Of)];
        List<WeighingDifference> differences = [];
        foreach (PieceWeighing weighing in vehicle.Weighings.OrderBy(w => w.Piece.Last - w.Piece.First))
        {
            differences.Add(Apply(weighing, parts, vehicle.Parts[weighing.Piece.First].Datum));
        }

        return new(parts.ToValueList(), differences.ToValueList());
    }

    private static WeighingDifference Apply(PieceWeighing weighing, PartMass[] parts, double datum)
    {
        Piece piece = weighing.Piece;
        MassProperties motor = weighing.Motor?.Loaded ?? MassProperties.None(datum);
        MassProperties[] aboard = [.. Items(parts, piece, weighing.Stowed)];
        MassProperties sum = MassProperties.Sum([.. aboard, motor]);
        bool any = aboard.Any(m => m.Mass > 0 && m.Basis == Basis.Estimated);
        bool Free(MassProperties m) => !any || m.Basis == Basis.Estimated;

        MassProperties free = MassProperties.Sum(aboard.Where(Free)), held = MassProperties.Sum([.. aboard.Where(m => !Free(m)), motor]);
        double mass = weighing.Mass ?? sum.Mass, scale = (mass - held.Mass) / free.Mass;
        bool possible = scale > 0 && double.IsFinite(scale);
        if (!possible) return new(weighing, sum.Mass, sum.Station, 0, 0, false);

        double shift = weighing.Balance is { } balance
            ? (mass * (datum + balance) - held.Mass * held.Station) / (mass - held.Mass) - free.Station
            : 0;
        MassProperties Correct(MassProperties m) => m.Mass == 0 || !Free(m) ? m : m.WithMass(m.Mass * scale).Moved(shift) with { Basis = weighing.Basis };
        for (int i = piece.First; i <= piece.Last; i++)
        {
            PartMass p = parts[i];
            parts[i] = new(Correct(p.Built), weighing.Stowed ? Correct(p.Stowed) : p.Stowed);
        }

        return new(weighing, sum.Mass, sum.Station, scale, shift, true);
    }

    private static IEnumerable<MassProperties> Items(IReadOnlyList<PartMass> parts, Piece piece, bool stowed)
    {
        for (int i = piece.First; i <= piece.Last; i++)
        {
            yield return parts[i].Built;
            if (stowed) yield return parts[i].Stowed;
        }
    }
}

/// <summary>Mass of one part in its two shares.</summary>
/// <param name="Built">The part with what is fixed to it.</param>
/// <param name="Stowed">What lies loose in it.</param>
public readonly record struct PartMass(MassProperties Built, MassProperties Stowed)
{
    /// <summary>Both.</summary>
    public MassProperties Total => MassProperties.Sum(Built, Stowed);

    /// <summary>
    /// From the drawing, unless weighed: a measured mass scales the computed one, inertia with it; a measured balance moves it along the axis.
    /// </summary>
    public static PartMass Of(Part part)
    {
        MassProperties built = MassProperties.Sum([part.Bare, .. part.Fittings.Select(f => f.At(part.Front))]);
        if (part.Weighing is { } weighing)
        {
            if (weighing.Mass is { } mass) built = built.WithMass(mass) with { Basis = weighing.Basis };
            if (weighing.Balance is { } balance) built = built with { Station = part.Datum + balance };
        }

        return new(built, MassProperties.Sum(part.Stowed.Select(s => s.At(part.Front))));
    }
}

/// <summary>What a weighing of the whole or of a piece said against the sum of its parts.</summary>
/// <param name="Weighing">The weighing.</param>
/// <param name="SummedMass">Of the parts before it was applied, motor of the weighing included, kg.</param>
/// <param name="SummedStation">Their balance, m.</param>
/// <param name="Scale">Factor laid on what was still estimated.</param>
/// <param name="Shift">How far what was still estimated was moved aft, m.</param>
/// <param name="Applied">False where the weighing cannot be: less than what is known to be in it.</param>
public sealed record WeighingDifference(
    PieceWeighing Weighing, double SummedMass, double SummedStation, double Scale, double Shift, bool Applied);
