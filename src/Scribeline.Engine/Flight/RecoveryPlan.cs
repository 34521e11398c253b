using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>What comes apart and opens, when, and what then hangs together.</summary>
/// <param name="Pieces">Pieces from nose to tail. Joint j lies between piece j and piece j + 1.</param>
/// <param name="Actions">
/// What is to happen; each happens once at most, and the order given settles ties. A second charge for the same joint or canopy (named
/// alike on the same piece) is an action of its own and changes nothing that has happened already. A charge that fails is left out.
/// </param>
public sealed record RecoveryPlan(ValueList<FlightPiece> Pieces, ValueList<RecoveryAction> Actions)
{
    /// <summary>One piece and nothing that opens: a ballistic flight, falling nose first.</summary>
    public static RecoveryPlan Ballistic { get; } = new([], []);
}

/// <summary>A piece of the rocket after the motor has burnt out.</summary>
/// <param name="Name">Name, for events and landings.</param>
/// <param name="Mass">With everything that stays in or on it, kg, after burnout.</param>
/// <param name="BodyDragArea">Drag area once it no longer flies nose first, m²: η Cn d L plus fins (Hoerner's cylinder broadside).</param>
public sealed record FlightPiece(string Name, double Mass, double BodyDragArea);

/// <summary>One firing of the plan: a joint lets go, a canopy comes out, or both.</summary>
/// <param name="Name">Name, for events ("drogue charge").</param>
/// <param name="Trigger">When the charge fires.</param>
/// <param name="Joint">Joint that lets go, or null where none does.</param>
/// <param name="Tethered">Whether a cord still ties the two sides of the joint.</param>
/// <param name="Canopies">Canopies freed.</param>
/// <param name="SeparationSpeed">Speed at which untethered sides part along the axis, m/s, 0 or more; cords take it back.</param>
public sealed record RecoveryAction(
    string Name, RecoveryTrigger Trigger, int? Joint, bool Tethered, ValueList<FlightCanopy> Canopies, double SeparationSpeed = 0);

/// <summary>
/// A canopy as the trajectory feels it. Drag area while filling: CdS [(1 − √i) τ^(j/2) + √i]², τ = t / t_f, t_f = n D0 / v1
/// (Knacke, Parachute Recovery Systems Design Manual, 1992; Ludtke 1973 for j = 6; from memory).
/// </summary>
/// <param name="Name">Name, for events and loads.</param>
/// <param name="Piece">Piece it is tied to, index into <see cref="RecoveryPlan.Pieces"/>.</param>
/// <param name="DragArea">Drag coefficient times its reference area, m², more than 0.</param>
/// <param name="NominalDiameter">D0, m.</param>
/// <param name="FillConstant">n: fill distance in nominal diameters; 0 opens at once.</param>
/// <param name="GrowthExponent">j: 1 ribbon, 2 compromise, 6 solid cloth.</param>
/// <param name="InitialFraction">i: share of the drag area at line stretch, 0 to 1.</param>
/// <param name="LineStretchDelay">From the charge to line stretch, s, 0 or more.</param>
public sealed record FlightCanopy(
    string Name,
    int Piece,
    double DragArea,
    double NominalDiameter,
    double FillConstant = 8,
    double GrowthExponent = 6,
    double InitialFraction = 0,
    double LineStretchDelay = 0);

/// <summary>When a charge fires.</summary>
public abstract record RecoveryTrigger;

/// <summary>At apogee, plus a delay.</summary>
/// <param name="Delay">s, 0 or more.</param>
public sealed record AtApogee(double Delay = 0) : RecoveryTrigger;

/// <summary>
/// When a barometric altimeter, armed at apogee, reads this height or less. The reading is pressure altitude above the pad's, not true
/// height (U.S. Standard Atmosphere, 1976; see <see cref="FlightSample.AltimeterHeight"/>).
/// </summary>
/// <param name="Height">Reading, m above the pad.</param>
/// <param name="Delay">s after the reading, 0 or more.</param>
public sealed record DescendingThrough(double Height, double Delay = 0) : RecoveryTrigger;

/// <summary>A time after lift-off.</summary>
/// <param name="Time">s, more than 0.</param>
public sealed record AfterLiftOff(double Time) : RecoveryTrigger;

/// <summary>The motor's own delay, counted from burnout.</summary>
/// <param name="Delay">s, 0 or more.</param>
public sealed record AfterBurnout(double Delay) : RecoveryTrigger;
