using PublicApiGenerator;
using Scribeline.Engine.Questions;
using Scribeline.Tests;

namespace Scribeline.Engine.Tests.Rules;

/// <summary>The public surface of Engine changes only when somebody means it to.</summary>
public class PublicApiTests
{
    [Fact]
    public void The_public_surface_is_as_approved()
    {
        var surface = typeof(Answer).Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false });
        Approved.Check(surface.ReplaceLineEndings("\n") + "\n", "tests/Scribeline.Engine.Tests/Rules/PublicApi.approved.txt");
    }
}
