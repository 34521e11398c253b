using System.Globalization;
using System.Text;
using Scribeline.App.Documents;
using Scribeline.Drawing;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Web;

/// <summary>Maps of answers, to be shown and taken away.</summary>
internal static class MapExports
{
    private const string AMap = "/{design}/map/{question}/{number:int}";

    public static void MapMaps(this IEndpointRouteBuilder app)
    {
        app.MapGet(AMap + ".svg", (DocumentShelf shelf, string design, string question, int number, bool? dark, bool? inch, string? room) =>
            Of(shelf, design, question, number) is { } map
                ? Results.Text(MapDrawing.Svg(map, PlotSizes.Map(room, dark ?? false, inch ?? false)), "image/svg+xml", Encoding.UTF8)
                : Results.NotFound()).AddEndpointFilter(Exports.Fresh);
        app.MapGet(AMap + ".png", (DocumentShelf shelf, string design, string question, int number, bool? dark, bool? inch, string? room) =>
            Of(shelf, design, question, number) is { } map
                ? Results.Bytes(MapDrawing.Png(map, PlotSizes.Map(room, dark ?? false, inch ?? false)), "image/png", NameOf(design, question, number, "png"))
                : Results.NotFound()).AddEndpointFilter(Exports.Fresh);
        app.MapGet(AMap + ".geojson", (DocumentShelf shelf, string design, string question, int number) =>
            Of(shelf, design, question, number) is { } map && LandingExport.GeoJson(map) is { } text
                ? Results.Bytes(Encoding.UTF8.GetBytes(text), "application/geo+json", NameOf(design, question, number, "geojson"))
                : Results.NotFound()).AddEndpointFilter(Exports.Fresh);
        app.MapGet(AMap + ".kml", (DocumentShelf shelf, string design, string question, int number) =>
            Of(shelf, design, question, number) is { } map && LandingExport.KmlText(map) is { } text
                ? Results.Bytes(Encoding.UTF8.GetBytes(text), "application/vnd.google-earth.kml+xml", NameOf(design, question, number, "kml"))
                : Results.NotFound()).AddEndpointFilter(Exports.Fresh);
    }

    /// <summary>Name of the file a map is taken away as.</summary>
    public static string NameOf(string design, string question, int number, string ending) =>
        string.Create(CultureInfo.InvariantCulture, $"{design}-{question}-map-{number + 1}.{ending}");

    private static GroundMap? Of(DocumentShelf shelf, string design, string question, int number) =>
        shelf.Find(design)?.Answers.Of(question)?.Maps is { } maps && number >= 0 && number < maps.Count ? maps[number] : null;
}
