using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>The one or two bodies that an action of the plan leaves of one.</summary>
internal static class Parting
{
    /// <summary>The bodies, nose first, their index yet to be given.</summary>
    /// <param name="parent">What comes apart.</param>
    /// <param name="action">What does it.</param>
    /// <param name="canopies">On their way out or open.</param>
    public static IEnumerable<DescentStart> Of(DescentStart parent, RecoveryAction action, IReadOnlyList<FreedCanopy> canopies)
    {
        int first = parent.First, last = parent.Last;
        if (action.Joint is not { } joint || action.Tethered) return [Side(first, last, Vector3<Scalar>.Zero)];

        // Momentum is kept: each side takes the other's share of the speed at which they part.
        double ahead = Mass(first, joint), behind = Mass(joint + 1, last);
        Vector3<Scalar> axis = parent.Attitude.ToFrame(new(1, 0, 0));
        double speed = action.SeparationSpeed / (ahead + behind);
        return [Side(first, joint, (speed * behind) * axis), Side(joint + 1, last, (-speed * ahead) * axis)];

        double Mass(int from, int to) => parent.Masses.AsSpan(from, to - from + 1).ToArray().Sum();

        DescentStart Side(int from, int to, Vector3<Scalar> kick) => parent with
        {
            Parent = parent.Index,
            First = from,
            Last = to,
            Velocity = parent.Velocity + kick,
            Plan = parent.Plan.For(from, to),
            Canopies = [.. canopies.Where(c => c.Canopy.Piece >= from && c.Canopy.Piece <= to)],
        };
    }
}
