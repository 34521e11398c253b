using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>A step of building.</summary>
/// <param name="Id">Place and work, such as <c>booster-fins/bond</c>. It follows from names, so that it stays while other things change.</param>
/// <param name="Work">What kind of work.</param>
/// <param name="Place">Where: a bond, a row of holes, a part or the whole; the first half of the id.</param>
/// <param name="Says">What to do, in sentences.</param>
/// <param name="Duration">s.</param>
/// <param name="Parts">Names of the parts it touches.</param>
public sealed record BuildStep(string Id, BuildWork Work, string Place, string Says, double Duration, ValueList<string> Parts)
{
    /// <summary>Whether a person works at it; otherwise it is a wait.</summary>
    public bool HandsOn => BuildWorkRow.All[Work].HandsOn;

    /// <summary>What can be measured at it, by the names of <see cref="Design.DesignMeasures"/>.</summary>
    public ValueList<string> Asks { get; init; } = [];

    /// <summary>As an activity of the network. From wiping the faces to pulling the tape there is no break.</summary>
    public Activity Activity => new(Id, Duration, HandsOn, Work is >= BuildWork.Clean and <= BuildWork.Unmask ? $"{Place}/bond" : null);

    /// <summary>A name as ids write it: lower-case letters and digits with dashes between.</summary>
    /// <param name="name">As typed.</param>
    public static string Slug(string name) => string.Join(
        '-', new string([.. name.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
