using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;
using UnitsNet;

namespace Scribeline.Engine.Resolving;

/// <summary>What holds joints, opens them and ties pieces, in SI; what is missing is named, never guessed.</summary>
internal sealed class SeparationResolver(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
{
    private readonly List<string> missing = [];

    /// <summary>The gear, its charges still to be chosen.</summary>
    public SeparationGear Resolve()
    {
        var joints = Placed().Where(j => vehicle.Joints[j.Index].Separable).Select(j => Held(j.Index, j.Design)).OfType<JointRetention>().ToValueList();
        var screws = Placed().Where(j => j.Design.Screws is not null).Select(j => Screws(j.Index, j.Design.Screws!)).OfType<ScrewRow>().ToValueList();
        var rods = design.Parts.Select((p, i) => p is AltimeterBayDesign { Rods: { } r } ? Rods(i, r) : null).OfType<RodRow>().ToValueList();
        var bonds = Placed().Where(j => j.Design.Kind == JointWord.Bonded)
            .Select(j => new JointBond(j.Index, j.Design.Bond?.Length is { } length ? draw(length) : vehicle.Joints[j.Index].Engagement)).ToValueList();
        return new(joints, [], Cords().ToValueList(), screws, rods, bonds, missing.ToValueList());
    }

    private IEnumerable<(int Index, JointDesign Design)> Placed() => vehicle.Joints
        .Select(j => (j.Forward, design.Joints.FirstOrDefault(d => d.Between is [var a, var b]
            && ((Same(a, j.Forward) && Same(b, j.Aft)) || (Same(a, j.Aft) && Same(b, j.Forward))))))
        .Where(j => j.Item2 is not null).Select(j => (j.Forward, j.Item2!));

    private bool Same(string name, int part) => name.Equals(vehicle.Parts[part].Name, StringComparison.OrdinalIgnoreCase);

    private JointRetention? Held(int index, JointDesign joint)
    {
        var pins = joint.Pins is { } typed ? Pins(typed) : null;
        if (joint.Pins is not null && pins is null) return null;
        if (joint.Fit?.Friction is { } friction)
        {
            // The bounds are those of the design as typed: a drawn case must not reach past them once more.
            var (least, most) = (Math.Max(friction.Si - friction.ToleranceSi, 0), friction.Si + friction.ToleranceSi);
            return new(index, vehicle.Joints[index].Kind, pins, new(Math.Max(draw(friction), 0), least, most, true));
        }

        if (pins is null)
        {
            missing.Add($"{joint.At}.fit.friction: the force that pulls {string.Join(" and ", joint.Between)} apart, by spring scale");
            return null;
        }

        var supposed = FrictionFit.Supposed * vehicle.Joints[index].BoreDiameter;
        return new(index, vehicle.Joints[index].Kind, pins, new(supposed, 0, supposed, false));
    }

    private PinSet? Pins(PinsDesign pins)
    {
        var name = pins.Screw.ToString();
        var play = pins.Play is { } typed ? Math.Max(draw(typed), 0) : 0;
        if (pins.Strength is { } strength)
            return PinSet.Tested(name, pins.Count, strength.Si, strength.ToleranceSi, strength.Known) with { Middle = Math.Max(draw(strength), 0), Play = play };
        if (PinMaterial.Find(pins.Screw.Material) is { } material && ThreadGeometry.Of(pins.Screw.Thread) is { } thread)
            return PinSet.Of(name, pins.Count, thread, material) with { Play = play };
        missing.Add($"{pins.At}.strength: the force that cuts one {name}, by test");
        return null;
    }

    private ScrewRow? Screws(int index, ScrewsDesign screws)
    {
        if (ThreadGeometry.Of(screws.Thread) is not { } thread) return null;
        var (strength, source) = Strength(screws.Material);
        double? edge = screws.FromEdge.Count == 0 ? null : screws.FromEdge.Min(e => draw(e));
        return new(index, screws.Thread.Designation, screws.Count, thread, edge, strength, source);
    }

    private RodRow? Rods(int part, RodsDesign rods)
    {
        if (ThreadGeometry.Of(rods.Thread) is not { } thread) return null;
        var (strength, source) = Strength(rods.Material);
        return new(part, rods.Thread.Designation, rods.Count, thread, strength, source);
    }

    // Steel of no stated class is taken as the weakest that is sold; another material without a strength stays open.
    private (double? Strength, string Source) Strength(string? material)
    {
        var own = design.Materials.FirstOrDefault(m => m.Name.Equals(material, StringComparison.OrdinalIgnoreCase));
        if (own is not null) return (own.Strength is { } typed ? draw(typed) : null, own.Source);
        var found = material is null ? null : MaterialTable.Find(material);
        return material is null || found?.Name == "steel"
            ? (Fastening.PlainSteel, "steel of no stated class: ISO 898-1 class 4.8, from memory")
            : (found?.Strength, found?.Source ?? "");
    }

    private IEnumerable<Harness> Cords()
    {
        foreach (var cord in design.Stowed.Select(s => s.Cord).OfType<CordDesign>())
        {
            var known = CordMaterial.Find(cord.Material);
            yield return new(
                cord.Name ?? cord.Material,
                cord.Ties.Select(t => FiringResolver.PartOf(vehicle, t)).OfType<int>().Order().ToValueList(),
                draw(cord.Length),
                cord.Strength is { } strength ? draw(strength) : known?.Strength,
                cord.Stretch is { } stretch ? draw(stretch) : known?.Stretch,
                cord.Stretch is null && known is { Nylon: true },
                cord.At);
        }
    }
}
