using System.Net;
using System.Text.RegularExpressions;
using Scribeline.App.Commands;
using Scribeline.App.Documents;
using Scribeline.App.Web;

namespace Scribeline.App.Tests.Web;

/// <summary>What a phone at the field may and may not.</summary>
public sealed partial class PhoneTests : IAsyncLifetime
{
    private readonly ScratchFolder scratch = new();
    private readonly Clock clock = new();
    private readonly HttpClient client = new(new HttpClientHandler { UseProxy = false, UseCookies = false, AllowAutoRedirect = false });
    private PhoneGate gate = null!;
    private DesignDocument document = null!;
    private PhoneServer server = null!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    private string Own => $"http://{gate.Address!.Authority}";

    public async ValueTask InitializeAsync()
    {
        Assert.Equal(0, Run.In(scratch.Path, "new", "Grey Wagtail").Code);
        gate = new(clock);
        document = DesignDocument.Open("grey-wagtail", scratch.At("grey-wagtail"), 0, TimeSpan.Zero).Document!;
        await document.Settled;
        server = await PhoneServer.Start(document, gate, IPAddress.Loopback, cancel: Cancel);
    }

    public async ValueTask DisposeAsync()
    {
        await server.DisposeAsync();
        document.Dispose();
        client.Dispose();
        scratch.Dispose();
    }

    [Fact]
    public async Task A_code_lets_one_phone_in_once()
    {
        var code = Code();
        Assert.Contains("Join with this phone", await Page($"/join/{code}"), StringComparison.Ordinal);
        Assert.Equal(code, Code());
        var session = await Join(code);
        Assert.NotNull(session);
        Assert.Null(gate.Invitation);
        Assert.Contains("Grey Wagtail", await Page("/", session), StringComparison.Ordinal);

        Assert.Null(await Join(code));
        Assert.Equal(1, gate.Phones);
    }

    [Fact]
    public async Task A_wrong_an_old_and_a_replaced_code_are_refused()
    {
        Assert.Null(await Join("ABCDEFGHJKLMNPQR"));
        Assert.Null(await Join(""));
        var first = Code();
        gate.Invite();
        Assert.Null(await Join(first));
        var second = Code();
        Assert.NotEqual(first, second);
        clock.Now += PhoneGate.Good;
        Assert.Null(gate.Invitation);
        Assert.Null(await Join(second));
        Assert.Equal(0, gate.Phones);
    }

