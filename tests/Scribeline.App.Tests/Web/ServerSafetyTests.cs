using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;
using Scribeline.App.Documents;
using Scribeline.App.Web;

namespace Scribeline.App.Tests.Web;

/// <summary>The server lets in only this machine's own pages.</summary>
public sealed class ServerSafetyTests : IAsyncLifetime
{
    private readonly ScratchFolder scratch = new();
    private readonly HttpClient client = new(new HttpClientHandler { UseProxy = false });
    private DocumentShelf shelf = null!;
    private WorkbenchServer server = null!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        Assert.Equal(0, Run.In(scratch.Path, "new", "Grey Wagtail").Code);
        await File.WriteAllTextAsync(scratch.At("secret.txt"), "secret", Cancel);
        shelf = new(new(scratch.Path, null, null) { Cases = 0 });
        Assert.NotNull(shelf.Open(scratch.At("grey-wagtail")).Document);
        server = await WorkbenchServer.Start(shelf);
    }

    public async ValueTask DisposeAsync()
    {
        await server.DisposeAsync();
        shelf.Dispose();
        client.Dispose();
        scratch.Dispose();
    }

    [Fact]
    public async Task Its_own_pages_are_answered_and_forbid_everything_foreign()
    {
        using var answer = await client.GetAsync(new Uri(server.Address, "grey-wagtail/desk"), Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        var page = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.Contains("Grey Wagtail", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("(src|href)=\"(https?:)?//", page);
        Assert.DoesNotMatch("<script(?![^>]* src=)[^>]*>[^<]", page);
        Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:PORT")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("127.0.0.1.evil.example:PORT")]
    [InlineData("localhost.evil.example:PORT")]
    public async Task A_foreign_host_is_refused(string host) => Assert.Equal(HttpStatusCode.Forbidden, await Asked("/", host: host));

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("null")]
    [InlineData("https://127.0.0.1:PORT")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("http://127.0.0.1.evil.example:PORT")]
    public async Task A_foreign_page_is_refused_on_every_path(string origin)
    {
        foreach (var path in new[] { "/", "/grey-wagtail/desk", "/_blazor/negotiate", "/grey-wagtail/flight.csv", "/assets/ground.css" })
            Assert.Equal(HttpStatusCode.Forbidden, await Asked(path, origin: origin));
    }

    [Theory]
    [InlineData("http://127.0.0.1:PORT")]
    [InlineData("http://localhost:PORT")]
    public async Task Its_own_page_is_let_in(string origin) => Assert.Equal(HttpStatusCode.OK, await Asked("/", origin: origin));

    [Fact]
    public async Task A_foreign_page_gets_no_socket()
    {
        using var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Origin", "http://evil.example");
        await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(new UriBuilder(server.Address) { Scheme = "ws", Path = "/_blazor" }.Uri, Cancel));
    }

    [Theory]
    [InlineData("/assets/../secret.txt")]
    [InlineData("/assets/..%2fsecret.txt")]
    [InlineData("/assets/%2e%2e%2fsecret.txt")]
    [InlineData("/secret.txt")]
    [InlineData("/..%2f..%2fetc/passwd/desk")]
    [InlineData("//etc/passwd")]
    [InlineData("/grey-wagtail/plot/..%2f..%2fsecret/0.csv")]
    [InlineData("/grey-wagtail/plot/stable/99.csv")]
    [InlineData("/grey-wagtail/plot/stable/-1.csv")]
    public async Task No_path_leads_to_a_file(string path)
    {
        var (code, body) = await Raw($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{server.Address.Port}\r\nConnection: close\r\n\r\n");
        Assert.DoesNotContain("secret\n", body, StringComparison.Ordinal);
        Assert.DoesNotContain("root:", body, StringComparison.Ordinal);
        Assert.False(body.EndsWith("secret", StringComparison.Ordinal));
        Assert.True(code is 404 or 400 or 403 || body.Contains("not open", StringComparison.Ordinal) || body.Contains("no such page", StringComparison.Ordinal), $"{code} {body}");
    }

    [Fact]
    public async Task A_huge_request_is_refused()
    {
        var (code, _) = await Raw($"POST /_blazor/negotiate HTTP/1.1\r\nHost: 127.0.0.1:{server.Address.Port}\r\nContent-Length: 100000000\r\nConnection: close\r\n\r\n");
        Assert.InRange(code, 400, 499);
    }

    [Fact]
    public void It_listens_on_this_machine_alone() => Assert.Equal("127.0.0.1", server.Address.Host);

    private async Task<HttpStatusCode> Asked(string path, string? host = null, string? origin = null)
    {
        var port = server.Address.Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(server.Address, path));
        if (host is not null) request.Headers.Host = host.Replace("PORT", port, StringComparison.Ordinal);
        if (origin is not null) request.Headers.TryAddWithoutValidation("Origin", origin.Replace("PORT", port, StringComparison.Ordinal));
        using var answer = await client.SendAsync(request);
        return answer.StatusCode;
    }

    private async Task<(int Code, string Body)> Raw(string request)
    {
        using var connection = new TcpClient();
        await connection.ConnectAsync(IPAddress.Loopback, server.Address.Port);
        var stream = connection.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request));
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var said = await reader.ReadToEndAsync();
        return (int.Parse(said.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture), said);
    }
}
