using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Flight;

/// <summary>What stays the same through one of many flights.</summary>
internal sealed class LaneConstants
{
    private readonly double[] values = new double[LaneParameters.Canopies];

    /// <param name="flown">The case.</param>
    /// <param name="totalImpulse">Of the shared thrust curve, N·s.</param>
    /// <param name="rail">Its rail in the frame of flight.</param>
    /// <param name="table">Where its table of air and wind begins.</param>
    /// <param name="gusts">Where its turbulence begins.</param>
    public LaneConstants(EnsembleCase flown, double totalImpulse, in RailGeometry rail, int table, int gusts)
    {
        TotalImpulse = flown.Impulse * totalImpulse;
        values[LaneParameters.Table] = table;
        values[LaneParameters.Gusts] = gusts;
        values[LaneParameters.Thrust] = flown.Impulse;
        values[LaneParameters.Impulse] = 1 / TotalImpulse;
        values[LaneParameters.Axial] = flown.Aerodynamics.Axial;
        values[LaneParameters.Normal] = flown.Aerodynamics.Normal;
        values[LaneParameters.CentreShift] = flown.Aerodynamics.CentreShift;
        values[LaneParameters.Friction] = rail.Friction;
        values[LaneParameters.RailEast] = rail.Direction.X;
        values[LaneParameters.RailNorth] = rail.Direction.Y;
        values[LaneParameters.RailUp] = rail.Direction.Z;
        values[LaneParameters.AftGuide] = rail.AftGuide;
        MassHistory m = flown.Mass;
        InertiaTensor i = m.Rigid.Inertia;
        double[] mass =
        [
            m.Rigid.Mass, m.Rigid.Station, m.Rigid.OffsetY, m.Rigid.OffsetZ, i.Xx, i.Yy, i.Zz, i.Xy, i.Xz, i.Yz,
            m.Propellant, m.GrainStation, m.GrainLength, m.OuterSquare, m.CoreSquare, m.CoreGrowth,
        ];
        mass.CopyTo(values, LaneParameters.Mass);
    }

    /// <summary>Of its motor, N·s.</summary>
    public double TotalImpulse { get; }

    /// <summary>Into a lane.</summary>
    public void CopyTo(LaneParameters parameters, int lane)
    {
        for (var i = 0; i < values.Length; i++) parameters.Set(i, lane, values[i]);
    }
}
