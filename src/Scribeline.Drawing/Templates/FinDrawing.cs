using System.Globalization;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Shop;

namespace Scribeline.Drawing.Templates;

/// <summary>Templates of fins: their outline to cut, and a guide that holds them at their angles.</summary>
internal static class FinDrawing
{
    /// <summary>The outline of one fin, its tab included; the root lies at the foot.</summary>
    public static Template Outline(FinPlates fins, bool inch)
    {
        var draft = new TemplateDraft();
        var corners = FinCorners.Of(fins.Fins.Outline);
        double span = corners.Max(c => c.Y), front = Math.Min(corners.Min(c => c.X), 0), rear = corners.Max(c => c.X), tab = fins.TabLength > 0 ? fins.TabDepth : 0;
        double root = Mm(span) + 1, left = 1 - Mm(front), width = Mm(rear - front) + 2, height = Mm(span + tab) + 2;
        List<(double X, double Y)> outline = [.. corners.Select(c => (left + Mm(c.X), root - Mm(c.Y)))];
        if (tab > 0)
        {
            double from = fins.TabFront, to = fins.TabFront + fins.TabLength;
            outline.AddRange([(left + Mm(to), root), (left + Mm(to), root + Mm(tab)), (left + Mm(from), root + Mm(tab)), (left + Mm(from), root)]);
            draft.Line(LineRole.Edge, false, (left + Mm(from), root), (left + Mm(to), root));
        }

        draft.Line(LineRole.Cut, true, [.. outline]);
        draft.InRow($"{fins.Name}, cut {fins.Fins.Count}", root - 4, left + (Mm(fins.Length) * 0.3), left + Mm(fins.Length), width, height, strong: true);
        draft.InRow("root: forward end left", root - 8, left + (Mm(fins.Length) * 0.3), left + Mm(fins.Length), width, height);
        draft.Fact($"Cut {fins.Fins.Count.ToString(CultureInfo.InvariantCulture)}, {TemplateDraft.Length(fins.Fins.Thickness, inch)} thick. Root {TemplateDraft.Length(fins.Length, inch)}, span {TemplateDraft.Length(span, inch)}.");
        return draft.Done($"{fins.Name}: outline", width, height);
    }

    /// <summary>A card with the tube's circle and a slot for every fin, seen looking forward from the tail.</summary>
    /// <param name="fins">The fins.</param>
    /// <param name="widest">Greatest width that fits a sheet, mm.</param>
    /// <param name="inch">Whether inches come first.</param>
    public static Template Guide(FinPlates fins, double widest, bool inch)
    {
        var draft = new TemplateDraft();
        double radius = Mm(fins.Fins.BodyRadius), reach = Math.Clamp((widest / 2) - radius - 1, 10, 28), outer = radius + reach, middle = outer + 1;
        var half = Mm(fins.Fins.Thickness) / 2;
        draft.Circle(LineRole.Cut, middle, middle, radius);
        draft.Circle(LineRole.Cut, middle, middle, outer);
        draft.Line(LineRole.Cross, false, (middle - 4, middle), (middle + 4, middle));
        draft.Line(LineRole.Cross, false, (middle, middle - 4), (middle, middle + 4));
        for (var i = 0; i < fins.Fins.Count; i++)
        {
            // Looking forward from the tail clock angles run clockwise; the scribe line is up.
            var clock = fins.Fins.FirstClock + (2 * Math.PI * i / fins.Fins.Count);
            var (sin, cos) = Math.SinCos(clock);
            (double X, double Y) At(double r, double aside) => (middle + (r * sin) + (aside * cos), middle - (r * cos) + (aside * sin));
            var foot = Math.Sqrt((radius * radius) - (half * half));
            draft.Line(LineRole.Fin, false, At(foot, -half), At(outer - 4, -half), At(outer - 4, half), At(foot, half));
            var name = At(radius - 7, 0);
            draft.Words(string.Create(CultureInfo.InvariantCulture, $"fin {i + 1}"), name.X - 3, name.Y + 1);
        }

        draft.Line(LineRole.Scribe, false, (middle, middle - radius), (middle, middle - radius + 6));
        draft.Words("scribe line", middle + 1, middle - radius + 5, strong: true);
        draft.Fact($"Card with the tube's circle, {TemplateDraft.Length(2 * fins.Fins.BodyRadius, inch)}, and a slot for each fin; seen looking forward from the tail. Cut two and space them along the root.");
        return draft.Done($"{fins.Name}: marking guide", 2 * middle, 2 * middle);
    }

    private static double Mm(double metres) => 1000 * metres;
}
