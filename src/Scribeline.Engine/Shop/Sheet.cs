namespace Scribeline.Engine.Shop;

/// <summary>A sheet of paper as a printer takes it.</summary>
/// <param name="Name">As it is called.</param>
/// <param name="Width">m, upright.</param>
/// <param name="Height">m.</param>
public sealed record Sheet(string Name, double Width, double Height)
{
    /// <summary>Margin a printer leaves, m: common practice.</summary>
    public const double Margin = 0.010;

    /// <summary>Overlap of neighbouring tiles, m: common practice.</summary>
    public const double Overlap = 0.010;

    /// <summary>ISO 216.</summary>
    public static Sheet A4 { get; } = new("A4", 0.210, 0.297);

    /// <summary>8.5 by 11 inch.</summary>
    public static Sheet Letter { get; } = new("US Letter", 0.2159, 0.2794);

    /// <summary>Tiles along a length: ceil((L - o)/(w - o)), w the paper less two margins.</summary>
    /// <param name="length">L, m, the glue tab included.</param>
    /// <param name="across">Whether the sheet lies on its side.</param>
    public int Tiles(double length, bool across) => Tiles(length, (across ? Height : Width) - (2 * Margin));

    /// <summary>Sheets for a strip of a length and height, laid the way that takes fewer.</summary>
    /// <param name="length">m, the glue tab included.</param>
    /// <param name="height">m.</param>
    public int Pages(double length, double height) => Math.Min(
        Tiles(length, true) * Tiles(height, Width - (2 * Margin)), Tiles(length, false) * Tiles(height, Height - (2 * Margin)));

    private static int Tiles(double length, double usable) => Math.Max((int)Math.Ceiling((length - Overlap) / (usable - Overlap)), 1);
}
