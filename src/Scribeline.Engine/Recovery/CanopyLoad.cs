using Scribeline.Engine.Flight;

namespace Scribeline.Engine.Recovery;

/// <summary>How hard a canopy opens in a flight.</summary>
/// <param name="Canopy">The canopy.</param>
/// <param name="Flown">When and where, as flown.</param>
/// <param name="Handbook">By force coefficient and finite mass.</param>
/// <param name="Integrated">By the growth of the drag area, with weight and path.</param>
/// <param name="Weight">Of all that hangs on it, N: no opening pulls less.</param>
public sealed record CanopyLoad(Canopy Canopy, CanopyOpening Flown, OpeningForce Handbook, Opening Integrated, double Weight)
{
    /// <summary>If only its last charge works, at apogee, N, the greater of both methods; null where that is not later.</summary>
    public double? Late { get; init; }

    /// <summary>Where nothing slows the fall before: the greater of both methods if the falling pieces have the least drag they may, N; null otherwise.</summary>
    public double? Bare { get; init; }

    /// <summary>What throws it out; null where no charge does.</summary>
    public Thrown? Thrown { get; init; }

    /// <summary>Jerk of the canopy as its lines run taut, N; null where lines, their stretch or its mass are not known.</summary>
    public double? Snatch { get; init; }

    /// <summary>v1, through the air at line stretch, m/s.</summary>
    public double Speed => Handbook.Speed;

    /// <summary>Of everything that hangs on it, kg.</summary>
    public double Mass => Handbook.Mass;

    /// <summary>The greatest of all, N: what the rigging is held against.</summary>
    public double Worst => Math.Max(
        Math.Max(Math.Max(Handbook.Peak, Integrated.Peak), Math.Max(Math.Max(Late ?? 0, Bare ?? 0), Snatch ?? 0)), Math.Max(Thrown?.Force ?? 0, Weight));

    /// <summary>The greater of both methods, N.</summary>
    /// <param name="kind">Of the canopy.</param>
    /// <param name="inputs">What the opening begins with.</param>
    public static (OpeningForce Handbook, Opening Integrated) Both(CanopyKind kind, OpeningInputs inputs)
    {
        var integrated = inputs.Open();
        return (new(inputs.DragArea, inputs.Speed, inputs.Density, inputs.Mass, integrated.FillTime, kind.OpeningForce, kind.ForceGrowth), integrated);
    }
}

/// <summary>A canopy that opens while the piece it is tied to still flies away from the other, before their harness is taut.</summary>
/// <param name="Speed">That the hardest charge gives the piece, m/s; it adds to that through the air.</param>
/// <param name="Mass">Of the piece alone, kg.</param>
/// <param name="Force">N, the greater of both methods.</param>
public readonly record struct Thrown(double Speed, double Mass, double Force);
