using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Separation;

/// <summary>Lays the components of an aerodynamic build-up on the parts they belong to.</summary>
internal sealed class PartOwners
{
    private static readonly string[] Endings = [" pressure", " friction", " leading edge", " trailing bevel", " trailing edge"];

    private readonly int last;
    private readonly Dictionary<string, int> byName = [];
    private readonly double[] wetted, frontal;
    private readonly AirShare[] side;
    private readonly double opening;

    public PartOwners(Vehicle vehicle, OuterShape shape)
    {
        var parts = vehicle.Parts;
        last = parts.Count - 1;
        (wetted, frontal, side) = (new double[parts.Count], new double[parts.Count], new AirShare[parts.Count]);
        for (var i = 0; i < parts.Count; i++)
        {
            foreach (var section in parts[i].Outside)
            {
                var integrals = BodyIntegrals.Of(section);
                byName.TryAdd(section.Name, i);
                wetted[i] += integrals.WettedArea;
                side[i] += new AirShare(0, 0, 0, 0, 0, integrals.PlanformArea, integrals.PlanformMoment);
            }

            foreach (var fins in parts[i].Fittings.OfType<FinPlates>()) byName.TryAdd(fins.Fins.Name, i);
            frontal[i] = parts[i].Fittings.OfType<RailGuide>().Sum(g => g.Height * g.Width);
        }

        var tail = shape.Body[^1].RearDiameter;
        opening = tail > 0 ? 1 - BaseDrag.PowerOn(shape.BaseOpening * shape.BaseOpening, tail * tail) : 0;
    }

    /// <summary>The coefficients of every part.</summary>
    public AirShare[] At(AeroBreakdown breakdown)
    {
        AirShare[] own = [.. side];
        foreach (var drag in breakdown.Drag)
        {
            switch (drag.Name)
            {
                case "body friction": Spread(own, wetted, drag.Coefficient); break;
                case "protuberances": Spread(own, frontal, drag.Coefficient); break;
                case "base": own[last] += new AirShare(drag.Coefficient, opening * drag.Coefficient, 0, 0, 0, 0, 0); break;
                case "flat face": own[0] += Axial(drag.Coefficient); break;
                default: own[Owner(drag.Name)] += Axial(drag.Coefficient); break;
            }
        }

        foreach (var lift in breakdown.Lift)
        {
            own[Owner(lift.Name.Split(", carried over", 2)[0])] +=
                new AirShare(0, 0, lift.Slope, lift.Slope * lift.Centre, lift.Slope * lift.Centre * lift.Centre, 0, 0);
        }

        return own;
    }

    private static AirShare Axial(double coefficient) => new(coefficient, 0, 0, 0, 0, 0, 0);

    private static void Spread(AirShare[] own, double[] weight, double coefficient)
    {
        var total = weight.Sum();
        if (total <= 0) return;
        for (var i = 0; i < own.Length; i++) own[i] += Axial(coefficient * weight[i] / total);
    }

    /// <exception cref="KeyNotFoundException">The build-up names what no part carries: a bug.</exception>
    private int Owner(string component)
    {
        foreach (var ending in Endings)
        {
            if (component.EndsWith(ending, StringComparison.Ordinal) && byName.TryGetValue(component[..^ending.Length], out var part)) return part;
        }

        return byName[component];
    }
}
