namespace Scribeline.Engine.Recovery;

/// <summary>What an opening that is integrated begins with. SI.</summary>
public sealed record OpeningInputs
{
    /// <summary>Of everything that hangs on the canopy, kg.</summary>
    public required double Mass { get; init; }

    /// <summary>CdS of the open canopy, m².</summary>
    public required double DragArea { get; init; }

    /// <summary>CdS of what falls with it, m².</summary>
    public double BodyDragArea { get; init; }

    /// <summary>D0, m.</summary>
    public required double NominalDiameter { get; init; }

    /// <summary>n: fill distance in nominal diameters.</summary>
    public required double FillConstant { get; init; }

    /// <summary>j: growth of the drag area, 6 solid cloth, 1 ribbon (Ludtke, AIAA 73-477, 1973, from memory).</summary>
    public required double GrowthExponent { get; init; }

    /// <summary>Share of the drag area at line stretch, 0 to 1.</summary>
    public double InitialFraction { get; init; }

    /// <summary>v1, through the air at line stretch, m/s.</summary>
    public required double Speed { get; init; }

    /// <summary>Of the path below the horizontal then, rad.</summary>
    public required double PathAngle { get; init; }

    /// <summary>kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>m/s².</summary>
    public double Gravity { get; init; } = 9.80665;

    /// <summary>Drag area at first filling over the steady one, 1.0 to 1.2, falling back in one more fill time (common practice).</summary>
    public double Overshoot { get; init; } = 1;

    /// <summary>
    /// Air that moves with the canopy, as a share of a ball of its inflated diameter: 0.4 to 0.5 for a hemispherical shell (from memory); 0
    /// leaves it out. A bound, not a prediction.
    /// </summary>
    public double AddedMass { get; init; }

    /// <summary>Inflated over nominal diameter, for the air that moves with it.</summary>
    public double Projected { get; init; } = 0.67;

    /// <summary>A line that holds the mouth at first; null for none.</summary>
    public Reef? Reef { get; init; }

    /// <summary>Integrates the opening.</summary>
    public Opening Open() => OpeningFlow.Run(this, null);

    /// <summary>The pull of the canopy from line stretch until it is full, and until it has settled where it overshoots: s and N.</summary>
    public IReadOnlyList<(double Time, double Force)> Pull()
    {
        List<(double, double)> looks = [];
        OpeningFlow.Run(this, looks);
        return looks;
    }
}
