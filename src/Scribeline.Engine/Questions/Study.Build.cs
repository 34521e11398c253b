using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Questions;

/// <content>Building.</content>
public sealed partial class Study
{
    private PrecedenceSolution? buildOrder;

    /// <summary>The steps of building in order, with the times of their network.</summary>
    public PrecedenceSolution BuildOrder => LazyInitializer.EnsureInitialized(ref buildOrder, Rocket.Build.Solve);
}
