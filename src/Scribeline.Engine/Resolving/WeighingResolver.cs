using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
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
            if (Piece(vehicle, d, notes) is not { } piece) continue;
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
                (d.Mass?.Known ?? d.Balance!.Known) == Basis.Estimated ? Basis.Measured : d.Mass?.Known ?? d.Balance!.Known));
        }

        return weighings.ToValueList();
    }

    /// <summary>The parts on the scale, which must be neighbours.</summary>
    private static Piece? Piece(Vehicle vehicle, WeighedDesign d, ResolvingNotes notes)
    {
        if (d.Parts.Count == 0) return vehicle.Whole;
        List<int> indices = [];
        foreach (string name in d.Parts)
        {
            int index = vehicle.Parts.ToList().FindIndex(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
            if (index < 0) notes.Problem(d.At, $"There is no part '{name}' to weigh.", $"Parts are {string.Join(", ", vehicle.Parts.Select(p => p.Name))}.");
            else indices.Add(index);
        }

        if (indices.Count < d.Parts.Count) return null;
        indices.Sort();
        if (indices.Distinct().Count() == indices[^1] - indices[0] + 1) return new(indices[0], indices[^1]);
        notes.Problem(d.At, $"{string.Join(", ", d.Parts)} do not hang together.", "Weigh neighbours together, or each on its own.");
        return null;
    }
}
