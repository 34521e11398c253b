namespace Scribeline.Drawing;

/// <summary>How a plot is drawn.</summary>
/// <param name="Dark">Pale lines on dark paper instead of ink on pale paper.</param>
/// <param name="Inch">Axes in inch and pound units.</param>
/// <param name="Width">Pixels, at least 300.</param>
/// <param name="Height">Pixels, at least 200.</param>
public sealed record PlotStyle(bool Dark = false, bool Inch = false, int Width = 900, int Height = 500);
