namespace Scribeline.App.Documents;

/// <summary>How much a value moves an answer.</summary>
internal enum ConcernWeight
{
    /// <summary>Less than a hundredth of its own change, or only rows of a table.</summary>
    Little,

    /// <summary>Not known: it cannot be moved by itself, and is listed with the rest of its thing.</summary>
    Beside,

    /// <summary>A hundredth of its own change or more.</summary>
    Some,

    /// <summary>A tenth of its own change or more, or the verdict.</summary>
    Much,
}
