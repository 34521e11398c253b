using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns the firings of a rocket into the plan a flight follows.</summary>
public static class RecoveryPlanner
{
    /// <summary>The joints of the vehicle that the firings open, nose to tail.</summary>
    public static ValueList<int> Joints(Rocket rocket) => rocket.Firings.Select(f => f.Joint).Distinct().Order().ToValueList();

    /// <summary>The plan.</summary>
    /// <param name="rocket">The rocket.</param>
    /// <param name="shape">Its outside.</param>
    /// <param name="burnt">Mass of a piece after burnout, kg.</param>
    public static RecoveryPlan Plan(Rocket rocket, OuterShape shape, Func<Piece, double> burnt)
    {
        var joints = Joints(rocket);
        if (joints.Count == 0) return RecoveryPlan.Ballistic;
        var pieces = rocket.Vehicle.PiecesAfter(joints);
        int PieceOf(int part) => pieces.Select((p, i) => (p, i)).First(x => x.p.Has(part)).i;
        return new(
            pieces.Select(p => new FlightPiece(
                rocket.Vehicle.NameOf(p), burnt(p), PieceDrag.Area(shape, rocket.Vehicle.Parts[p.First].Front, rocket.Vehicle.Parts[p.Last].Rear))).ToValueList(),
            rocket.Firings.Select(f => new RecoveryAction(
                f.Name, f.Trigger, joints.Select((j, i) => (j, i)).First(x => x.j == f.Joint).i, f.Tethered,
                f.Canopies.Select(c => Freed(rocket, c, PieceOf(c.Part))).ToValueList())).ToValueList());
    }

    private static FlightCanopy Freed(Rocket rocket, FreedCanopy freed, int piece)
    {
        var canopy = rocket.Canopies.First(c => c.Name == freed.Name);
        return new(
            canopy.Name, piece, canopy.DragArea, canopy.NominalDiameter,
            canopy.FillConstant ?? UnknownFillConstant, canopy.Kind?.GrowthExponent ?? SolidCloth);
    }

    // Common practice for a canopy of no known type: that of a solid cloth canopy.
    private const double UnknownFillConstant = 8;
    private const double SolidCloth = 6;
}
