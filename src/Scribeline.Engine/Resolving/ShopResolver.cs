using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Resolving;

/// <summary>What the bench needs of a design.</summary>
internal static class ShopResolver
{
    /// <summary>Holes, plates, bonds and how the bench works.</summary>
    public static ShopPlan Resolve(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
    {
        var plates = new PlateResolver(design, vehicle, draw);
        var drafts = plates.Resolve();
        var bonds = new BondResolver(design, vehicle, draw);
        return new(new HoleScheduleResolver(design, vehicle, draw).Resolve(), drafts, plates.Missing)
        {
            Bonds = bonds.Resolve(),
            Keys = vehicle.Joints.Select(j => JointResolver.Of(design, vehicle, j) is { } typed ? new JointKey(j.Forward, typed.Keyed, typed.Unkeyed, typed.At) : null).OfType<JointKey>().ToValueList(),
            Practice = bonds.Practice(),
        };
    }
}
