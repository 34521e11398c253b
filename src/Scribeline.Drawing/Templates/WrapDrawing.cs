using System.Globalization;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Shop;

namespace Scribeline.Drawing.Templates;

/// <summary>A strip to wrap round a tube, as a template.</summary>
internal static class WrapDrawing
{
    private const double Tab = 1000 * WrapTemplate.Tab;

    /// <summary>The template of a strip; its scribe line stands at <see cref="Origin"/>.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="inch">Whether inches come first.</param>
    public static Template Of(WrapTemplate strip, bool inch)
    {
        var draft = new TemplateDraft();
        double left = Origin(strip), right = left + Mm(strip.Length), height = Mm(strip.Height), width = right + Tab;
        draft.Line(LineRole.Cut, false, (left, 0), (right, 0));
        draft.Line(LineRole.Cut, false, (left, height), (right, height));
        draft.Line(LineRole.Tab, false, (right, 0), (right + Tab, 2), (right + Tab, height - 2), (right, height));
        foreach (var mark in strip.Marks) Drill(draft, mark, left, Mm(strip.Length));
        Closing(draft, left, right, height);
        var faces = strip.Lines.Where(l => l.Kind == WrapLineKind.FinFace).Select(l => left + Mm(l.Along)).ToList();
        foreach (var line in strip.Lines) Along(draft, line, left + Mm(line.Along), height, faces);
        Arrow(draft, left, right, height);
        foreach (var edge in strip.Edges) Round(draft, edge, left, right, height);
        foreach (var mark in strip.Marks)
            draft.Beside(Label(mark.Hole), left + Mm(mark.Along), Mm(mark.Down), (Mm(mark.Hole.OpenDiameter) / 2) + 1, right, height);
        Facts(draft, strip, inch);
        return draft.Done(strip.Name, width, height);
    }

    /// <summary>From the left edge of the template to the scribe line, mm: room for holes that lie on it.</summary>
    public static double Origin(WrapTemplate strip) =>
        strip.Marks.Select(m => (Mm(m.Hole.OpenDiameter) / 2) + 2.7 - Mm(m.Along)).DefaultIfEmpty(0).Max() is > 0 and var over ? Math.Ceiling(over) : 0;

    private static void Drill(TemplateDraft draft, WrapMark mark, double left, double length)
    {
        double diameter = Mm(mark.Hole.Diameter), sunk = Mm(mark.Hole.OpenDiameter), x = Mm(mark.Along), reach = (sunk / 2) + 2.5;
        draft.Drilled(left + x, Mm(mark.Down), diameter, sunk);

        // What lies across the closing line shows at both ends of the strip.
        if (x < reach) draft.Drilled(left + x + length, Mm(mark.Down), diameter, sunk);
        if (x > length - reach) draft.Drilled(left + x - length, Mm(mark.Down), diameter, sunk);
    }

    private static void Along(TemplateDraft draft, WrapLine line, double x, double height, List<double> faces)
    {
        if (line.Kind == WrapLineKind.Scribe) return;
        var role = line.Kind switch { WrapLineKind.Rail => LineRole.Rail, WrapLineKind.Division => LineRole.Division, _ => LineRole.Fin };
        draft.Line(role, false, (x, 0), (x, height));
        if (line.Kind != WrapLineKind.FinFace)
        {
            // Between the faces of a fin there is no room for words.
            var aside = line.Kind == WrapLineKind.Fin && faces.Count > 0 ? x - faces.Where(f => f < x).DefaultIfEmpty(x).Max() : 0;
            draft.Upward(string.Create(CultureInfo.InvariantCulture, $"{line.Name}, {line.Clock * 180 / Math.PI:0.#}°"), x - aside - 0.8, height);
        }

        draft.Take(x - 0.4, 0, x + 0.4, height);
    }

    private static void Closing(TemplateDraft draft, double left, double right, double height)
    {
        foreach (var x in new[] { left, right })
        {
            draft.Line(LineRole.Scribe, false, (x, 0), (x, height));
            draft.Upward("scribe line", x == left ? x + 3 : x - 0.8, height, strong: true);
            draft.Take(x - 0.4, 0, x + 0.4, height);
        }

        var tab = Lettering.Small.Width("glue under");
        if (tab < height - 8) draft.Words("glue under", right + (Tab / 2) + 1, (height + tab) / 2, turn: -90);
    }

    // Which way is forward: an arrow where there is room for it.
    private static void Arrow(TemplateDraft draft, double left, double right, double height)
    {
        if (height < 18) return;
        for (var x = left + 8; x < right - 20; x += 5)
        {
            if (!draft.InRow("forward", 7.5, x + 3, x + 20, right, height, strong: true)) continue;
            draft.Line(LineRole.Scribe, false, (x, 10), (x, 2.5));
            draft.Line(LineRole.Scribe, false, (x - 1.3, 5), (x, 2.5), (x + 1.3, 5));
            draft.Take(x - 1.5, 2, x + 1.5, 10.5);
            return;
        }
    }

    private static void Round(TemplateDraft draft, WrapEdge edge, double left, double right, double height)
    {
        var y = Mm(edge.Down);
        draft.Line(LineRole.Edge, false, (left, y), (right, y));
        draft.Take(left, y - 0.4, right, y + 0.4);
        if (!draft.InRow(edge.Name, y - 1, left + 6, right - 4, right, height)) draft.InRow(edge.Name, y + 3.2, left + 6, right - 4, right, height);
    }

    private static string[] Label(Hole hole)
    {
        var cut = hole.Cuts[0];
        var size = double.IsNaN(cut.Diameter) ? "size open" : string.Create(CultureInfo.InvariantCulture, $"{Mm(cut.Diameter):0.00} mm");
        return cut.Drill is { } drill ? [hole.Mark, DrillName(drill.Name), size] : [hole.Mark, size];
    }

    /// <summary>The name of a drill as a builder says it.</summary>
    public static string DrillName(string name) => $"drill {name}";

    private static void Facts(TemplateDraft draft, WrapTemplate strip, bool inch)
    {
        draft.Fact($"Tube outside {TemplateDraft.Length(strip.Diameter, inch)}; the strip closes at {TemplateDraft.Length(strip.Length, inch)} with paper {Mm(strip.Paper).ToString("0.00", CultureInfo.InvariantCulture)} mm thick.");
        draft.Fact(strip.FromRegister == 0
            ? $"Lay its {(strip.Register.Forward ? "forward" : "aft")} edge on the {strip.Register.Name}."
            : $"Its {(strip.Register.Forward ? "forward" : "aft")} edge lies {TemplateDraft.Length(strip.FromRegister, inch)} from the {strip.Register.Name}.");
        draft.Fact("Clock angles run to the right, seen from outside with forward up. Measure your own tube: the strip must close without gap or lap.");
        foreach (var mark in strip.Marks)
            draft.Fact($"{mark.Hole.Mark}: {TemplateDraft.Length(mark.Along, inch)} round from the scribe line, {TemplateDraft.Length(mark.Down, inch)} from the forward edge of the strip.");
    }

    private static double Mm(double metres) => 1000 * metres;
}
