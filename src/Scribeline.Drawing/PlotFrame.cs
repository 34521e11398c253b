namespace Scribeline.Drawing;

/// <summary>Where the values of a plot stand in its drawing, so that a face can point at them.</summary>
public sealed class PlotFrame
{
    private readonly PlotAxis across, up;

    internal PlotFrame(int width, int height, float left, float top, float right, float bottom, PlotAxis across, PlotAxis up) =>
        (Width, Height, Left, Top, Right, Bottom, this.across, this.up) = (width, height, left, top, right, bottom, across, up);

    /// <summary>Of the drawing, pixels.</summary>
    public int Width { get; }

    /// <summary>Of the drawing, pixels.</summary>
    public int Height { get; }

    /// <summary>Pixel of the least value across.</summary>
    public float Left { get; }

    /// <summary>Pixel of the end of the axis up.</summary>
    public float Top { get; }

    /// <summary>Pixel of the greatest value across.</summary>
    public float Right { get; }

    /// <summary>Pixel of the axis across.</summary>
    public float Bottom { get; }

    /// <summary>How far along the axis across a value stands, 0 at the left to 1.</summary>
    /// <param name="value">SI.</param>
    public double Across(double value) => (across.Of(value) - across.Low) / (across.High - across.Low);

    /// <summary>How far up the axis a value stands, 0 at the bottom to 1.</summary>
    /// <param name="value">SI.</param>
    public double Up(double value) => (up.Of(value) - up.Low) / (up.High - up.Low);
}
