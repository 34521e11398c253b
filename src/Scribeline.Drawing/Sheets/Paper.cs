namespace Scribeline.Drawing.Sheets;

/// <summary>A size of paper, mm.</summary>
/// <param name="Name">As people say it.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
public sealed record Paper(string Name, double Width, double Height)
{
    /// <summary>ISO 216.</summary>
    public static Paper A4 { get; } = Of(Engine.Shop.Sheet.A4);

    /// <summary>8-1/2 by 11 inches.</summary>
    public static Paper Letter { get; } = Of(Engine.Shop.Sheet.Letter);

    /// <summary>The same sheet turned by a quarter.</summary>
    public Paper Turned() => this with { Width = Height, Height = Width };

    /// <summary>The paper with a name as typed; null for none we know.</summary>
    /// <param name="typed">"a4" or "letter", in any case.</param>
    public static Paper? Named(string typed) => typed.Trim().ToLowerInvariant() switch
    {
        "a4" => A4,
        "letter" => Letter,
        _ => null,
    };

    private static Paper Of(Engine.Shop.Sheet sheet) => new(sheet.Name, Math.Round(1000 * sheet.Width, 6), Math.Round(1000 * sheet.Height, 6));
}
