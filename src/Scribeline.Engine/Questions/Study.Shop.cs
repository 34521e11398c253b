using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Questions;

/// <content>What the bench needs.</content>
public sealed partial class Study
{
    private HoleSchedule? holeSchedule;
    private ValueList<WrapTemplate>? wrapTemplates;
    private ValueList<PlateLayout>? plates;

    /// <summary>Every hole, those of rows whose diameter the program chooses included.</summary>
    public HoleSchedule HoleSchedule => LazyInitializer.EnsureInitialized(ref holeSchedule, () =>
        Rocket.Shop.Holes with
        {
            Holes = Rocket.Shop.Holes.Holes.Select(Chosen).ToValueList(),
            PlateHoles = PlateHoles.Of(Plates, Rocket.Shop.Holes.Rows.Count()),
        });

    /// <summary>Strips to wrap round the tubes, nose to tail, on the paper of the bench.</summary>
    public ValueList<WrapTemplate> WrapTemplates => LazyInitializer.EnsureInitialized(ref wrapTemplates, () => Shop.WrapTemplates.Of(Vehicle, HoleSchedule, Rocket.Shop.Practice.Paper));

    /// <summary>Bulk plates and rings with what sits on them, nose to tail.</summary>
    public ValueList<PlateLayout> Plates => LazyInitializer.EnsureInitialized(ref plates, () =>
        Rocket.Shop.Plates.GroupBy(p => p.Plate.Part).SelectMany(g => Placed(g.ToValueList())).OrderBy(p => p.Station).ToValueList());

    // What is fixed is only looked up; proposals are kept, since they take a while.
    private ValueList<PlateLayout> Placed(ValueList<PlateDraft> plates) =>
        plates.All(p => p.Groups.All(g => g.Fixed)) ? PlateSolver.Solve(plates) : cache.Get(plates, PlateSolver.Solve);

    private Hole Chosen(Hole hole)
    {
        if (hole.Cuts.Count == 0 || !double.IsNaN(hole.Diameter) || hole.Kind is not (HoleKind.StaticPort or HoleKind.Vent)) return hole;
        var row = Rocket.Holes.FirstOrDefault(r => hole.Row.StartsWith(r.Name, StringComparison.Ordinal) && Math.Abs(r.Station - hole.Station) < 1e-6);
        if (row is null || Bays.FirstOrDefault(b => HolesOf(b).Contains(row)) is not { } bay) return hole;
        var diameter = DiameterOf(row, bay);
        return hole with { Cuts = hole.Cuts.Select(c => c with { Diameter = diameter, Drill = Drill.Nearest(diameter, Rocket.Inch) }).ToValueList() };
    }
}
