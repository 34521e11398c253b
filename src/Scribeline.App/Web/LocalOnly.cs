namespace Scribeline.App.Web;

/// <summary>
/// Lets in only what this machine's own pages ask of this very address: a foreign name or a foreign page is refused before anything else
/// looks at the request, on the socket too. What goes out forbids everything that is not from here.
/// </summary>
/// <param name="next">What answers.</param>
internal sealed class LocalOnly(RequestDelegate next)
{
    /// <summary>Largest request that is read, bytes: a design file of the largest size and what goes round it.</summary>
    public const int Largest = 1_500_000;

    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (context.Request.ContentLength > Largest)
        {
            context.Response.StatusCode = StatusCodes.Status413PayloadTooLarge;
            return Task.CompletedTask;
        }

        if (IsOurs(context.Request.Host, context.Connection.LocalPort) && AreOurs(context.Request.Headers.Origin, context.Connection.LocalPort)) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return context.Response.WriteAsync("The workbench answers only its own pages on this machine.");
    }

    private static bool IsOurs(HostString host, int port) =>
        host.Port == port && (host.Host == "127.0.0.1" || string.Equals(host.Host, "localhost", StringComparison.OrdinalIgnoreCase));

    // Browsers send where a page is from with every socket and every posted form; a program of the person's own sends nothing.
    private static bool AreOurs(IEnumerable<string?> origins, int port) => origins.All(origin =>
        Uri.TryCreate(origin, UriKind.Absolute, out var page) && page.Scheme == "http" && IsOurs(new(page.Host, page.Port), port));
}
