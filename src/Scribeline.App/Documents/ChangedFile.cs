using Scribeline.Engine.Quantities;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Documents;

/// <summary>What changed in a file since a revision.</summary>
/// <param name="Name">Its name from the design's folder.</param>
/// <param name="Lines">Its lines, those that stayed included; null where the file is not at hand any more.</param>
internal sealed record ChangedFile(string Name, ValueList<DifferentLine>? Lines)
{
    /// <summary>Whether something in it changed.</summary>
    public bool IsChanged => Lines is null || Lines.Any(l => !l.Same);
}
