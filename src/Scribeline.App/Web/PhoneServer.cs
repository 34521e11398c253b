using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.HttpResults;
using Scribeline.App.Components.Phone;
using Scribeline.App.Documents;
using Scribeline.Engine.Quantities;

namespace Scribeline.App.Web;

/// <summary>
/// Answers phones of the local network: one design's verdicts, card and lists to read, and ticks. It is a server of its own, apart from the
/// workbench: nothing of that can be reached through it, whatever is asked.
/// </summary>
internal sealed class PhoneServer : IAsyncDisposable
{
    private const string Cookie = "phone";
    private static readonly string[] Served = ["ground.css", "questions.css", "phone.css", "IBMPlexSans-Regular.ttf", "IBMPlexSans-SemiBold.ttf"];

    private readonly WebApplication app;
    private readonly PhoneGate gate;

    private PhoneServer(WebApplication app, PhoneGate gate) => (this.app, this.gate) = (app, gate);

    /// <summary>Starts it, and lets the gate show a first code.</summary>
    /// <param name="document">The design.</param>
    /// <param name="gate">Lets phones in.</param>
    /// <param name="address">Of this machine in the local network.</param>
    /// <param name="port">0 for any that is free.</param>
    /// <param name="cancel">Ends the start.</param>
    /// <exception cref="IOException">The address cannot be listened on.</exception>
    public static async Task<PhoneServer> Start(DesignDocument document, PhoneGate gate, IPAddress address, int port = 0, CancellationToken cancel = default)
    {
        var builder = WebApplication.CreateEmptyBuilder(new() { ContentRootPath = AppContext.BaseDirectory, ApplicationName = typeof(PhoneServer).Assembly.GetName().Name });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(address, port);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = PhoneOnly.Largest;
            kestrel.Limits.MaxRequestLineSize = 1024;
            kestrel.Limits.MaxConcurrentConnections = 30;
        });
        builder.Services.AddLogging(logging => logging.SetMinimumLevel(LogLevel.None));
        builder.Services.AddRouting();
        builder.Services.AddSingleton(gate);
        builder.Services.AddRazorComponents();
        var app = builder.Build();
        app.UseMiddleware<PhoneOnly>();
        app.UseRouting();
        app.MapAssets(Served);
        Map(app, document, gate);
        await app.StartAsync(cancel).ConfigureAwait(false);
        gate.Open(new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()));
        return new(app, gate);
    }

    public async ValueTask DisposeAsync()
    {
        gate.SendAway();
        using var soon = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        await app.StopAsync(soon.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        await app.DisposeAsync().ConfigureAwait(false);
    }

    private static void Map(WebApplication app, DesignDocument document, PhoneGate gate)
    {
        // Looking at a code does not use it: a phone that fetches addresses ahead must not spend it.
        app.MapGet("/join/{code}", (string code) => Page(new PhoneView(null, null, "", [], code)));
        app.MapPost("/join", (HttpRequest request) => Form(request, form => Join(request.HttpContext, gate, form["code"].ToString())));
        app.MapGet("/", (HttpContext context) => gate.TokenOf(context.Request.Cookies[Cookie]) is { } token ? View(document, token, []) : Refused());
        app.MapPost("/tick", (HttpRequest request) => Form(request, form => Tick(request.HttpContext, document, gate, form)));
    }

    private static async Task<IResult> Form(HttpRequest request, Func<IFormCollection, IResult> answer)
    {
        if (!request.HasFormContentType) return Results.BadRequest();
        try
        {
            return answer(await request.ReadFormAsync().ConfigureAwait(false));
        }
        catch (Exception failure) when (failure is InvalidDataException or BadHttpRequestException)
        {
            return Results.BadRequest();
        }
    }

    private static IResult Join(HttpContext context, PhoneGate gate, string code)
    {
        if (gate.Join(code) is not { } session) return Refused();
        context.Response.Cookies.Append(Cookie, session, new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
        return Back("");
    }

    private static IResult Tick(HttpContext context, DesignDocument document, PhoneGate gate, IFormCollection form)
    {
        if (gate.TokenOf(context.Request.Cookies[Cookie]) is not { } token || !PhoneGate.Same(form["token"].ToString(), token)) return Refused();
        if (document.Answers.Study is not { } study) return Back("");
        var item = form["item"].ToString();
        var problems = document.Check(study, item, form["done"] == "yes", TimeProvider.System.GetLocalNow());
        return problems.Count > 0 ? View(document, token, problems) : Back($"#{Uri.EscapeDataString(item.Replace('/', '-'))}");
    }

    private static IResult View(DesignDocument document, string token, ValueList<Problem> problems) =>
        Page(new PhoneView(document.Answers, document.Answers.Study is { } study ? document.DayProgress(study, TimeProvider.System.GetLocalNow()) : null, token, problems, null));

    private static RazorComponentResult<PhonePage> Refused() => Page(new PhoneView(null, null, "", [], null), StatusCodes.Status403Forbidden);

    private static RazorComponentResult<PhonePage> Page(PhoneView view, int status = StatusCodes.Status200OK) =>
        new(new Dictionary<string, object?> { [nameof(PhonePage.View)] = view }) { StatusCode = status };

    // After a form a browser asks for the page itself, so that looking again ticks nothing again.
    private static SeeOther Back(string anchor) => new($"/{anchor}");

    private sealed class SeeOther(string place) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext)
        {
            httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
            httpContext.Response.Headers.Location = place;
            return Task.CompletedTask;
        }
    }
}
