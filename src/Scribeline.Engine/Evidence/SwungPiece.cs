using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Evidence;

/// <summary>A swing of a piece on two equal upright lines.</summary>
/// <param name="Piece">What hung.</param>
/// <param name="Along">Whether it hung nose up; otherwise level.</param>
/// <param name="Mass">kg; null where the sum of its parts counts.</param>
/// <param name="Apart">Between the lines, m.</param>
/// <param name="Lines">Length of each, m.</param>
/// <param name="Period">s.</param>
/// <param name="Stowed">Whether what is stowed was aboard.</param>
/// <param name="Motor">Whether the loaded motor was aboard.</param>
public sealed record SwungPiece(Piece Piece, bool Along, double? Mass, double Apart, double Lines, double Period, bool Stowed, bool Motor)
{
    /// <summary>Standard uncertainty, kg; 0 where none is typed.</summary>
    public double MassSigma { get; init; }

    /// <summary>Standard uncertainty, m; 0 where none is typed.</summary>
    public double ApartSigma { get; init; }

    /// <summary>Standard uncertainty, m; 0 where none is typed.</summary>
    public double LinesSigma { get; init; }

    /// <summary>Standard uncertainty, s; 0 where none is typed.</summary>
    public double PeriodSigma { get; init; }
}
