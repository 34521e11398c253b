using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Air and mean wind of one of many flights by height, in a table that its lane reads: rows even in ln(1 + h/20 m), so a metre apart
/// near the ground and a twentieth of the height aloft, cubic between them. Against the exact column within 1e-5, against the wind within
/// some cm/s where a layer begins (tests: EnsembleTests). Held below the ground and above the top.
/// </summary>
internal sealed class HeightTable
{
    /// <summary>Quantities in a row.</summary>
    public const int Pressure = 0, Density = 1, SoundSpeed = 2, Viscosity = 3, East = 4, North = 5, Quantities = 6;

    private const int Rows = 112;
    private const double Near = 20;

    private readonly Axis axis;

    /// <param name="top">m above the pad, more than 0.</param>
    public HeightTable(double top) => axis = new(0, Math.Log(1 + (top / Near)) / (Rows - 1), Rows);

    /// <summary>Numbers in the table of one flight.</summary>
    public static int Size => (Rows + 2) * Quantities;

    /// <summary>Fills the table of one flight.</summary>
    public void Fill(Span<double> table, DayAir air, Wind wind)
    {
        for (var i = -1; i <= Rows; i++)
        {
            var row = table.Slice((i + 1) * Quantities, Quantities);
            var height = Near * (Math.Exp(axis[i]) - 1);
            var still = air.At<Scalar>(air.Elevation + height);
            var moving = wind.At<Scalar>(Math.Max(height, 0));
            (row[Pressure], row[Density], row[SoundSpeed], row[Viscosity]) = (still.Pressure, still.Density, still.SoundSpeed, still.Viscosity);
            (row[East], row[North]) = (moving.East, moving.North);
        }
    }

    /// <summary>A row between the rows of each lane's table.</summary>
    public void Read<T>(ReadOnlySpan<double> tables, T start, T height, Span<T> row)
        where T : struct, IReal<T> =>
        CubicStencil<T>.At(T.Log(T.From(1) + (T.Max(height, T.From(0)) * T.From(1 / Near))), axis).Read(tables, start, Quantities, row);
}