    [Fact]
    public async Task Without_a_session_nothing_is_told()
    {
        foreach (var session in (string?[])[null, "", new string('0', 64)])
        {
            using var answer = await Asked(HttpMethod.Get, "/", session);
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
            Assert.DoesNotContain("Grey Wagtail", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
            using var tick = await Asked(HttpMethod.Post, "/tick", session, new() { ["item"] = "night-before/motor", ["done"] = "yes", ["token"] = "" }, Own);
            Assert.Equal(HttpStatusCode.Forbidden, tick.StatusCode);
        }

        Assert.Empty(Ticked());
    }

    [Fact]
    public async Task A_phone_sent_away_is_out()
    {
        var session = await Join(Code());
        gate.SendAway();
        using var answer = await Asked(HttpMethod.Get, "/", session);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Null(gate.Invitation);
    }

    [Fact]
    public async Task It_ticks_and_takes_back_what_no_hold_stands_before()
    {
        var session = await Join(Code());
        var token = Token(await Page("/", session));
        Assert.Equal(HttpStatusCode.SeeOther, await Tick(session, token, "night-before/motor", "yes"));
        Assert.Equal(["night-before/motor"], Ticked());
        Assert.Equal(HttpStatusCode.SeeOther, await Tick(session, token, "night-before/motor", "no"));
        Assert.Empty(Ticked());
        Assert.Equal(HttpStatusCode.OK, await Tick(session, token, "arming/igniter-in", "yes"));
        Assert.Equal(HttpStatusCode.OK, await Tick(session, token, "nothing/of\r\nthe kind", "yes"));
        Assert.Empty(Ticked());
    }

    [Fact]
    public async Task A_form_without_its_token_or_from_another_page_is_refused()
    {
        var session = await Join(Code());
        var token = Token(await Page("/", session));
        Assert.Equal(HttpStatusCode.Forbidden, await Tick(session, "", "night-before/motor", "yes"));
        Assert.Equal(HttpStatusCode.Forbidden, await Tick(session, new string('0', 32), "night-before/motor", "yes"));
        foreach (var origin in (string?[])[null, "null", "http://evil.example", $"https://{gate.Address!.Authority}", "http://127.0.0.1:1"])
            Assert.Equal(HttpStatusCode.Forbidden, await Tick(session, token, "night-before/motor", "yes", origin));
        Assert.Empty(Ticked());
    }

    // The workbench is another server: none of its pages, sockets and exports is here, even for a phone that was let in.
    [Theory]
    [InlineData("/grey-wagtail/desk")]
    [InlineData("/grey-wagtail/field")]
    [InlineData("/_blazor/negotiate")]
    [InlineData("/_blazor")]
    [InlineData("/grey-wagtail/flight.csv")]
    [InlineData("/assets/blazor.web.js")]
    [InlineData("/assets/..%2frocket.yaml")]
    [InlineData("/tick")]
    public async Task Nothing_of_the_workbench_is_answered(string path)
    {
        var session = await Join(Code());
        using var answer = await Asked(HttpMethod.Get, path, session);
        Assert.InRange((int)answer.StatusCode, 400, 499);
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:PORT")]
    [InlineData("localhost:PORT")]
    [InlineData("127.0.0.1:1")]
    public async Task A_foreign_host_is_refused(string host)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(gate.Address!, $"join/{Code()}"));
        request.Headers.Host = host.Replace("PORT", gate.Address!.Port.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
        using var answer = await client.SendAsync(request, Cancel);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task Its_pages_have_no_script_and_forbid_everything_foreign()
    {
        var session = await Join(Code());
        using var answer = await Asked(HttpMethod.Get, "/", session);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.Contains("no-store", answer.Headers.GetValues("Cache-Control"));
        var page = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("(src|href|action)=\"(https?:)?//", page);
    }

    [Fact]
    public async Task Its_cookie_is_for_this_place_alone()
    {
        using var answer = await Asked(HttpMethod.Post, "/join", null, new() { ["code"] = Code() }, Own);
        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("/", answer.Headers.Location!.ToString());
    }

    [Theory]
    [InlineData("10.1.2.3", true)]
    [InlineData("172.16.0.1", true)]
    [InlineData("172.31.255.255", true)]
    [InlineData("172.32.0.1", false)]
    [InlineData("192.168.4.20", true)]
    [InlineData("::ffff:192.168.4.20", true)]
    [InlineData("169.254.7.7", true)]
    [InlineData("8.8.8.8", false)]
    [InlineData("127.0.0.1", false)]
    [InlineData("2001:db8::1", false)]
    public void Only_local_networks_are_near(string address, bool near) => Assert.Equal(near, LocalNetwork.IsLocal(IPAddress.Parse(address)));

    [Fact]
    public void Phones_are_answered_at_an_address_of_this_machine_alone()
    {
        Assert.Contains("Type it: scribeline open FILE --field", PhoneAddress.Of(null, opened: false).Refused, StringComparison.Ordinal);
        foreach (var typed in (string[])["8.8.8.8", "0.0.0.0", "127.0.0.1", "nowhere"])
            Assert.Contains("is no address of this machine in a local network", PhoneAddress.Of(typed, opened: true).Refused, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_being_asked_for_nobody_is_let_in()
    {
        var shut = new PhoneGate(clock);
        shut.Invite();
        Assert.Null(shut.Invitation);
        Assert.Null(shut.Address);
    }

    private string Code() => gate.Invitation!.Segments[^1];

    private string[] Ticked() => [.. document.DayProgress(document.Answers.Study!, TimeProvider.System.GetLocalNow()).Items.Where(i => i.At is not null).Select(i => i.Id)];

    private async Task<string?> Join(string code)
    {
        using var answer = await Asked(HttpMethod.Post, "/join", null, new() { ["code"] = code }, Own);
        if (answer.StatusCode == HttpStatusCode.Forbidden) return null;
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return Session().Match(Assert.Single(answer.Headers.GetValues("Set-Cookie"))).Groups[1].Value;
    }

    private async Task<HttpStatusCode> Tick(string? session, string token, string item, string done)
        => await Tick(session, token, item, done, Own);

    private async Task<HttpStatusCode> Tick(string? session, string token, string item, string done, string? origin)
    {
        using var answer = await Asked(HttpMethod.Post, "/tick", session, new() { ["item"] = item, ["done"] = done, ["token"] = token }, origin);
        return answer.StatusCode;
    }

    private async Task<string> Page(string path, string? session = null)
    {
        using var answer = await Asked(HttpMethod.Get, path, session);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(Cancel);
    }

    private async Task<HttpResponseMessage> Asked(HttpMethod method, string path, string? session, Dictionary<string, string>? form = null, string? origin = null)
    {
        using var request = new HttpRequestMessage(method, new Uri(gate.Address!, path));
        if (session is not null) request.Headers.TryAddWithoutValidation("Cookie", $"phone={session}");
        if (origin is not null) request.Headers.TryAddWithoutValidation("Origin", origin);
        if (form is not null) request.Content = new FormUrlEncodedContent(form);
        return await client.SendAsync(request, Cancel);
    }

    private static string Token(string page) => TokenField().Match(page).Groups[1].Value;

    [GeneratedRegex("phone=([0-9a-f]+)")]
    private static partial Regex Session();

    [GeneratedRegex("name=\"token\" value=\"([0-9a-f]+)\"")]
    private static partial Regex TokenField();

    private sealed class Clock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 5, 9, 8, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
