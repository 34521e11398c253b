using System.Globalization;
using System.Text;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.App.Components.Rocket;

/// <summary>Stations and distances as places on the drawing: nose up, one scale for both, room for words on either side.</summary>
public sealed class RocketScale
{
    /// <summary>Height of the drawing.</summary>
    public const double Height = 1000;

    private const double Edge = 14;
    private const double WordsLeft = 150;
    private const double WordsRight = 176;
    private const double WidestBody = 260;

    private readonly double front;

    public RocketScale(SideView look)
    {
        front = look.Front;
        var length = Math.Max(look.Rear - look.Front, 1e-3);
        Factor = Math.Min((Height - (2 * Edge)) / length, WidestBody / Math.Max(2 * look.Reach, 1e-3));
        Reach = look.Reach * Factor;
        Axis = WordsLeft + Reach;
        Top = (Height - (length * Factor)) / 2;
        Width = Axis + Reach + WordsRight;
    }

    /// <summary>Drawn units for one metre.</summary>
    public double Factor { get; }

    /// <summary>Width of the drawing.</summary>
    public double Width { get; }

    /// <summary>Where the axis stands.</summary>
    public double Axis { get; }

    /// <summary>Drawn distance of the outermost outline from the axis.</summary>
    public double Reach { get; }

    private double Top { get; }

    /// <summary>Place down the drawing of a station, m.</summary>
    public double Y(double station) => Top + ((station - front) * Factor);

    /// <summary>Place across the drawing of a distance from the axis, m.</summary>
    public double X(double across) => Axis + (across * Factor);

    /// <summary>An outline as the points of a polygon.</summary>
    public string Points(ValueList<SidePoint> outline)
    {
        StringBuilder text = new();
        foreach (var point in outline) text.Append(N(X(point.Across))).Append(',').Append(N(Y(point.Station))).Append(' ');
        return text.ToString();
    }

    /// <summary>A number for the drawing.</summary>
    public static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
