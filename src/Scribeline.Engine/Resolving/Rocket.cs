using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Resolving;

/// <summary>The rocket of a design, resolved: SI, immutable, compared by value.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Inch">Whether its builder reads inch and pound units.</param>
/// <param name="Vehicle">Parts, joints and weighings.</param>
/// <param name="Canopies">Canopies stowed in it.</param>
/// <param name="Firings">What frees which joint, in the order of the file.</param>
/// <param name="DragScale">Drag over that predicted, from flights; 1 where never flown.</param>
/// <param name="RecoveryMissing">What to type so that the descent can be answered.</param>
/// <param name="Open">Masses and places left out, for which nothing may stand in.</param>
/// <param name="Assumed">Defaults that stand in for what was left out.</param>
/// <param name="Limits">The builder's own limits.</param>
public sealed partial record Rocket(
    string Name, bool Inch, Vehicle Vehicle, ValueList<Canopy> Canopies, ValueList<Firing> Firings, double DragScale, ValueList<string> RecoveryMissing, ValueList<Problem> Open, ValueList<Problem> Assumed, ValueList<OwnLimit> Limits)
{
    /// <summary>What holds joints, opens them and ties pieces.</summary>
    public SeparationGear Separation { get; init; } = SeparationGear.None;

    /// <summary>What ties canopies to pieces.</summary>
    public Rigging Rigging { get; init; } = Rigging.None;

    /// <summary>Holes through which its bays breathe.</summary>
    public ValueList<HoleRow> Holes { get; init; } = [];

    /// <summary>What stands on its surface.</summary>
    public ValueList<SurfaceThing> SurfaceThings { get; init; } = [];

    /// <summary>What the bench needs: holes and plates.</summary>
    public ShopPlan Shop { get; init; } = ShopPlan.None;
    /// <summary>What may fail: the standard failures that apply, and the builder's own.</summary>
    public ValueList<Failure> Failures { get; init; } = [];

    /// <summary>Firing circuit of each altimeter, in the order of the file.</summary>
    public ValueList<FiringCircuit> Circuits { get; init; } = [];
}

/// <summary>One charge fired by one channel of one altimeter, or by the motor.</summary>
/// <param name="Name">For events, for example "Primary: Drogue A".</param>
/// <param name="Trigger">When.</param>
/// <param name="Joint">Index of the joint of the vehicle that lets go.</param>
/// <param name="Tethered">Whether a cord ties the two sides.</param>
/// <param name="Canopies">Names of the canopies it frees, each with the index of the part its piece contains.</param>
public sealed record Firing(string Name, RecoveryTrigger Trigger, int Joint, bool Tethered, ValueList<FreedCanopy> Canopies)
{
    /// <summary>The altimeter or timer that fires it; null for the motor's own charge.</summary>
    public string? Altimeter { get; init; }

    /// <summary>The charge; null for a joint that lets go by itself.</summary>
    public string? Charge { get; init; }

    /// <summary>Speed above which that altimeter ignores its pressure sensor, m/s; null where not known.</summary>
    public double? MachLockout { get; init; }
}

/// <summary>A canopy that comes out, and the part it is tied to.</summary>
/// <param name="Name">Of the canopy.</param>
/// <param name="Part">Index of the part of the vehicle.</param>
public readonly record struct FreedCanopy(string Name, int Part);
