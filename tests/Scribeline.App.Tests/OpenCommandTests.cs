using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Scribeline.App.Tests;

/// <summary>The workbench as a process: its address, its ports, its refusals.</summary>
public class OpenCommandTests
{
    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    [Fact]
    public async Task It_prints_where_it_is_and_answers_there_from_any_folder()
    {
        using var scratch = new ScratchFolder();
        Assert.Equal(0, Run.In(scratch.Path, "new", "Grey Wagtail").Code);
        using var process = Start(scratch.Path, "open", "grey-wagtail");
        try
        {
            var line = await process.StandardOutput.ReadLineAsync(Cancel);
            var address = new Uri(line!.Split(' ')[^1]);
            Assert.Equal(("127.0.0.1", "/grey-wagtail/desk"), (address.Host, address.AbsolutePath));
            using var client = new HttpClient(new HttpClientHandler { UseProxy = false });
            Assert.Contains("Grey Wagtail", await client.GetStringAsync(address, Cancel), StringComparison.Ordinal);
            foreach (var asset in new[] { "ground.css", "bench.js", "blazor.web.js", "IBMPlexSans-Regular.ttf" })
                Assert.NotEmpty(await client.GetByteArrayAsync(new Uri(address, $"/assets/{asset}"), Cancel));
        }
        finally
        {
            process.Kill();
        }
    }

    [Fact]
    public void A_taken_port_is_told()
    {
        using var scratch = new ScratchFolder();
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);
        var run = Run.In(scratch.Path, "open", "--port", port);
        Assert.Equal(2, run.Code);
        Assert.Contains($"Port {port} is taken", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no file", "open", "nowhere.yaml")]
    [InlineData("from 0 to 65535", "open", "--port", "70000")]
    public void What_cannot_be_opened_is_told(string said, params string[] typed)
    {
        using var scratch = new ScratchFolder();
        var run = Run.In(scratch.Path, typed);
        Assert.Equal(2, run.Code);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
    }

    private static Process Start(string folder, params string[] typed)
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "scribeline.exe" : "scribeline"), typed) { WorkingDirectory = folder, RedirectStandardOutput = true };

        // What a test opens is not noted among the person's own designs.
        start.Environment["XDG_DATA_HOME"] = folder;
        return Process.Start(start)!;
    }
}
