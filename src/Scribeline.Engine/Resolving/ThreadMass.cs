using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>What a threaded rod weighs: as much as a plain one of its pitch diameter.</summary>
internal static class ThreadMass
{
    // ISO 261 coarse series: size, pitch, mm.
    private static readonly (double Size, double Pitch)[] Coarse =
        [(1.6, 0.35), (2, 0.4), (2.5, 0.45), (3, 0.5), (4, 0.7), (5, 0.8), (6, 1), (8, 1.25), (10, 1.5), (12, 1.75), (16, 2)];

    /// <summary>Pitch diameter, m: d - 0.649519 P (ASME B1.1, ISO 724).</summary>
    public static double PitchDiameter(ThreadName thread)
    {
        double pitch = thread.Pitch.Length == 0
            ? Coarse.MinBy(c => Math.Abs(c.Size / 1000 - thread.MajorDiameter)).Pitch / 1000
            : thread.Metric ? double.Parse(thread.Pitch, CultureInfo.InvariantCulture) / 1000
            : 0.0254 / double.Parse(thread.Pitch, CultureInfo.InvariantCulture);
        return thread.MajorDiameter - 0.649519 * pitch;
    }
}
