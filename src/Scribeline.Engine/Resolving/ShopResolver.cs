using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Resolving;

/// <summary>What the bench needs of a design.</summary>
internal static class ShopResolver
{
    /// <summary>Holes and plates.</summary>
    public static ShopPlan Resolve(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
    {
        var plates = new PlateResolver(design, vehicle, draw);
        var layouts = plates.Resolve();
        var holes = new HoleScheduleResolver(design, vehicle, draw).Resolve();
        return new(holes with { PlateHoles = plates.Holes(layouts, holes) }, layouts, plates.Missing);
    }
}
