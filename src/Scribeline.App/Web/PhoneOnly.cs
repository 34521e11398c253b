namespace Scribeline.App.Web;

/// <summary>
/// Lets in only what comes from the local network, under this very address and from its own pages; what goes out forbids scripts and everything that
/// is not from here.
/// </summary>
/// <param name="next">What answers.</param>
/// <param name="gate">Knows the address.</param>
internal sealed class PhoneOnly(RequestDelegate next, PhoneGate gate)
{
    /// <summary>Largest request that is read, bytes: a form with an id.</summary>
    public const int Largest = 4096;

    private const string Policy = "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";

        // Without a referrer a browser says of its own form that it comes from nowhere.
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        if (context.Request.ContentLength > Largest) return Refuse(context, StatusCodes.Status413PayloadTooLarge);
        return IsNear(context.Connection) && IsOurs(context.Request) ? next(context) : Refuse(context, StatusCodes.Status403Forbidden);
    }

    private static Task Refuse(HttpContext context, int status)
    {
        context.Response.StatusCode = status;
        return context.Response.WriteAsync("Only phones of this local network are answered, under the address of the code.");
    }

    // The machine itself is near, too.
    private static bool IsNear(ConnectionInfo connection) =>
        connection.RemoteIpAddress is { } remote && (LocalNetwork.IsLocal(remote) || System.Net.IPAddress.IsLoopback(remote) || remote.Equals(connection.LocalIpAddress));

    private bool IsOurs(HttpRequest request)
    {
        if (gate.Address is not { } own || request.Host.Host != own.Host || request.Host.Port != own.Port) return false;
        var origins = request.Headers.Origin;
        if (origins.Count == 0) return !HttpMethods.IsPost(request.Method);
        return origins.All(origin => origin == $"http://{own.Authority}");
    }
}
