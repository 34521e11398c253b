using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace Scribeline.App.Web;

/// <summary>Styles, scripts and letters, all from inside the program.</summary>
internal static class Assets
{
    private const string Prefix = "assets/";

    private static readonly Dictionary<string, Asset> All = Read();

    /// <summary>Serves assets by their names; nothing else can be named.</summary>
    /// <param name="app">Where.</param>
    /// <param name="served">Their names; null for every one.</param>
    public static void MapAssets(this IEndpointRouteBuilder app, IReadOnlyCollection<string>? served = null) => app.MapGet("/assets/{name}", (string name) =>
        served?.Contains(name) != false && All.TryGetValue(name, out var asset)
            ? Results.Bytes(asset.Content, asset.Type, entityTag: new EntityTagHeaderValue($"\"{asset.Mark}\""))
            : Results.NotFound());

    private static Dictionary<string, Asset> Read()
    {
        var assembly = typeof(Assets).Assembly;
        return assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).ToDictionary(n => n[Prefix.Length..], n =>
        {
            using var stream = assembly.GetManifestResourceStream(n)!;
            var content = new byte[stream.Length];
            stream.ReadExactly(content);
            return new Asset(content, TypeOf(Path.GetExtension(n)), Convert.ToHexString(SHA256.HashData(content).AsSpan(0, 8)));
        });
    }

    private static string TypeOf(string extension) => extension switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".ttf" => "font/ttf",
        ".svg" => "image/svg+xml",
        _ => "application/octet-stream",
    };

    private sealed record Asset(byte[] Content, string Type, string Mark);
}
