using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>What the bench needs of a design, resolved.</summary>
/// <param name="Holes">Every hole; the diameter of a row that the program chooses is NaN until it has chosen.</param>
/// <param name="Plates">Bulk plates and rings, nose to tail.</param>
/// <param name="Missing">What to type so that every plate is known.</param>
public sealed record ShopPlan(HoleSchedule Holes, ValueList<PlateLayout> Plates, ValueList<string> Missing)
{
    /// <summary>Of a rocket without parts.</summary>
    public static ShopPlan None { get; } = new(new([], [], [], []), [], []);
}
