using Scribeline.Engine.Airframe;
using Scribeline.Engine.Separation;
using static Scribeline.Engine.Tests.Published.Separation.EjectionCases;

namespace Scribeline.Engine.Tests.Published.Separation;

/// <summary>Plates by Roark (from memory), tubes, rods, bonds and fasteners by statics, harness by energy; values computed independently.</summary>
public class StructureTests
{
    [Fact]
    public void Plates_tubes_and_rods()
    {
        var load = PressureVessel.Load(150e3, 0.098);
        Holds("S6.01", load);
        Holds("S6.02", load / (2 * 20.12e-6) / 1e6);
        Holds("S6.03", PressureVessel.PlateOnRim(150e3, 0.098, 3e-3) / 1e6);
        Holds("S6.04", PressureVessel.PlateClamped(150e3, 0.098, 3e-3) / 1e6);
        Holds("S6.05", PressureVessel.PlateOnTwoRods(150e3, 0.098, 3e-3) / 1e6);
        Holds("S6.06", 1000 * PressureVessel.PlateDeflection(150e3, 0.098, 3e-3, 18.6e9));
        Holds("S6.07", PressureVessel.Hoop(150e3, 0.098, 1.6e-3) / 1e6);
        Assert.Equal(Value("S6.07") / 2, PressureVessel.Axial(150e3, 0.098, 1.6e-3) / 1e6, 1e-4);
        Holds("S6.14", PressureVessel.BondShear(load, 0.098, 6.4e-3) / 1e6);
    }

    [Fact]
    public void Fasteners()
    {
        Holds("S6.08", Fastening.Bearing(3000, 4, 3.505e-3, 1.6e-3) / 1e6);
        Holds("S6.09", Fastening.ShearOut(3000, 4, 10.5e-3, 1.6e-3) / 1e6);
        Holds("S6.13", 4 * Fastening.ProngedNutInPlywood);
    }

    [Fact]
    public void Play_of_a_joint() =>
        Holds("S6.10", new Joint(0, JointKind.Pinned, true, 0, 0.098, 0.0978, 0.0981, true).PlayAngle * 180 / Math.PI);

    /// <summary>Closed forms of two bodies and a spring, computed independently.</summary>
    [Fact]
    public void Snap_out()
    {
        var nylon = StretchingCord.Linear(6672, 0.28, 7);
        var snap = new SnapOut(15, 4, 8, nylon);
        Assert.Equal(300, snap.Energy, 1e-9);
        Assert.Equal(1429, snap.Tension, 0.003 * 1429);
        Assert.Equal(0.42, nylon.StretchAt(snap.Tension), 0.003 * 0.42);
        Assert.Equal(3781, new SnapOut(15, 4, 8, StretchingCord.Linear(6672, 0.04, 7)).Tension, 0.003 * 3781);
        Assert.Equal(2202, new StretchingCord(3404, 800, 3 * 3404, 6672).PeakTension(300), 0.003 * 2202);
        Assert.Equal(277.8, SnapOut.AtSection(500, 5, 9), 0.002 * 277.8);

        // A snatch of 1500 N on 4.0 kg, the nose of 1.0 kg and a pack of 0.6 kg that leans on it.
        Assert.Equal(600, SnapOut.AtSection(1500, 1.6, 4), 1e-9);
        Assert.Equal(snap.ForwardDeceleration * 4, snap.AftDeceleration * 8, 1e-9);
    }
}
