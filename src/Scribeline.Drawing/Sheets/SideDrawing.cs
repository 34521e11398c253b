using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;
using SkiaSharp;

namespace Scribeline.Drawing.Sheets;

/// <summary>Draws the side view lying, nose to the left, with its stations beneath.</summary>
/// <param name="view">What is drawn.</param>
/// <param name="inch">Whether stations are in inches.</param>
internal sealed class SideDrawing(SideView view, bool inch)
{
    private static readonly SKColor Tint = SKColor.Parse("#eef1f8");
    private static readonly SKColor White = SKColors.White;

    /// <summary>mm of paper to a metre of rocket that fits a space.</summary>
    public double Fit(double width, double height) => Math.Min(width / (view.Rear - view.Front), height / (2 * view.Reach));

    /// <summary>Draws it.</summary>
    /// <param name="pen">On the sheet.</param>
    /// <param name="left">Left edge, mm.</param>
    /// <param name="axis">Height of the axis on the sheet, mm.</param>
    /// <param name="scale">mm to a metre, see <see cref="Fit"/>.</param>
    /// <param name="insides">Whether what lies inside is shown.</param>
    public void Draw(Pen pen, double left, double axis, double scale, bool insides)
    {
        double X(double station) => left + ((station - view.Front) * scale);
        double Y(double across) => axis - (across * scale);
        foreach (var shape in view.Shapes)
        {
            if (shape.Layer == SideLayer.Inside && !insides) continue;
            var (stroke, fill) = Look(shape);
            pen.Path(shape.Outline.Select(p => (X(p.Station), Y(p.Across))), true, stroke, fill);
        }

        pen.Line(X(view.Front) - 4, axis, X(view.Rear) + 4, axis, Stroke.Axis);
        foreach (var joint in view.Joints)
        {
            var half = (joint.Radius * scale) + 1.6;
            pen.Line(X(joint.Break), axis - half, X(joint.Break), axis + half, joint.Separable ? Stroke.Dye : Stroke.Line);
        }

        foreach (var hole in view.Holes.Where(h => h.Near))
            pen.Circle(X(hole.Station), Y(hole.Across), Math.Max((hole.Diameter ?? 0.002) * scale / 2, 0.25), Stroke.Thin, White);
        if (!insides) return;
        foreach (var charge in view.Charges)
        {
            var x = X(charge.Station);
            var tip = charge.Aftward ? 1.8 : -1.8;
            var aside = charge == view.Charges.First(c => c.Station == charge.Station) ? -1.4 : 1.4;
            pen.Path([(x, axis + aside - 0.8), (x + tip, axis + aside - 0.8), (x + tip, axis + aside + 0.8), (x, axis + aside + 0.8)], true, null, Ink.Light.Accent);
        }
    }

    /// <summary>The balance wedge beneath the body and the side-force arrow above it, with words.</summary>
    public void DrawBalance(Pen pen, double left, double axis, double scale)
    {
        var body = view.BodyRadius * scale;
        if (view.Balance is { } balance)
        {
            double x = left + ((balance.Station - view.Front) * scale), y = axis + body;
            pen.Path([(x, y), (x + 2.2, y + 4), (x - 2.2, y + 4)], true, Stroke.Thin, Ink.Light.Line);
            Named(pen, balance, x, y + 7, left, left + ((view.Rear - view.Front) * scale));
        }

        if (view.CentreOfPressure is { } force)
        {
            double x = left + ((force.Station - view.Front) * scale), y = axis - body;
            pen.Line(x, y - 8, x, y - 1.6, Stroke.Dye);
            pen.Path([(x, y - 0.2), (x + 1.2, y - 2.6), (x - 1.2, y - 2.6)], true, null, Ink.Light.Accent);
            Named(pen, force, x, y - 9.5, left, left + ((view.Rear - view.Front) * scale));
        }
    }

    /// <summary>Stations of the parts and joints, ticked beneath; returns the height used, mm.</summary>
    public double DrawStations(Pen pen, double left, double top, double scale)
    {
        double X(double station) => left + ((station - view.Front) * scale);
        double[] stations = [0, .. view.Joints.Select(j => j.Break), view.Length];
        pen.Line(X(0), top, X(view.Length), top, Stroke.Thin);
        List<(double Left, double Right, int Row)> taken = [];
        double[] ordered = [.. stations.Distinct().Order()];
        for (var i = 0; i < ordered.Length; i++)
        {
            // Neighbours too close for words in the middle of their ticks lean away from each other.
            var words = Shown.Text(ordered[i], Unit.Length, inch);
            double wide = Lettering.Small.Width(words), x = X(ordered[i]);
            bool crowdedAfter = i + 1 < ordered.Length && X(ordered[i + 1]) - x < wide + 2, crowdedBefore = i > 0 && x - X(ordered[i - 1]) < wide + 2;
            var from = Math.Clamp(crowdedAfter && !crowdedBefore ? x - wide + 1 : crowdedBefore && !crowdedAfter ? x - 1 : x - (wide / 2), left - 2, Math.Max(left, X(view.Rear) - wide + 2));
            var row = Enumerable.Range(0, 4).First(r => r == 3 || !taken.Exists(t => t.Row == r && from < t.Right + 1 && from + wide > t.Left - 1));
            taken.Add((from, from + wide, row));
            pen.Line(x, top - 1.2, x, top + 1.2, Stroke.Thin);
            pen.Words(words, from, top + 4 + (row * 3.6), Lettering.Small);
        }

        return 5 + (3.6 * (taken.Max(t => t.Row) + 1));
    }

    /// <summary>Names of the parts above the body, each over its own stretch.</summary>
    public void DrawNames(Pen pen, double left, double baseline, double scale)
    {
        var bodies = view.Shapes.Where(s => s.Kind == SideKind.Body).ToList();
        var last = double.NegativeInfinity;
        foreach (var body in bodies)
        {
            double middle = left + ((((body.Front + body.Rear) / 2) - view.Front) * scale), wide = Lettering.Small.Width(body.Name);
            var from = Math.Max(middle - (wide / 2), left);
            if (from < last + 2) continue;
            pen.Words(body.Name, from, baseline, Lettering.Small, Ink.Light.Quiet);
            last = from + wide;
        }
    }

    private void Named(Pen pen, SideStation station, double x, double y, double left, double right)
    {
        var words = $"{station.Words}, {Shown.Text(station.Station, Unit.Length, inch)}";
        var wide = Lettering.Small.Width(words);
        pen.Words(words, Math.Clamp(x - (wide / 2), left, Math.Max(left, right - wide)), y + 1, Lettering.Small);
    }

    private static (Stroke Stroke, SKColor? Fill) Look(SideShape shape) => shape.Kind switch
    {
        SideKind.Body => (Stroke.Bold, White),
        SideKind.Fin => (Stroke.Line, shape.Layer == SideLayer.Behind ? White : null),
        SideKind.Guide => (Stroke.Thin, White),
        SideKind.Plate or SideKind.Ring => (Stroke.Thin, Tint),
        SideKind.Motor => (Stroke.DyeThin, null),
        SideKind.Stowed => (Stroke.Faint, null),
        SideKind.Hollow => (Stroke.Faint, null),
        _ => (Stroke.Hidden, null),
    };
}
