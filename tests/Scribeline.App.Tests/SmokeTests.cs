namespace Scribeline.App.Tests;

public class SmokeTests
{
    [Fact]
    public void Runs() => Assert.Equal(4, 2 + 2);
}
