using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Questions;

/// <summary>A short list for one place and phase of launch day, read aloud by one person and answered by another.</summary>
/// <param name="Phase">When and where.</param>
/// <param name="Items">In the order of the walk round the rocket; what kills stands early.</param>
/// <param name="Closing">What is said when the list is done.</param>
public sealed record DayList(string Phase, ValueList<DayItem> Items, string Closing)
{
    /// <summary>Name in ids.</summary>
    public string Id => BuildStep.Slug(Phase);

    /// <summary>Whether it is worked through only when something happens; otherwise its turn comes after the lists before it.</summary>
    public bool Aside { get; init; }

    /// <summary>Whether it is worked through the evening before.</summary>
    public bool Eve { get; init; }

    /// <summary>Id of an item.</summary>
    /// <param name="item">One of its items.</param>
    public string IdOf(DayItem item) => $"{Id}/{BuildStep.Slug(item.Challenge)}";
}

/// <summary>An item of a list.</summary>
/// <param name="Challenge">What is read.</param>
/// <param name="Response">What is seen and said, never just "checked".</param>
/// <param name="Hold">Whether everything stops here until it is so.</param>
public sealed record DayItem(string Challenge, string Response, bool Hold = false)
{
    /// <summary>Rule it comes from, with its number; empty for common practice.</summary>
    public string Source { get; init; } = "";

    /// <summary>All of it; a tick counts only for these words.</summary>
    public string Words => $"{Challenge}: {Response}";
}
