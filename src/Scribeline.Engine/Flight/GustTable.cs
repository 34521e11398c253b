using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Turbulence of one of many flights as its lane reads it: a <see cref="GustField"/> by grid height, the three components side by side.</summary>
/// <param name="heights">Grid heights.</param>
/// <param name="spacing">m.</param>
internal readonly struct GustTable(int heights, double spacing)
{
    /// <summary>Components.</summary>
    public const int Quantities = 3;

    private readonly Axis axis = new(0, spacing, Math.Max(heights, 2));

    /// <summary>Whether the air moves at all.</summary>
    public bool IsStill => heights == 0;

    /// <summary>Numbers in the table of one flight.</summary>
    public int Size => heights == 0 ? 0 : (heights + 2) * Quantities;

    /// <summary>Fills the table of one flight; the end rows stand beyond the ends too, as in the field.</summary>
    public void Fill(Span<double> table, GustField field)
    {
        for (var i = -1; i <= heights; i++)
        {
            var held = Math.Clamp(i, 0, heights - 1);
            for (var k = 0; k < Quantities; k++) table[((i + 1) * Quantities) + k] = field.Values[(k * heights) + held];
        }
    }

    /// <summary>East, north and up of each lane, m/s.</summary>
    public void Read<T>(ReadOnlySpan<double> tables, T start, T height, Span<T> row)
        where T : struct, IReal<T> => CubicStencil<T>.At(height, axis).Read(tables, start, Quantities, row);
}
