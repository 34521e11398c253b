using System.Globalization;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>What is wrong with the inputs of a flight.</summary>
public static class FlightProblems
{
    /// <summary>The problems; empty when it can be flown. Places are "rail", "recovery", "motor" and the like, with the name of the thing.</summary>
    public static ValueList<Problem> In(FlightInputs inputs)
    {
        List<Problem> problems = [];
        OfRail(problems, inputs);
        OfPlan(problems, inputs);
        Require(problems, "latitude", inputs.Latitude is >= -Math.PI / 2 and <= Math.PI / 2, $"The latitude must be from -90° to 90°.");
        FlightFactors f = inputs.Factors;
        Require(problems, "factors", f.Impulse > 0 && f.BurnTime > 0, $"Factors on impulse and burn time must be more than 0.");
        Require(problems, "factors", f.Drag >= 0 && f.NormalForce >= 0, $"Factors on drag and normal force must not be negative.");
        Require(problems, "options", inputs.Options.RelativeTolerance is >= 1e-13 and <= 1e-2, $"The tolerance must be from 1e-13 to 0.01.");
        return problems.ToValueList();
    }

    /// <summary>Whether every joint and piece the plan speaks of is there.</summary>
    internal static bool PlanHolds(RecoveryPlan plan) => plan.Actions.All(a =>
        (a.Joint is null || (a.Joint >= 0 && a.Joint < plan.Pieces.Count - 1))
        && a.Canopies.All(c => c.Piece >= 0 && c.Piece < plan.Pieces.Count));

    private static void OfRail(List<Problem> problems, FlightInputs inputs)
    {
        LaunchRail rail = inputs.Rail;
        double length = inputs.Shape.Length;
        Require(problems, "rail", rail.Length > 0, $"The rail must have a length; {rail.Length:0.###} m has none.");
        Require(problems, "rail", rail.Elevation is > 0 and <= Math.PI / 2, $"The rail must point above the horizon, up to 90°.");
        Require(problems, "rail", rail.Friction >= 0, $"Friction must not be negative.");
        Require(
            problems, "rail guides", rail.ForwardGuide >= 0 && rail.ForwardGuide <= rail.AftGuide && rail.AftGuide <= length,
            $"The forward guide must sit ahead of the aft guide, both on the rocket of {length:0.###} m.");
        Require(
            problems, "rail guides", !(rail.Length > 0) || length - rail.ForwardGuide < rail.Length,
            $"The forward guide, {length - rail.ForwardGuide:0.###} m above the rocket's foot, stands above the rail of {rail.Length:0.###} m.");
    }

    private static void OfPlan(List<Problem> problems, FlightInputs inputs)
    {
        (ValueList<FlightPiece> pieces, ValueList<RecoveryAction> actions) = inputs.Recovery;
        foreach (FlightPiece piece in pieces)
        {
            Require(problems, $"piece {piece.Name}", piece.Mass > 0, $"A piece must have mass.");
            Require(problems, $"piece {piece.Name}", piece.BodyDragArea >= 0, $"Its drag area must not be negative.");
        }

        double sum = pieces.Sum(p => p.Mass), burnt = inputs.Mass.At<Scalar>(1).Mass;
        Require(
            problems, "pieces", pieces.Count == 0 || Math.Abs(sum - burnt) <= 0.005 * burnt,
            $"The pieces weigh {sum:0.###} kg together, the rocket after burnout {burnt:0.###} kg.");
        foreach (RecoveryAction action in actions) OfAction(problems, pieces.Count, action);
    }

    private static void OfAction(List<Problem> problems, int pieces, RecoveryAction action)
    {
        string at = $"action {action.Name}";
        Require(
            problems, at, action.Joint is null || (action.Joint >= 0 && action.Joint < pieces - 1), $"There is no joint {action.Joint} between {pieces} pieces.");
        Require(problems, at, action.SeparationSpeed >= 0, $"The separation speed must not be negative.");
        Require(problems, at, Time(action.Trigger) is >= 0 and < double.PositiveInfinity, $"The time or delay must be 0 or more.");
        foreach (FlightCanopy c in action.Canopies)
        {
            string on = $"canopy {c.Name}";
            Require(problems, on, c.Piece >= 0 && c.Piece < pieces, $"There is no piece {c.Piece} to tie it to.");
            Require(problems, on, c.DragArea > 0 && c.NominalDiameter > 0, $"Drag area and nominal diameter must be more than 0.");
            Require(problems, on, c.FillConstant >= 0 && c.GrowthExponent > 0, $"The fill constant must not be negative, the growth exponent more than 0.");
            Require(problems, on, c.InitialFraction is >= 0 and <= 1, $"The drag area at line stretch is a share from 0 to 1.");
            Require(problems, on, c.LineStretchDelay >= 0, $"The time to line stretch must not be negative.");
        }
    }

    private static double Time(RecoveryTrigger trigger) => trigger switch
    {
        AtApogee a => a.Delay,
        DescendingThrough d => double.IsFinite(d.Height) ? d.Delay : double.NaN,
        AfterLiftOff l => l.Time,
        AfterBurnout b => b.Delay,
        _ => 0,
    };

    private static void Require(List<Problem> problems, string at, bool holds, FormattableString message)
    {
        if (!holds) problems.Add(new(at, message.ToString(CultureInfo.InvariantCulture)));
    }
}
