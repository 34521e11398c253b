using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Motors;

/// <summary>
/// Letter class of a total impulse: above one bound, up to and including the next, each bound twice the one before
/// (NFPA 1125; table <c>motor-classes.csv</c>). The bounds are printed to 0.01 N·s, so impulse is rounded to that first:
/// 160.00 is G, 160.01 is H.
/// </summary>
/// <param name="Letter">1/4A, 1/2A, A to T.</param>
/// <param name="Above">Lower bound, N·s, not included.</param>
/// <param name="To">Upper bound, N·s, included.</param>
/// <param name="Source">Where the row is from.</param>
public sealed record MotorClass(string Letter, double Above, double To, string Source)
{
    /// <summary>The table, smallest class first.</summary>
    public static ValueList<MotorClass> All { get; } = Read();

    /// <summary>The class of a total impulse in N·s, of one motor or of all motors installed; null outside the table.</summary>
    public static MotorClass? Of(double totalImpulse)
    {
        var impulse = totalImpulse >= 1.25 ? Math.Round(totalImpulse, 2, MidpointRounding.AwayFromZero) : totalImpulse;
        return All.FirstOrDefault(c => impulse > c.Above && impulse <= c.To);
    }

    /// <summary>Where an impulse lies between the bounds of this class: 0 at the lower, 1 at the upper.</summary>
    public double Share(double totalImpulse) => (totalImpulse - Above) / (To - Above);

    private static ValueList<MotorClass> Read() => EmbeddedTable.Rows("motor-classes", 4)
        .Select(cells => new MotorClass(cells[0], EmbeddedTable.Number(cells[1]), EmbeddedTable.Number(cells[2]), cells[3])).ToValueList();
}
