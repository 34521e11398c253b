using System.Globalization;
using System.Text;
using Scribeline.App.Documents;
using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;

namespace Scribeline.App.Web;

/// <summary>A plate with all that lies on it, for the script of a page that moves things about; gaps are those the clearances are judged by.</summary>
/// <param name="Radius">Of the plate, mm.</param>
/// <param name="Bore">Of the wall a forward and an aft face pass, mm across.</param>
/// <param name="Groups">What moves together.</param>
/// <param name="Gaps">The narrowest, narrowest first.</param>
internal sealed record PlateBoard(double Radius, IReadOnlyList<double> Bore, IReadOnlyList<BoardGroup> Groups, IReadOnlyList<BoardGap> Gaps)
{
    private const int Listed = 5;

    /// <summary>Serves every plate, and what it becomes when something on it is moved.</summary>
    public static void MapPlates(IEndpointRouteBuilder app) => app.MapGet(
        "/{design}/plate/{number:int}.json",
        (DocumentShelf shelf, string design, int number, bool? inch, string? group, double? from, double? clock, bool? fine) =>
        {
            if (shelf.Find(design) is not { Drawn: { } study, Reading.Design: { } typed } || number < 0 || number >= study.Plates.Count) return Results.NotFound();
            PlateTable table = new(typed, study, number);
            var groups = table.Groups;
            if (group is not null && from is { } far && clock is { } turned && double.IsFinite(far) && double.IsFinite(turned) && groups.Any(g => g.Name == group))
                groups = table.Moved(table.Snapped(new(group, far / 1000, turned), fine ?? false));
            return Results.Text(JsonText.Of(Of(table, groups, study, inch ?? false)), "application/json", Encoding.UTF8);
        }).AddEndpointFilter(Exports.Fresh);

    private static PlateBoard Of(PlateTable table, ValueList<PlateGroup> groups, Study study, bool inch)
    {
        var plate = table.Laid(groups);
        var limit = study.Limits["plates-clear.gap"];
        return new(
            Mm(plate.Diameter / 2),
            [Mm(plate.ForwardBore), Mm(plate.AftBore)],
            [.. groups.Select(g => BoardGroup.Of(table, plate, g, inch))],
            [.. PlateGaps.Of(plate).Take(Listed).Select(g => new BoardGap(
                $"{g.First} and {g.Second}, {Face(g.Face)}", Shown.Text(g.Width, Unit.Length, inch), VerdictMark.Word(limit.Judge(g.Width, null)), VerdictMark.Shape(limit.Judge(g.Width, null))))]);
    }

    internal static double Mm(double metres) => Math.Round(1000 * metres, 3);

    private static string Face(PlateFace face) => face switch
    {
        PlateFace.Forward => "forward face",
        PlateFace.Aft => "aft face",
        _ => "through the plate",
    };
}

/// <summary>A group of a plate.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Words">Where it lies.</param>
/// <param name="Moves">Whether it can be moved.</param>
/// <param name="Turns">Whether it only turns about its own middle, which is that of the plate.</param>
/// <param name="From">Distance from the middle, mm.</param>
/// <param name="Clock">rad.</param>
/// <param name="Count">Copies round the middle.</param>
/// <param name="Things">Outlines.</param>
internal sealed record BoardGroup(string Name, string Words, bool Moves, bool Turns, double From, double Clock, int Count, IReadOnlyList<BoardThing> Things)
{
    public static BoardGroup Of(PlateTable table, PlateLayout plate, PlateGroup group, bool inch)
    {
        var (from, clock) = (group.FromCentre!.Value, group.Clock!.Value);
        var owners = Enumerable.Range(1, group.Count).Select(i => group.Count > 1 ? $"{group.Name} {i}" : group.Name).ToList();
        var place = string.Create(CultureInfo.InvariantCulture, $"{Shown.Text(from, Unit.Length, inch)} from the middle at {PlateTable.Degrees(clock):0.#}°");
        return new(
            group.Name,
            $"{group.Name}: {place}{(table.Proposed.Contains(group.Name) ? ", proposed" : "")}",
            table.Handle(group.Name) is not null,
            from == 0,
            PlateBoard.Mm(from),
            clock,
            group.Count,
            [.. plate.Things.Where(t => owners.Contains(t.Owner)).Select(t => BoardThing.Of(t, owners.IndexOf(t.Owner)))]);
    }
}

/// <summary>An outline, mm: a circle's middle and radius, or corners by turns.</summary>
internal sealed record BoardThing(string Name, string Face, int Copy, IReadOnlyList<double>? Circle, IReadOnlyList<double>? Corners)
{
    public static BoardThing Of(PlateThing thing, int copy) => new(
        thing.Name,
        thing.Face switch { PlateFace.Forward => "forward", PlateFace.Aft => "aft", _ => "through" },
        copy,
        thing.Outline is PlateCircle c ? [PlateBoard.Mm(c.X), PlateBoard.Mm(c.Y), PlateBoard.Mm(c.Radius)] : null,
        thing.Outline is PlateRectangle r ? [.. r.Corners.SelectMany(k => new[] { PlateBoard.Mm(k.X), PlateBoard.Mm(k.Y) })] : null);
}

/// <summary>A gap in words, with its verdict in word and shape.</summary>
internal sealed record BoardGap(string Words, string Width, string Verdict, string Sign);
