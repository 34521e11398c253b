using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Parts as each is known by itself, and what they make up as it was weighed.</summary>
internal static class ReconciliationResolver
{
    // Assumptions, for what was typed without ±: a scale good to a thousandth and half a gram, an edge to a millimetre, hardware and drawings to
    // a twentieth of the mass (5 to 10 % is common practice), a computed balance to a fiftieth of the length, packed gear to 20 mm.
    private const double ScaleShare = 1e-3, ScaleLeast = 0.5e-3, Edge = 1e-3, Drawn = 0.05, DrawnBalance = 0.02, Packed = 0.02;

    /// <summary>Built parts at even indices, what is stowed in each at the odd one after it.</summary>
    public static Weighings Resolve(RocketDesign design, Vehicle vehicle)
    {
        if (vehicle.Weighings.Count == 0) return Weighings.None;
        List<MassReading> parts = [];
        for (var i = 0; i < vehicle.Parts.Count; i++)
        {
            var part = vehicle.Parts[i];
            var (mass, balance) = (design.Parts[i].Mass, design.Parts[i].Balance);
            var masses = PartMass.Of(part);
            parts.Add(new(
                part.Name,
                masses.Built.Mass,
                mass is { Sigma: > 0 } ? mass.Sigma : mass is { Known: not Basis.Estimated } ? Scale(masses.Built.Mass) : Drawn * masses.Built.Mass,
                masses.Built.Station,
                balance is { Sigma: > 0 } ? balance.Sigma : balance is not null ? Edge : DrawnBalance * (part.RearReach - part.FrontReach)));
            var each = part.Stowed.Select(s => s.Basis == Basis.Estimated ? Drawn * s.Mass : Scale(s.Mass)).ToArray();
            parts.Add(new($"stowed in {part.Name}", masses.Stowed.Mass, Math.Sqrt(each.Sum(e => e * e)), masses.Stowed.Station, Packed));
        }

        return new(parts.ToValueList(), vehicle.Weighings.Select(w => Whole(w, vehicle, parts)).ToValueList());
    }

    private static MassSum Whole(PieceWeighing weighing, Vehicle vehicle, List<MassReading> parts)
    {
        var aboard = Enumerable.Range(weighing.Piece.First, weighing.Piece.Last - weighing.Piece.First + 1)
            .SelectMany(i => weighing.Stowed && parts[(2 * i) + 1].Mass > 0 ? (int[])[2 * i, (2 * i) + 1] : [2 * i]).ToValueList();
        var expected = aboard.Sum(i => parts[i].Mass);
        var datum = vehicle.Parts[weighing.Piece.First].Datum;

        // The motor was certified on better scales than ours: it is taken off as it is.
        double motor = weighing.Motor?.Loaded.Mass ?? 0, motorStation = weighing.Motor?.Loaded.Station ?? 0;
        var mass = weighing.Mass is { } whole ? whole - motor : double.NaN;
        var station = weighing.Balance is not { } balance ? double.NaN
            : ((((weighing.Mass ?? (expected + motor)) * (datum + balance)) - (motor * motorStation)) / (double.IsNaN(mass) ? expected : mass));
        var all = weighing.Mass ?? (expected + motor);
        return new(
            aboard,
            new(
                vehicle.NameOf(weighing.Piece),
                mass,
                weighing.MassSigma > 0 ? weighing.MassSigma : Scale(all),
                station,
                (weighing.BalanceSigma > 0 ? weighing.BalanceSigma : Edge) * all / Math.Max(all - motor, 1e-9)),
            expected);
    }

    private static double Scale(double mass) => Math.Max(ScaleLeast, ScaleShare * mass);
}
