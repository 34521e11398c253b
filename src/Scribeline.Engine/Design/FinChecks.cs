using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions within a set of fins.</summary>
internal static class FinChecks
{
    internal static void In(FinsDesign fins, List<Problem> problems)
    {
        if (fins.Count is < 3 or > 8) problems.Add(new($"{fins.At}.count", $"{fins.Count} fins cannot be computed.", "Type 3 to 8."));
        var shape = fins.Shape switch
        {
            FinShape.Trapezoid => (Needs: (string[])["root", "tip", "span", "sweep"], Name: "trapezoid"),
            FinShape.Elliptical => (Needs: ["root", "span"], Name: "elliptical fin"),
            _ => (Needs: ["corners"], Name: "free outline"),
        };
        (string Key, bool Typed)[] keys =
        [
            ("root", fins.Root is not null), ("tip", fins.Tip is not null), ("span", fins.Span is not null), ("sweep", fins.Sweep is not null),
            ("corners", fins.Corners.Count > 0),
        ];
        foreach (var (key, typed) in keys)
        {
            var needed = shape.Needs.Contains(key);
            if (needed && !typed) problems.Add(new(fins.At, $"'{key}' is missing: the shape is a {shape.Name}.", $"Add {key}."));
            if (typed && !needed) problems.Add(new($"{fins.At}.{key}", $"'{key}' does not belong to a {shape.Name}.", "Remove it, or change the shape."));
        }

        if (fins.Corners.Count > 0) Corners(fins, problems);
        var sharp = fins.Edge == EdgeWord.Sharp || fins.LeadingEdge == EdgeWord.Sharp || fins.TrailingEdge == EdgeWord.Sharp;
        if (sharp && fins.Bevel is null) problems.Add(new(fins.At, "A sharp edge needs the length of its bevel.", "Add bevel."));
    }

    private static void Corners(FinsDesign fins, List<Problem> problems)
    {
        var (corners, at) = (fins.Corners, $"{fins.At}.corners");
        if (corners.Count < 3) problems.Add(new(at, "A free outline needs three corners or more.", "Begin with [0, 0] and end at the root's trailing edge."));
        if (corners[0].Aft.Si != 0 || corners[0].Out.Si != 0) problems.Add(new(corners[0].At, "The first corner is not the root's leading edge.", "Begin with [0, 0]."));
        if (corners[^1].Out.Si != 0 || corners[^1].Aft.Si <= 0) problems.Add(new(corners[^1].At, "The last corner is not the root's trailing edge.", "End with [root, 0]."));
        for (var i = 0; i + 1 < corners.Count; i++)
        {
            for (var j = i + 2; j + 1 < corners.Count; j++)
            {
                if (!Cross(corners[i], corners[i + 1], corners[j], corners[j + 1])) continue;
                problems.Add(new(at, $"The outline crosses itself between corners {i + 1} and {j + 1}.", "List the corners in order round the fin."));
                return;
            }
        }
    }

    private static bool Cross(CornerDesign a, CornerDesign b, CornerDesign c, CornerDesign d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    private static int Side(CornerDesign a, CornerDesign b, CornerDesign p) =>
        Math.Sign(((b.Aft.Si - a.Aft.Si) * (p.Out.Si - a.Out.Si)) - ((b.Out.Si - a.Out.Si) * (p.Aft.Si - a.Aft.Si)));
}
