using System.Globalization;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;
using Sheet = Scribeline.Drawing.Sheets.Sheet;

namespace Scribeline.Drawing.Packets;

/// <summary>The whole rocket on one lying sheet: stations, joints, bays with what is in them, balance and centre of pressure.</summary>
/// <param name="packet">What it is made from.</param>
internal sealed class ArrangementSheet(PacketContents packet)
{
    private const double Side = 14;

    private readonly Paper paper = packet.Paper.Turned();
    private readonly SideView view = packet.Study.SideView;

    private double Width => paper.Width - (2 * Side);

    /// <summary>The sheet.</summary>
    public Sheet Sheet => new(paper, "General arrangement", Draw) { Bookmarks = [new("General arrangement")] };

    private void Draw(Pen pen)
    {
        var drawing = new SideDrawing(view, packet.Inch);
        var scale = drawing.Fit(Width - 10, 52);
        pen.Words("General arrangement", Side, 16, Lettering.Chapter);
        pen.Words(string.Create(CultureInfo.InvariantCulture, $"scale 1 : {1000 / scale:0.0}; stations aft of the nose tip; the scribe line faces you"), Side, 21, Lettering.Small, Ink.Light.Quiet);
        double left = Side + 5 + ((Width - 10 - ((view.Rear - view.Front) * scale)) / 2), high = view.Reach * scale;
        var axis = 24 + Math.Max(high + 8, (view.BodyRadius * scale) + 18);
        drawing.DrawNames(pen, left, axis - Math.Max(high + 3, (view.BodyRadius * scale) + 13), scale);
        drawing.Draw(pen, left, axis, scale, insides: true);
        drawing.DrawBalance(pen, left, axis, scale);
        var y = axis + Math.Max(high + 3, (view.BodyRadius * scale) + 11);
        y += drawing.DrawStations(pen, left, y, scale);
        y = Bays(pen, left, y + 2, scale);
        Tables(pen, y + 4);
    }

    // Each bay as a bracket over its stretch, its contents beneath.
    private double Bays(Pen pen, double left, double y, double scale)
    {
        var lowest = y;
        foreach (var bay in view.Bays)
        {
            double from = left + ((bay.Front - view.Front) * scale) + 0.5, to = left + ((bay.Rear - view.Front) * scale) - 0.5, wide = to - from;
            if (wide < 12) continue;
            pen.Path([(from, y), (from, y + 1.5), (to, y + 1.5), (to, y)], false, Stroke.Thin);
            List<string> lines = [.. Lettering.SmallStrong.Wrap($"bay of {bay.Name}", wide)];
            var heads = lines.Count;
            if (bay.Contents.Count > 0) lines.AddRange(Lettering.Small.Wrap(string.Join(", ", bay.Contents), wide));
            if (bay.Charges.Count > 0) lines.AddRange(Lettering.Small.Wrap($"charges {string.Join(", ", bay.Charges)}", wide));
            for (var i = 0; i < Math.Min(lines.Count, 6); i++) pen.Words(lines[i], from, y + 5 + (i * 3.3), i < heads ? Lettering.SmallStrong : Lettering.Small);
            lowest = Math.Max(lowest, y + 5 + (Math.Min(lines.Count, 6) * 3.3));
        }

        return lowest;
    }

    private void Tables(Pen pen, double y)
    {
        const double Gap = 8;
        var half = (Width - Gap) / 2;
        Column(pen, Grid.Rows([new("part", Share: 1), new("front", true), new("rear", true), new("outside", true), new("mass", true), new("material", Share: 1)], [.. Parts()], half), Side, y, half);
        Column(pen, Grid.Rows([new("joint", Share: 1.4), new("held", Share: 1), new("station", true), new("reach", true), new("play", true)], [.. Joints()], half), Side + half + Gap, y, half);
    }

    private void Column(Pen pen, IEnumerable<Block> blocks, double x, double y, double width)
    {
        foreach (var block in blocks)
        {
            if (y + block.Height(width) > paper.Height - TitleStrip.Height - 2) return;
            block.Draw(pen, x, y, width);
            y += block.Height(width);
        }
    }

    private IEnumerable<GridRow> Parts() => packet.Study.Vehicle.Parts.Select((p, i) => new GridRow(
        [p.Name, Length(p.Front), Length(p.Rear), Length(Outside(p)), Shown.Text(packet.Study.Masses.Parts[i].Total.Mass, Unit.Mass, packet.Inch), p.Material.Name]));

    private IEnumerable<GridRow> Joints() => packet.Study.Vehicle.Joints.Select(j => new GridRow(
        [$"{packet.Study.Vehicle.Parts[j.Forward].Name} to {packet.Study.Vehicle.Parts[j.Aft].Name}", $"{j.Kind.ToString().ToLowerInvariant()}{(j.Separable ? ", lets go" : "")}", Length(j.Break), Length(j.Engagement), Length(j.Play)]));

    private static double Outside(Part part) => part.Outside.Count > 0 ? part.Outside.Max(s => Math.Max(s.FrontDiameter, s.RearDiameter)) : Math.Max(part.Ahead.OuterDiameter, part.Behind.OuterDiameter);

    private string Length(double metres) => Shown.Text(metres, Unit.Length, packet.Inch);
}
