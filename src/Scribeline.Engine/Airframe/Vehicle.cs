using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>The airframe: parts nose to tail with their stations, the joints between neighbours, and its weighings.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Parts">Nose to tail.</param>
/// <param name="Joints">One fewer than the parts; joint i holds part i to part i + 1.</param>
/// <param name="Weighings">Of the whole or of pieces.</param>
/// <param name="Roughness">Equivalent sand roughness of the surface, m.</param>
public sealed record Vehicle(string Name, ValueList<Part> Parts, ValueList<Joint> Joints, ValueList<PieceWeighing> Weighings, double Roughness)
{
    /// <summary>Everything together.</summary>
    public Piece Whole => new(0, Parts.Count - 1);

    /// <summary>Tip to tail, m.</summary>
    public double Length => Parts[^1].Rear;

    /// <summary>Index of the part that carries the motor mount; -1 if none does.</summary>
    public int MotorPart
    {
        get
        {
            for (int i = Parts.Count - 1; i >= 0; i--)
            {
                if (Parts[i].Fittings.Any(f => f is MotorMount)) return i;
            }

            return -1;
        }
    }

    /// <summary>A motor in the mount, its aft end as far behind the mount's as the overhang says; null where there is no mount.</summary>
    /// <param name="motor">As certified.</param>
    public MotorLoad? Load(Motor motor)
    {
        if (MotorPart < 0) return null;
        Part part = Parts[MotorPart];
        MotorMount mount = part.Fittings.OfType<MotorMount>().First();
        return MotorLoad.Of(motor, part.Front + mount.Offset + mount.Length + mount.Overhang - motor.Length);
    }

    /// <summary>
    /// Stacks parts: each begins where the one ahead ends, the first at station 0. What slides into a neighbour adds no length; a band does.
    /// </summary>
    /// <param name="name">As typed.</param>
    /// <param name="parts">Nose to tail; their fronts are overwritten.</param>
    /// <param name="kinds">One joint kind for each meeting, nose to tail.</param>
    /// <param name="weighings">Of the whole or of pieces.</param>
    /// <param name="roughness">m.</param>
    public static Vehicle Stack(
        string name, IEnumerable<Part> parts, IEnumerable<JointKind> kinds, ValueList<PieceWeighing>? weighings = null, double roughness = 0)
    {
        double station = 0;
        List<Part> placed = [];
        foreach (Part part in parts)
        {
            placed.Add(part with { Front = station });
            station = placed[^1].Rear;
        }

        ValueList<Joint> joints = kinds.Select((kind, i) => Joint.Between(placed, i, kind)).ToValueList();
        return new(name, placed.ToValueList(), joints, weighings ?? ValueList<PieceWeighing>.Empty, roughness);
    }

    /// <summary>What the air sees.</summary>
    /// <param name="nozzleExit">Diameter of the nozzle exit, m; 0 if unknown.</param>
    public OuterShape Outside(double nozzleExit = 0) => new(
        Parts.SelectMany(p => p.Outside).ToValueList(),
        Parts.SelectMany(p => p.Fittings.OfType<FinPlates>().Select(f => f.Placed(p.Front))).ToValueList(),
        Parts.SelectMany(p => p.Fittings.OfType<RailGuide>()
            .Select(g => new Protuberance(g.Name, p.Front + g.Offset, g.Height, g.Width, 1, g.Faired))).ToValueList(),
        Roughness,
        nozzleExit);

    /// <summary>Free inner radius at a station, m: that of the innermost part there; null outside.</summary>
    /// <param name="station">m.</param>
    public double? BoreAt(double station) => Parts.Min(p => p.BoreAt(station));

    /// <summary>Free inner radius by station, m, for asking at many stations; 0 outside.</summary>
    public Func<double, double> Inside()
    {
        Func<double, double?>[] parts = [.. Parts.Select(p => p.Inside())];
        return station =>
        {
            double? least = null;
            foreach (var part in parts)
            {
                if (part(station) is { } radius && !(radius >= least)) least = radius;
            }

            return least ?? 0;
        };
    }

    /// <summary>Closed volumes, nose to tail.</summary>
    /// <param name="motor">The motor aboard, which takes room where it stands out ahead of its mount; null for none.</param>
    public ValueList<Bay> Bays(MotorLoad? motor = null) => BaySurvey.Of(this, motor);

    /// <summary>What hangs together once some joints have let go, nose to tail.</summary>
    /// <param name="released">Indices of joints.</param>
    public ValueList<Piece> PiecesAfter(params IEnumerable<int> released)
    {
        List<Piece> pieces = [];
        int first = 0;
        foreach (int joint in released.Distinct().Order())
        {
            pieces.Add(new(first, joint));
            first = joint + 1;
        }

        pieces.Add(new(first, Parts.Count - 1));
        return pieces.ToValueList();
    }

    /// <summary>Every piece that any set of separable joints can leave, the whole included.</summary>
    public ValueList<Piece> PossiblePieces()
    {
        int[] cuts = [-1, .. Joints.Where(j => j.Separable).Select(j => j.Forward), Parts.Count - 1];
        return cuts.SelectMany((from, i) => cuts.Skip(i + 1).Select(to => new Piece(from + 1, to))).ToValueList();
    }

    /// <summary>Names of the parts at its ends.</summary>
    public string NameOf(Piece piece) => piece == Whole ? Name
        : piece.First == piece.Last ? Parts[piece.First].Name
        : $"{Parts[piece.First].Name} to {Parts[piece.Last].Name}";

    /// <summary>Mass of every part with all weighings applied, and what they differed by.</summary>
    public MassBreakdown Masses() => MassBreakdown.Of(this);

    /// <summary>Mass of the whole or a piece over the burn of a motor.</summary>
    /// <param name="piece">Which piece.</param>
    /// <param name="motor">The motor; null for none, or if the piece does not carry it.</param>
    public MassHistory History(Piece piece, MotorLoad? motor) =>
        MassHistory.Of(Masses().Of(piece), motor is not null && piece.Has(MotorPart) ? motor : null);
}

/// <summary>A weighing and balancing of the whole rocket or of a piece of it.</summary>
/// <param name="Piece">What was on the scale.</param>
/// <param name="Mass">kg; null if only balanced.</param>
/// <param name="Balance">Aft of its first part's <see cref="Part.Datum"/>, m; null if only weighed.</param>
/// <param name="Stowed">Whether what is stowed was aboard.</param>
/// <param name="Motor">The motor that was aboard, loaded; null for none.</param>
/// <param name="Basis">How it is known.</param>
public sealed record PieceWeighing(Piece Piece, double? Mass, double? Balance, bool Stowed, MotorLoad? Motor = null, Basis Basis = Basis.Measured)
{
    /// <summary>Standard uncertainty of the mass, kg; 0 where none is typed.</summary>
    public double MassSigma { get; init; }

    /// <summary>Standard uncertainty of the balance, m; 0 where none is typed.</summary>
    public double BalanceSigma { get; init; }
}
