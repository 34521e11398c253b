using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Range;

/// <summary>An ellipse on the ground.</summary>
/// <param name="Centre">Its middle.</param>
/// <param name="Major">Longer half axis, m.</param>
/// <param name="Minor">Shorter half axis, m.</param>
/// <param name="Azimuth">Of the longer axis, rad clockwise from north, 0 up to π.</param>
/// <param name="Content">Share of a normal scatter that lies inside, 0 to 1.</param>
public sealed record LandingEllipse(LandingPoint Centre, double Major, double Minor, double Azimuth, double Content)
{
    /// <summary>Half axes over standard deviations that hold a share of a normal scatter: √(−2 ln(1 − p)), chi-square with 2 degrees of freedom.</summary>
    public static double Factor(double content) => Math.Sqrt(-2 * Math.Log(1 - content));

    /// <summary>Whether a point lies inside or on it.</summary>
    public bool Contains(LandingPoint point)
    {
        var (sine, cosine) = Math.SinCos(Azimuth);
        double e = point.East - Centre.East, n = point.North - Centre.North;
        double along = (e * sine) + (n * cosine), across = (e * cosine) - (n * sine);
        return Square(along, Major) + Square(across, Minor) <= 1;
    }

    /// <summary>Points along it, evenly by its parameter, the first not repeated.</summary>
    public ValueList<LandingPoint> Outline(int points = 72)
    {
        var (sine, cosine) = Math.SinCos(Azimuth);
        return Enumerable.Range(0, points).Select(i =>
        {
            var (s, c) = Math.SinCos(Math.Tau * i / points);
            double along = Major * c, across = Minor * s;
            return new LandingPoint(Centre.East + (along * sine) + (across * cosine), Centre.North + (along * cosine) - (across * sine));
        }).ToValueList();
    }

    private static double Square(double value, double axis) => axis > 0 ? value * value / (axis * axis) : value == 0 ? 0 : double.PositiveInfinity;
}
