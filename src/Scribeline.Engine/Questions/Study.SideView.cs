using Scribeline.Engine.Numerics;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Questions;

/// <content>What the rocket looks like.</content>
public sealed partial class Study
{
    // Mach number of the centre of pressure of a rocket that cannot be flown: slow enough that the air counts as incompressible.
    private const double SlowMach = 0.3;

    private SideView? sideView;

    /// <summary>The rocket from the side, its scribe line facing the onlooker.</summary>
    public SideView SideView => LazyInitializer.EnsureInitialized(ref sideView, () => SideViewFrom(0));

    /// <summary>The rocket from a side.</summary>
    /// <param name="facing">Clock angle that faces the onlooker, rad.</param>
    public SideView SideViewFrom(double facing) => SideProjection.Of(
        Vehicle, HasMotor ? MotorLoad : null, Rocket.Separation.Charges, SurfaceHoles(),
        Loaded.Mass > 0 ? new SideStation(Loaded.Station, HasMotor ? "balance on the pad" : "balance without motor") : null, SideForce(), facing);

    private IEnumerable<SideHoleAt> SurfaceHoles()
    {
        foreach (var hole in HoleSchedule.Holes.Where(h => double.IsFinite(h.Clock)))
        {
            if (KindOf(hole.Kind) is { } kind)
                yield return new(kind, $"{hole.Mark}, {hole.Row}", hole.Station, hole.Clock, double.IsFinite(hole.OpenDiameter) ? hole.OpenDiameter : null);
        }
    }

    private static SideHoleKind? KindOf(HoleKind kind) => kind switch
    {
        HoleKind.Pin => SideHoleKind.Pin,
        HoleKind.Screw => SideHoleKind.Screw,
        HoleKind.StaticPort => SideHoleKind.Port,
        HoleKind.Vent => SideHoleKind.Vent,
        HoleKind.Switch => SideHoleKind.Switch,
        _ => null,
    };

    private SideStation? SideForce()
    {
        if (Missing.Count == 0 && FreeAscent is [var first, ..]) return new(first.CentreOfPressure, "centre of pressure leaving the rail");
        var still = Aero.At<Scalar>(SlowMach, 0, 1e6, 0);
        return new(still.CentreOfPressure, "centre of pressure, slow and straight");
    }
}
