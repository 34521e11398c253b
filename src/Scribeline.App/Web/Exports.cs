using System.Globalization;
using System.Text;
using Scribeline.App.Commands;
using Scribeline.App.Documents;
using Scribeline.Drawing;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Web;

/// <summary>What can be taken away as a file: plots, tables, the flight.</summary>
internal static class Exports
{
    private const string APlot = "/{design}/plot/{question}/{number:int}";

    public static void MapExports(this IEndpointRouteBuilder app)
    {
        app.MapGet(APlot + ".svg", (DocumentShelf shelf, string design, string question, int number, string? fails, bool? dark, bool? inch, string? room) =>
            PlotOf(shelf, design, question, number, fails) is { } plot
                ? Results.Text(PlotDrawing.Svg(plot, PlotSizes.Style(room, dark ?? false, inch ?? false)), "image/svg+xml", Encoding.UTF8)
                : Results.NotFound()).AddEndpointFilter(Fresh);
        app.MapGet(APlot + ".png", (DocumentShelf shelf, string design, string question, int number, string? fails, bool? dark, bool? inch, string? room) =>
            PlotOf(shelf, design, question, number, fails) is { } plot
                ? Results.Bytes(PlotDrawing.Png(plot, PlotSizes.Style(room, dark ?? false, inch ?? false)), "image/png", NameOf(design, question, number, "png", fails))
                : Results.NotFound()).AddEndpointFilter(Fresh);
        app.MapGet(APlot + ".csv", (DocumentShelf shelf, string design, string question, int number, string? fails) =>
            PlotOf(shelf, design, question, number, fails) is { } plot
                ? Results.Bytes(Encoding.UTF8.GetBytes(PlotCsv.Of(plot)), "text/csv; charset=utf-8", NameOf(design, question, number, "csv", fails))
                : Results.NotFound()).AddEndpointFilter(Fresh);
        app.MapGet(APlot + ".json", (DocumentShelf shelf, string design, string question, int number, string? fails, bool? inch) =>
            PlotOf(shelf, design, question, number, fails) is { } plot
                ? Results.Text(PlotFollowing.Of(plot, inch ?? false), "application/json", Encoding.UTF8)
                : Results.NotFound()).AddEndpointFilter(Fresh);
        app.MapGet("/{design}/flight.json", (DocumentShelf shelf, string design, string? fails, bool? inch) =>
            shelf.Find(design)?.Answers.Study is { Missing.Count: 0 } study && WatchedFlight.Of(study, fails) is { } watched
                ? Results.Text(watched.Film(inch ?? false).Text(), "application/json", Encoding.UTF8)
                : Results.NotFound()).AddEndpointFilter(Fresh);
        app.MapGet("/{design}/shots.csv", (DocumentShelf shelf, string design) =>
            shelf.Find(design)?.Drawn is { Missing.Count: 0 } study
                ? Results.Bytes(Encoding.UTF8.GetBytes(ShotCsv.Of(study)), "text/csv; charset=utf-8", "shots.csv")
                : Results.NotFound()).AddEndpointFilter(Fresh);
        app.MapGet("/{design}/flight.csv", (DocumentShelf shelf, string design) =>
            shelf.Find(design)?.Answers.Study is { Missing.Count: 0 } study
                ? Results.Bytes(Encoding.UTF8.GetBytes(FlightCsv.Of(study.Flight)), "text/csv; charset=utf-8", "flight.csv")
                : Results.NotFound());
    }

    /// <summary>Name of the file a plot is taken away as.</summary>
    public static string NameOf(string design, string question, int number, string ending, string? fails = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{design}-{(fails is null ? "" : WatchedFlight.FileWord(fails) + "-")}{question}-{number + 1}.{ending}");

    // What is drawn follows every letter typed: nothing of it may be shown again from memory.
    internal static ValueTask<object?> Fresh(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        call.HttpContext.Response.Headers.CacheControl = "no-store";
        return next(call);
    }

    private static Plot? PlotOf(DocumentShelf shelf, string design, string question, int number, string? fails)
    {
        if (shelf.Find(design)?.Answers is not { } sheet) return null;
        if (fails is not null) return sheet.Study is { Missing.Count: 0 } study ? WatchedFlight.Of(study, fails)?.PlotOf(question) : null;
        return sheet.Of(question)?.Plots is { } plots && number >= 0 && number < plots.Count ? plots[number] : null;
    }
}
