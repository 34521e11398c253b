using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Weighings of the whole and of pieces.</summary>
internal static class WeighingResolver
{
    public static ValueList<PieceWeighing> Weighings(Vehicle vehicle, RocketDesign design, Motor? motor, ResolvingNotes notes)
    {
        List<PieceWeighing> weighings = [];
        foreach (WeighedDesign d in design.Records?.Weighed ?? ValueList<WeighedDesign>.Empty)
        {
            if (Piece(vehicle, d.Parts, d.At, notes) is not { } piece) continue;
            if (d.Mass is null && d.Balance is null)
            {
                notes.Problem(d.At, $"A weighing needs a mass or a balance.");
                continue;
            }

            MotorLoad? load = d.Motor && motor is not null ? vehicle.Load(motor) : null;
            if (d.Motor && load is null)
            {
                notes.Open(d.At, $"{vehicle.NameOf(piece)} was weighed with a motor that is not known here; that weighing does not count.", "Name the motor.");
                continue;
            }

            weighings.Add(new(
                piece, d.Mass is { } m ? notes.Si(m) : null, d.Balance is { } b ? notes.Si(b) : null, d.Stowed, load,
                (d.Mass?.Known ?? d.Balance!.Known) == Basis.Estimated ? Basis.Measured : d.Mass?.Known ?? d.Balance!.Known)
            {
                MassSigma = d.Mass?.Sigma ?? 0,
                BalanceSigma = d.Balance?.Sigma ?? 0,
            });
        }

        return weighings.ToValueList();
    }

    /// <summary>Swings of the whole and of pieces.</summary>
    public static ValueList<SwungPiece> Swings(Vehicle vehicle, RocketDesign design, Func<IMeasure, double> draw)
    {
        var notes = new ResolvingNotes(design, draw);
        List<SwungPiece> swings = [];
        foreach (SwungDesign d in design.Records?.Swung ?? [])
        {
            if (Piece(vehicle, d.Parts, d.At, notes) is not { } piece) continue;
            swings.Add(new(piece, d.Axis == SwingWord.Along, d.Mass is { } m ? draw(m) : null, draw(d.Apart), draw(d.Lines), draw(d.Period), d.Stowed, d.Motor)
            {
                MassSigma = d.Mass?.Sigma ?? 0,
                ApartSigma = d.Apart.Sigma,
                LinesSigma = d.Lines.Sigma,
                PeriodSigma = d.Period.Sigma,
            });
        }

        return swings.ToValueList();
    }

    /// <summary>The parts together, which must be neighbours.</summary>
    private static Piece? Piece(Vehicle vehicle, ValueList<string> names, string at, ResolvingNotes notes)
    {
        if (names.Count == 0) return vehicle.Whole;
        List<int> indices = [];
        foreach (string name in names)
        {
            int index = vehicle.Parts.ToList().FindIndex(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
            if (index < 0) notes.Problem(at, $"There is no part '{name}' to weigh.", $"Parts are {string.Join(", ", vehicle.Parts.Select(p => p.Name))}.");
            else indices.Add(index);
        }

        if (indices.Count < names.Count) return null;
        indices.Sort();
        if (indices.Distinct().Count() == indices[^1] - indices[0] + 1) return new(indices[0], indices[^1]);
        notes.Problem(at, $"{string.Join(", ", names)} do not hang together.", "Weigh neighbours together, or each on its own.");
        return null;
    }
}
