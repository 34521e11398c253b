using System.Globalization;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;
using SkiaSharp;

namespace Scribeline.Drawing.Packets;

/// <summary>Each joint cut along the axis: what reaches how far into what, and its holes.</summary>
/// <param name="packet">What it is made from.</param>
internal sealed class JointBlocks(PacketContents packet)
{
    private const double Tall = 84;

    private static readonly SKColor Outer = SKColor.Parse("#dfe4f1");
    private static readonly SKColor Inner = SKColor.Parse("#c3cce4");

    private readonly SideView view = packet.Study.SideView;

    /// <summary>All joints, nose to tail.</summary>
    public IEnumerable<Block> All() => packet.Study.Vehicle.Joints.SelectMany(Of);

    private IEnumerable<Block> Of(Joint joint)
    {
        var side = view.Joints.First(j => j.Joint == joint.Forward);
        Hole[] holes = [.. packet.Study.HoleSchedule.Holes.Where(h => h.Joint == joint.Forward)];
        yield return new Words($"{side.Name}: {side.Held}{(joint.Separable ? ", lets go in flight" : "")}", Lettering.Heading) { Above = 5, KeepWithNext = true };
        yield return new Picture(Tall, (pen, x, y, wide) => Section(pen, joint, side, holes, x, y, wide)) { KeepWithNext = true };
        yield return new Words(
            $"Reach {Length(joint.Engagement)}, {joint.Calibres.ToString("0.00", CultureInfo.InvariantCulture)} calibres; {Length(joint.ShoulderDiameter)} in a bore of {Length(joint.BoreDiameter)}, play {Length(joint.Play)} on the diameter.",
            Lettering.Body)
        { KeepWithNext = holes.Length > 0 };
        foreach (var row in holes.GroupBy(h => h.Row)) yield return new Words(Row([.. row]), Lettering.Body) { Above = 0.6 };
        if (holes.Length == 0 && joint.Kind is JointKind.Pinned or JointKind.Screwed) yield return new Words("No holes are placed: type clock angles and the distance from the edge.", Lettering.Body);
    }

    private void Section(Pen pen, Joint joint, SideJoint side, Hole[] holes, double x, double y, double wide)
    {
        double more = Math.Max(joint.Engagement * 0.35, 0.02), from = side.From - more, to = side.To + more;
        double scale = Math.Min((wide - 4) / (to - from), (Tall - 24) / (2.3 * side.Radius)), axis = y + 8 + ((Tall - 24) / 2), left = x + ((wide - ((to - from) * scale)) / 2);
        double X(double station) => left + ((station - from) * scale);
        double half = side.Radius * scale;
        pen.Within(X(from), axis - half - 3, (to - from) * scale, (2 * half) + 6, 0, 0, () =>
        {
            // From the outside inwards, each over what it lies in.
            foreach (var shape in view.Shapes.Where(s => s.Kind is SideKind.Body or SideKind.Coupler or SideKind.Hollow).OrderByDescending(s => s.Right).ThenBy(s => s.Kind))
            {
                SKColor fill = shape.Kind switch { SideKind.Body => Outer, SideKind.Coupler => Inner, _ => SKColors.White };
                pen.Path(shape.Outline.Select(p => (X(p.Station), axis - (p.Across * scale))), true, Stroke.Line, fill);
            }

            foreach (var shape in view.Shapes.Where(s => s.Kind is SideKind.Plate or SideKind.Ring or SideKind.Mount))
                pen.Path(shape.Outline.Select(p => (X(p.Station), axis - (p.Across * scale))), true, Stroke.Thin, shape.Kind == SideKind.Mount ? null : Outer);
        });
        pen.Line(X(from) - 2, axis, X(to) + 2, axis, Stroke.Axis);
        pen.Line(X(joint.Break), axis - half - 3, X(joint.Break), axis + half + 3, Stroke.Dye);
        Between(pen, X(side.From), X(side.To), axis + half + 7, axis + half + 1, Length(joint.Engagement));
        foreach (var station in holes.GroupBy(h => (h.Row, Math.Round(h.Station, 6))).Select(g => g.First()))
        {
            foreach (var sign in new[] { -1, 1 }) pen.Line(X(station.Station), axis + (sign * (half + 1.5)), X(station.Station), axis + (sign * (half - (station.Depth * scale) - 1.5)), Stroke.DyeThin);
        }

        if (holes.FirstOrDefault() is { } first) Between(pen, X(first.Edge.Station), X(first.Station), axis - half - 5, axis - half - 1, Length(first.FromEdge));
    }

    // A dimension: arrows between two places, and the length beside them.
    private static void Between(Pen pen, double from, double to, double y, double foot, string words)
    {
        var (left, right) = (Math.Min(from, to), Math.Max(from, to));
        foreach (var x in new[] { left, right }) pen.Line(x, foot, x, y + Math.Sign(y - foot), Stroke.Thin);
        pen.Line(left, y, right, y, Stroke.Thin);
        foreach (var (x, way) in new[] { (left, 1), (right, -1) }) pen.Path([(x, y), (x + (way * 1.6), y - 0.5), (x + (way * 1.6), y + 0.5)], true, null, Ink.Light.Line);
        var width = Lettering.Small.Width(words);
        if (width + 2 < right - left) pen.Words(words, (left + right) / 2, y - 0.8, Lettering.Small, null, SKTextAlign.Center);
        else pen.Words(words, right + 1.5, y + 0.8, Lettering.Small);
    }

    private string Row(Hole[] row)
    {
        var clocks = row.All(h => double.IsFinite(h.Clock)) ? $" at {string.Join(", ", row.Select(h => (h.Clock * 180 / Math.PI).ToString("0.#", CultureInfo.InvariantCulture) + "°"))}" : "; clock angles are not typed";
        var marks = row.Length == 1 ? row[0].Mark : $"{row[0].Mark} to {row[^1].Mark}";
        return $"{marks}, {row[0].Row}: {row.Length.ToString(CultureInfo.InvariantCulture)}{clocks}, {Length(row[0].FromEdge)} from the {row[0].Edge.Name}. {string.Join("; ", row[0].Cuts.Select(Cut))}.";
    }

    // What is done to one wall.
    private static string Cut(HoleCut cut)
    {
        var words = $"{cut.PartName} {Bore(cut.Diameter, cut.Drill?.Name)}";
        if (cut.Tap is { } tap) words += $", tap {tap}";
        if (cut.Countersink > 0) words += string.Create(CultureInfo.InvariantCulture, $", countersink {1000 * cut.Countersink:0.0} mm at {cut.CountersinkAngle * 180 / Math.PI:0}°");
        return cut.Remark.Length > 0 ? $"{words}, {cut.Remark}" : words;
    }

    private static string Bore(double diameter, string? drill) => double.IsNaN(diameter) ? "size open"
        : string.Create(CultureInfo.InvariantCulture, $"{1000 * diameter:0.00} mm") + (drill is null || drill.EndsWith("mm", StringComparison.Ordinal) ? "" : $" ({drill})");

    private string Length(double metres) => Shown.Text(metres, Unit.Length, packet.Inch);
}
