using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Shop;

/// <summary>How rows of holes are lettered, and which drill a typed diameter means.</summary>
internal static class HoleMarks
{
    // A drill farther than this from a typed diameter makes another hole, m.
    private const double SameSize = 0.05e-3;

    /// <summary>A, B ... Z, AA, AB ...</summary>
    public static string Letters(int row) => row < 26 ? ((char)('A' + row)).ToString() : Letters((row / 26) - 1) + Letters(row % 26);

    /// <summary>The drill of a diameter; null where none of that size is sold.</summary>
    public static Drill? Drill(double diameter) => Tables.Drill.Nearest(diameter) is var nearest && Math.Abs(nearest.Diameter - diameter) <= SameSize ? nearest : null;
}
