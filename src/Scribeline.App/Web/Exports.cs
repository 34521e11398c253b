using System.Text;
using Scribeline.App.Commands;
using Scribeline.App.Documents;
using Scribeline.Drawing;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Web;

/// <summary>What can be taken away as a file: plots, tables, the flight.</summary>
internal static class Exports
{
    public static void MapExports(this IEndpointRouteBuilder app)
    {
        app.MapGet("/{design}/plot/{question}/{number:int}.svg", (DocumentShelf shelf, string design, string question, int number, bool? dark, bool? inch) =>
            PlotOf(shelf, design, question, number) is { } plot
                ? Results.Text(PlotDrawing.Svg(plot, new(dark ?? false, inch ?? false)), "image/svg+xml", Encoding.UTF8)
                : Results.NotFound());
        app.MapGet("/{design}/plot/{question}/{number:int}.png", (DocumentShelf shelf, string design, string question, int number, bool? dark, bool? inch) =>
            PlotOf(shelf, design, question, number) is { } plot
                ? Results.Bytes(PlotDrawing.Png(plot, new(dark ?? false, inch ?? false)), "image/png", $"{question}.png")
                : Results.NotFound());
        app.MapGet("/{design}/plot/{question}/{number:int}.csv", (DocumentShelf shelf, string design, string question, int number) =>
            PlotOf(shelf, design, question, number) is { } plot
                ? Results.Bytes(Encoding.UTF8.GetBytes(PlotCsv.Of(plot)), "text/csv; charset=utf-8", $"{question}.csv")
                : Results.NotFound());
        app.MapGet("/{design}/flight.csv", (DocumentShelf shelf, string design) =>
            shelf.Find(design)?.Answers.Study is { Missing.Count: 0 } study
                ? Results.Bytes(Encoding.UTF8.GetBytes(FlightCsv.Of(study.Flight)), "text/csv; charset=utf-8", "flight.csv")
                : Results.NotFound());
    }

    private static Plot? PlotOf(DocumentShelf shelf, string design, string question, int number) =>
        shelf.Find(design)?.Answers.Of(question)?.Plots is { } plots && number >= 0 && number < plots.Count ? plots[number] : null;
}
