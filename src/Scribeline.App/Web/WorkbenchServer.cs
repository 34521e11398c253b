using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Scribeline.App.Components;
using Scribeline.App.Documents;

namespace Scribeline.App.Web;

/// <summary>The workbench as a server on this machine alone.</summary>
internal sealed class WorkbenchServer : IAsyncDisposable
{
    /// <summary>
    /// How long window and server may be silent to each other before either takes the other for gone. Both are on one machine, where the end of
    /// one closes the line at once: silence is a machine with much to do, or a lid that was shut.
    /// </summary>
    public static readonly TimeSpan Silence = TimeSpan.FromMinutes(10);

    private readonly WebApplication app;

    private WorkbenchServer(WebApplication app) => this.app = app;

    /// <summary>Where it answers, such as http://127.0.0.1:40123.</summary>
    public Uri Address => new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    /// <summary>Starts it.</summary>
    /// <param name="shelf">The designs at hand.</param>
    /// <param name="port">0 for any that is free.</param>
    /// <param name="phones">Lets phones in, where they are asked for; null for a gate that stays shut.</param>
    /// <param name="cancel">Ends the start.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<WorkbenchServer> Start(DocumentShelf shelf, int port = 0, PhoneGate? phones = null, CancellationToken cancel = default)
    {
        // Nothing outside the program configures it: no file, no environment, no folder it happens to be started in.
        var builder = WebApplication.CreateEmptyBuilder(new() { ContentRootPath = AppContext.BaseDirectory, ApplicationName = typeof(WorkbenchServer).Assembly.GetName().Name });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, port);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LocalOnly.Largest;
            kestrel.Limits.MaxRequestLineSize = 4096;
            kestrel.Limits.MaxConcurrentConnections = 200;
        });
        builder.Services.AddLogging(logging => logging.SetMinimumLevel(LogLevel.None));
        builder.Services.AddRouting();
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddSingleton(shelf);
        builder.Services.AddSingleton(phones ?? new PhoneGate(TimeProvider.System));
        builder.Services.AddScoped<ViewState>();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents(circuits =>
        {
            circuits.DisconnectedCircuitMaxRetained = 10;
            circuits.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(10);
            circuits.JSInteropDefaultCallTimeout = Silence;
        }).AddHubOptions(hub =>
        {
            hub.MaximumReceiveMessageSize = LocalOnly.Largest;
            hub.ClientTimeoutInterval = Silence;
            hub.HandshakeTimeout = Silence;
        });

        var app = builder.Build();
        app.UseMiddleware<LocalOnly>();
        app.UseRouting();
        app.UseWebSockets();
        app.UseAntiforgery();
        app.MapAssets();
        app.MapExports();
        app.MapMaps();
        app.MapTemplates();
        PlateBoard.MapPlates(app);
        app.MapRazorComponents<Root>().AddInteractiveServerRenderMode(server =>
        {
            server.ContentSecurityFrameAncestorsPolicy = null;
            server.DisableWebSocketCompression = true;
        });
        await app.StartAsync(cancel).ConfigureAwait(false);
        return new(app);
    }

    public async ValueTask DisposeAsync()
    {
        using var soon = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        await app.StopAsync(soon.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        await app.DisposeAsync().ConfigureAwait(false);
    }
}
