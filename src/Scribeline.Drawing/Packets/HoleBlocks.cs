using System.Globalization;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;

namespace Scribeline.Drawing.Packets;

/// <summary>The hole schedule as tables.</summary>
internal static class HoleBlocks
{
    /// <summary>Holes through walls, then holes through plates, then what is left open.</summary>
    public static IEnumerable<Block> Of(PacketContents packet, double width)
    {
        var schedule = packet.Study.HoleSchedule;
        string Length(double metres) => Shown.Text(metres, Unit.Length, packet.Inch);
        yield return new Words("Through the walls", Lettering.Heading) { Above = 3, KeepWithNext = true };
        if (schedule.Holes.Count == 0) yield return new Words("No holes are placed yet.", Lettering.Body);
        GridColumn[] columns = [new("hole"), new("what", Share: 1), new("clock", true), new("round", true), new("from edge", true), new("of", Share: 1), new("drill, tap", Share: 1.8)];
        GridRow[] walls = [.. schedule.Holes.Select(h => new GridRow(
            [h.Mark, h.Row, Angle(h.Clock), double.IsFinite(h.Arc) ? Length(h.Arc) : "open", Length(h.FromEdge), h.Edge.Name, string.Join("; ", h.Cuts.Select(Cut))],
            null,
            0))];
        foreach (var block in Grid.Rows(columns, walls, width, ruled: true)) yield return block;
        if (schedule.PlateHoles.Count > 0)
        {
            yield return new Words("Through plates and rings", Lettering.Heading) { Above = 5, KeepWithNext = true };
            GridColumn[] plates = [new("hole"), new("plate", Share: 1), new("what", Share: 1), new("from middle", true), new("clock", true), new("drill", Share: 1)];
            GridRow[] holes = [.. schedule.PlateHoles.Select(h => new GridRow([h.Mark, h.Plate, h.Name, Length(h.FromCentre), Angle(h.Clock), Bore(h.Diameter, h.Drill?.Name)], null, 0))];
            foreach (var block in Grid.Rows(plates, holes, width, ruled: true)) yield return block;
        }

        foreach (var missing in schedule.Missing) yield return new Words(missing, Lettering.Body, null, 0, "open:") { Above = 1 };
        foreach (var assumed in schedule.Assumed) yield return new Words(assumed, Lettering.Small, Ink.Light.Quiet) { Above = 1 };
    }

    /// <summary>What is done to one wall, in words.</summary>
    public static string Cut(HoleCut cut)
    {
        var words = $"{cut.PartName} {Bore(cut.Diameter, cut.Drill?.Name)}";
        if (cut.Tap is { } tap) words += $", tap {tap}";
        if (cut.Countersink > 0) words += string.Create(CultureInfo.InvariantCulture, $", countersink {1000 * cut.Countersink:0.0} mm at {cut.CountersinkAngle * 180 / Math.PI:0}°");
        return cut.Remark.Length > 0 ? $"{words}, {cut.Remark}" : words;
    }

    private static string Bore(double diameter, string? drill) => double.IsNaN(diameter) ? "size open"
        : string.Create(CultureInfo.InvariantCulture, $"{1000 * diameter:0.00} mm") + (drill is null || drill.EndsWith("mm", StringComparison.Ordinal) ? "" : $" ({drill})");

    private static string Angle(double clock) => double.IsFinite(clock) ? (clock * 180 / Math.PI).ToString("0.#", CultureInfo.InvariantCulture) + "°" : "open";
}
