namespace Scribeline.Engine.Tables;

/// <summary>A failure that is flown for every rocket it applies to; it names roles, not things.</summary>
/// <param name="Name">In plain words; {altimeter} stands for the name of one.</param>
/// <param name="Dead">Altimeters that fire nothing: each in turn, all, or empty for none.</param>
/// <param name="Unfired">Whose charges do not burn: drogue, main or empty.</param>
/// <param name="Unopened">Whose canopies do not open: drogue, main or empty.</param>
/// <param name="LetsGo">Whose joint lets go by itself, and when: "main at apogee", "drogue at burnout", or empty.</param>
/// <param name="Together">Whose charges burn at once: drogue, main or empty.</param>
/// <param name="StrongestPins">Whether every joint holds as much as it may.</param>
/// <param name="Powder">Share of the heat and gas the powder gives.</param>
/// <param name="BurnTime">Of the motor over that tested, its impulse unchanged.</param>
/// <param name="Source">Publication, assumption or "common practice".</param>
public sealed record StandardFailure(
    string Name, string Dead, string Unfired, string Unopened, string LetsGo, string Together, bool StrongestPins, double Powder, double BurnTime, string Source)
{
    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<StandardFailure> All { get; } = [.. EmbeddedTable.Rows("failures", 10).Select(cells => new StandardFailure(
        cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6] == "yes", EmbeddedTable.NumberOrNull(cells[7]) ?? 1,
        EmbeddedTable.NumberOrNull(cells[8]) ?? 1, cells[9]))];
}
