using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Bench;

/// <summary>What to cut: tubes, couplers, bands, rods, plates, rings and fins.</summary>
internal static class CutList
{
    public static AnswerTable Of(Study study) => new(
        "Cut list",
        [new("what"), new("count", Unit.Count), new("material"), new("length", Unit.Length), new("outside or width", Unit.Length), new("inside or thickness", Unit.Length)],
        study.Vehicle.Parts.SelectMany(p => Shells(p).Concat(p.Fittings.SelectMany(Cut))).ToValueList());

    private static IEnumerable<TableRow> Shells(Part part)
    {
        if (part is Tube tube) yield return Row(tube.Name, 1, tube.Material.Name, tube.TubeLength, tube.OuterDiameter, tube.InnerDiameter);
        if (part is not Coupler coupler) yield break;
        yield return Row($"{coupler.Name}: coupler", 1, coupler.Material.Name, coupler.TubeLength, coupler.OuterDiameter, coupler.InnerDiameter);
        if (coupler.BandLength > 0) yield return Row($"{coupler.Name}: band", 1, (coupler.BandMaterial ?? coupler.Material).Name, coupler.BandLength, coupler.BandDiameter, coupler.OuterDiameter);
    }

    private static IEnumerable<TableRow> Cut(Fitting fitting) => fitting switch
    {
        BulkPlate p => [Row(p.Name, 1, p.Material.Name, null, p.Diameter, p.Thickness)],
        CentringRing r => [Row(r.Name, 1, r.Material.Name, r.Thickness, r.OuterDiameter, r.InnerDiameter)],
        MotorMount m => [Row(m.Name, 1, m.Material.Name, m.TubeLength, m.OuterDiameter, m.InnerDiameter)],
        Rods r => [Row(r.Name, r.Count, r.Material.Name, r.RodLength, r.Diameter, null)],
        FinPlates f => [Row(f.Name, f.Fins.Count, f.Material.Name, f.Length, FinPlanform.Of(f.Fins.Outline).Span + f.TabDepth, f.Fins.Thickness)],
        _ => [],
    };

    private static TableRow Row(string what, int count, string material, double? length, double width, double? inside) => TableRow.Of(null, what, count, material, length, width, inside);
}
