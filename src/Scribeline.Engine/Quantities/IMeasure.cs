namespace Scribeline.Engine.Quantities;

/// <summary>What all measures share, whatever their quantity: enough to draw a perturbed value.</summary>
public interface IMeasure
{
    /// <summary>Path in the file, such as <c>parts[2].fins.root</c>; empty when made in code.</summary>
    string At { get; }

    /// <summary>SI value (angles in rad, temperatures in K).</summary>
    double Si { get; }

    /// <summary>The figure after ±, SI; 0 where none was typed.</summary>
    double ToleranceSi { get; }

    /// <summary>Standard deviation, SI: half of what follows ±.</summary>
    double Sigma { get; }

    /// <summary>How it is known.</summary>
    Basis Known { get; }

    /// <summary>As typed.</summary>
    string Text { get; }

    /// <summary>As typed; the first of a compound such as 5 ft 3 in.</summary>
    UnitOfMeasure Unit { get; }

    /// <summary>Kind of quantity.</summary>
    Dimension Dimension { get; }
}
