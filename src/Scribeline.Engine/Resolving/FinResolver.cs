using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Fins.</summary>
internal static class FinResolver
{
    public static FinPlates? Fins(FinsDesign d, TubeDesign design, Tube tube, ResolvingNotes notes)
    {
        string name = $"Fins of {tube.Name}";
        if (Outline(d, name, notes) is not { } outline) return null;
        Material? own = notes.Material(d.Material, d.At), stuff = own ?? (d.Material is null ? notes.Material(design.Material, design.At) : null);
        if (d.Count is < 3 or > 8) notes.Problem(d.At + ".count", $"{d.Count} fins cannot steer a rocket by these methods.", "Type 3 to 8.");
        EdgeWord? both = d.Edge;
        FinEdge leading = Edge(d.LeadingEdge ?? both), trailing = Edge(d.TrailingEdge ?? both);
        if (leading == FinEdge.Sharp || trailing == FinEdge.Sharp)
        {
            if (d.Bevel is null) notes.Problem(d.At + ".bevel", $"The sharp edges of {name} need their length along the chord.", "Type bevel.");
        }

        if ((d.LeadingEdge ?? d.TrailingEdge ?? both) is null) notes.Assume(d.At + ".edge", $"The edges of {name} are taken as square.");
        double root = outline.RootChord();
        FinSet set = new(
            name, d.Count, outline, tube.Length - notes.Si(d.FromAftEnd) - root, tube.OuterDiameter / 2, notes.Si(d.Thickness), leading, trailing,
            notes.Si(d.Bevel, 0), notes.Si(d.Cant, 0), notes.Si(d.FirstClock, 0), stuff?.ShearModulus ?? double.NaN);
        Material material = stuff ?? notes.MassMaterial(d.Material, null, design, d.At, name);
        if (d.Fillet is not null) notes.Assume(d.At + ".fillet", $"The fillets of {name} are taken as cast epoxy.");
        FinPlates plates = new(name, material, set) { Fillet = notes.Si(d.Fillet, 0), FilletMaterial = MaterialTable.Find("epoxy") };
        if (d.Tab is not { } tab) return plates;
        double length = notes.Si(tab.Length);
        if (tab.FromLeadingEdge is null) notes.Assume(tab.At, $"The tab of {name} is taken as midway along the root.");
        return plates with { TabFront = notes.Si(tab.FromLeadingEdge, (root - length) / 2), TabLength = length, TabDepth = notes.Si(tab.Depth) };
    }

    private static FinOutline? Outline(FinsDesign d, string name, ResolvingNotes notes)
    {
        List<string> missing = [];
        double Needed(IMeasure? measure, string key)
        {
            if (measure is null) missing.Add(key);
            return notes.Si(measure, 0);
        }

        FinOutline outline;
        switch (d.Shape)
        {
            case FinShape.Elliptical:
                outline = new EllipticalFin(Needed(d.Root, "root"), Needed(d.Span, "span"));
                break;
            case FinShape.Free:
                if (!Free(d, name, notes)) return null;
                return new FreeFin(d.Corners.Select(c => new FinCorner(notes.Si(c.Aft), notes.Si(c.Out))).ToValueList());
            default:
                outline = new TrapezoidFin(Needed(d.Root, "root"), Needed(d.Tip, "tip"), Needed(d.Span, "span"), Needed(d.Sweep, "sweep"));
                break;
        }

        if (missing.Count == 0) return outline;
        notes.Problem(d.At, $"{name} need {string.Join(", ", missing)}.");
        return null;
    }

    /// <summary>A free outline runs from [0, 0] round to [root, 0] without crossing itself.</summary>
    private static bool Free(FinsDesign d, string name, ResolvingNotes notes)
    {
        List<(double X, double Y)> c = [.. d.Corners.Select(p => (notes.Si(p.Aft), notes.Si(p.Out)))];
        string? wrong = c.Count < 3 ? $"The outline of {name} needs three corners or more."
            : c[0] != (0, 0) ? $"The outline of {name} must begin at [0, 0]."
            : c[^1].Y != 0 || c[^1].X <= 0 ? $"The outline of {name} must end on the root, at [root, 0]."
            : Crosses(c) ? $"The outline of {name} crosses itself."
            : null;
        if (wrong is not null) notes.Problem(d.At + ".corners", $"{wrong}");
        return wrong is null;
    }

    private static bool Crosses(List<(double X, double Y)> c)
    {
        int n = c.Count;
        for (int i = 0; i < n; i++)
        {
            for (int j = i + 2; j < n; j++)
            {
                if (i == 0 && j == n - 1) continue;
                var (a, b, p, q) = (c[i], c[i + 1], c[j], c[(j + 1) % n]);
                if (Side(a, b, p) * Side(a, b, q) < 0 && Side(p, q, a) * Side(p, q, b) < 0) return true;
            }
        }

        return false;
    }

    private static double Side((double X, double Y) a, (double X, double Y) b, (double X, double Y) p) =>
        (b.X - a.X) * (p.Y - a.Y) - (b.Y - a.Y) * (p.X - a.X);

    private static FinEdge Edge(EdgeWord? word) => word switch
    {
        EdgeWord.Rounded => FinEdge.Rounded,
        EdgeWord.Sharp => FinEdge.Sharp,
        _ => FinEdge.Square,
    };
}
