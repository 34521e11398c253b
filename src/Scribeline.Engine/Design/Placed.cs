namespace Scribeline.Engine.Design;

/// <summary>Something typed in a design file. Where a value was left out its property is null: nothing here is computed or made up.</summary>
public abstract record Placed
{
    /// <summary>Path in the file, such as <c>parts[2].fins</c>; empty for the root or when made in code.</summary>
    public string At { get; init; } = "";
}
