using Scribeline.Engine.Numerics;
using Scribeline.Engine.Separation;
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
        foreach (var row in Rocket.Holes)
        {
            var diameter = row.Diameter ?? (Bays.FirstOrDefault(b => row.Station >= b.Front && row.Station <= b.Rear) is { } bay ? DiameterOf(row, bay) : (double?)null);
            if (Rocket.SurfaceThings.Any(t => t.Kind == SurfaceKind.Switch && t.Name == row.Name)) continue;
            foreach (var clock in row.Clocks) yield return new(row.StaticPort ? SideHoleKind.Port : SideHoleKind.Vent, row.Name, row.Station, clock, diameter);
        }

        foreach (var thing in Rocket.SurfaceThings)
        {
            if (KindOf(thing.Kind) is { } kind) yield return new(kind, thing.Name, thing.Station, thing.Clock, null);
        }
    }

    private static SideHoleKind? KindOf(SurfaceKind kind) => kind switch
    {
        SurfaceKind.Pin => SideHoleKind.Pin,
        SurfaceKind.Screw => SideHoleKind.Screw,
        SurfaceKind.Switch => SideHoleKind.Switch,
        _ => null,
    };

    private SideStation? SideForce()
    {
        if (Missing.Count == 0 && FreeAscent is [var first, ..]) return new(first.CentreOfPressure, "centre of pressure leaving the rail");
        var still = Aero.At<Scalar>(SlowMach, 0, 1e6, 0);
        return new(still.CentreOfPressure, "centre of pressure, slow and straight");
    }
}
