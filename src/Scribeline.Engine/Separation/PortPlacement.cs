using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Separation;

/// <summary>
/// Where static ports stand against what disturbs the stream. Common practice: 2, better 4 calibres behind the shoulder, 1 calibre ahead of the
/// fins, off the line of guides, screws and switches.
/// </summary>
/// <param name="BehindShoulder">Calibres behind the last change of diameter ahead; infinite where there is none.</param>
/// <param name="AheadOfFins">Calibres ahead of the foremost fin root; infinite without fins behind.</param>
/// <param name="OffLine">Least clock angle between a port and what stands within <see cref="Reach"/> calibres ahead of it, rad; π where nothing does.</param>
/// <param name="InLine">Name of what stands nearest to that line; null where nothing does.</param>
public sealed record PortPlacement(double BehindShoulder, double AheadOfFins, double OffLine, string? InLine)
{
    /// <summary>Calibres behind which a small disturbance is no longer looked at: as far as a port should stand behind a shoulder.</summary>
    public const double Reach = 4;

    /// <summary>Looks at a row of ports.</summary>
    /// <param name="ports">The row.</param>
    /// <param name="shape">What the air sees.</param>
    /// <param name="things">What stands on the surface.</param>
    public static PortPlacement Of(HoleRow ports, OuterShape shape, IEnumerable<SurfaceThing> things)
    {
        var calibre = shape.ReferenceDiameter;
        var step = shape.Body.Where(s => s.FrontDiameter != s.RearDiameter && s.Front + s.Length <= ports.Station)
            .Select(s => s.Front + s.Length).DefaultIfEmpty(double.NegativeInfinity).Max();
        var fins = shape.Fins.Select(f => f.RootLeadingEdge).Where(x => x >= ports.Station).DefaultIfEmpty(double.PositiveInfinity).Min();
        var (angle, name) = (Math.PI, (string?)null);
        foreach (var thing in things.Where(t => t.Station < ports.Station && ports.Station - t.Station <= Reach * calibre))
        {
            foreach (var clock in ports.Clocks)
            {
                var apart = Math.Abs(Math.IEEERemainder(thing.Clock - clock, 2 * Math.PI));
                if (apart < angle) (angle, name) = (apart, thing.Name);
            }
        }

        return new((ports.Station - step) / calibre, (fins - ports.Station) / calibre, angle, name);
    }
}
