using Bunit;
using Scribeline.App.Components;
using Scribeline.App.Documents;

namespace Scribeline.App.Tests.Components;

/// <summary>Points of a thrust table typed on screen.</summary>
public sealed class ThrustPointsTests : IDisposable
{
    private readonly ScratchFolder scratch = ScratchFolder.WithExamples();
    private readonly BunitContext page = new();
    private readonly DesignDocument document;

    public ThrustPointsTests()
    {
        document = DesignDocument.Open("night-heron", scratch.At("night-heron/rocket.yaml"), 0, TimeSpan.Zero).Document!;
    }

    // What is refused changes no design, so nothing but the field itself asks for the page to be drawn again.
    [Fact]
    public void What_is_refused_is_told_at_once_and_no_longer_once_it_is_mended()
    {
        var points = page.Render<ThrustPoints>(p => p.Add(t => t.Root, document.Outline!).AddCascadingValue(document));
        var before = document.Version;
        var stands = points.Find("#thrust-3-time").GetAttribute("value")!;

        points.Find("#thrust-3-time").Focus();
        points.Find("#thrust-3-time").Input("7000");
        Assert.Contains("must rise", points.Find("#thrust-wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal("true", points.Find("#thrust-3-time").GetAttribute("aria-invalid"));
        Assert.Equal("thrust-wrong", points.Find("#thrust-3-time").GetAttribute("aria-describedby"));
        Assert.Null(points.Find("#thrust-3-thrust").GetAttribute("aria-invalid"));

        // It stays as typed when one turns elsewhere.
        points.Find("#thrust-3-time").Blur();
        Assert.Equal("7000", points.Find("#thrust-3-time").GetAttribute("value"));

        points.Find("#thrust-3-time").Focus();
        points.Find("#thrust-3-time").Input(stands);
        Assert.Empty(points.FindAll("#thrust-wrong"));
        Assert.Null(points.Find("#thrust-3-time").GetAttribute("aria-invalid"));
        Assert.Equal(before, document.Version);
        Assert.False(document.CanUndo);
    }

    [Fact]
    public void What_is_typed_in_one_visit_is_undone_together()
    {
        var points = page.Render<ThrustPoints>(p => p.Add(t => t.Root, document.Outline!).AddCascadingValue(document));
        var stands = document.ThrustRows[3];
        points.Find("#thrust-3-thrust").Focus();
        foreach (var typed in new[] { "7", "70", "700" }) points.Find("#thrust-3-thrust").Input(typed);
        Assert.Equal("700", document.ThrustRows[3].Thrust);
        document.Undo();
        Assert.Equal(stands, document.ThrustRows[3]);
        Assert.False(document.CanUndo);
    }

    public void Dispose()
    {
        page.Dispose();
        document.Dispose();
        scratch.Dispose();
    }
}
