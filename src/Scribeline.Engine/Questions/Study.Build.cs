using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Questions;

/// <content>Building.</content>
public sealed partial class Study
{
    private PrecedenceSolution? buildOrder;

    /// <summary>The same rocket as it was drawn, before anything was measured or weighed; null where nothing was.</summary>
    public Study? AsDrawn => Drawn?.Value;

    internal Lazy<Study?>? Drawn { private get; init; }

    /// <summary>The steps of building in order, with the times of their network.</summary>
    public PrecedenceSolution BuildOrder => LazyInitializer.EnsureInitialized(ref buildOrder, Rocket.Build.Solve);
}
