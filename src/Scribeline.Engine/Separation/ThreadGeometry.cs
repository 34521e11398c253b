using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Separation;

/// <summary>
/// What a screw thread leaves to carry load. Unified threads by ASME B1.1: minor diameter D - 1.299038 P, tensile stress area
/// (π/4)(D - 0.9743 P)². Metric threads by ISO 68-1 and ISO 965: root diameter d - 1.226869 P, area (π/4)(d - 0.9382 P)² (from memory).
/// </summary>
/// <param name="MajorDiameter">m.</param>
/// <param name="Pitch">m.</param>
/// <param name="Metric">Whether it is an ISO metric thread.</param>
public readonly record struct ThreadGeometry(double MajorDiameter, double Pitch, bool Metric)
{
    // ISO 261 coarse series: size, pitch, mm.
    private static readonly (double Size, double Pitch)[] Coarse =
    [
        (1.6, 0.35), (2, 0.4), (2.5, 0.45), (3, 0.5), (3.5, 0.6), (4, 0.7), (5, 0.8), (6, 1), (8, 1.25), (10, 1.5), (12, 1.75), (16, 2),
    ];

    /// <summary>At the root of an external thread, m.</summary>
    public double MinorDiameter => MajorDiameter - ((Metric ? 1.226869 : 1.299038) * Pitch);

    /// <summary>What shears where the thread lies in the shear plane, m².</summary>
    public double MinorArea => Math.PI / 4 * MinorDiameter * MinorDiameter;

    /// <summary>What carries tension, m².</summary>
    public double TensileArea => Math.PI / 4 * Math.Pow(MajorDiameter - ((Metric ? 0.9382 : 0.9743) * Pitch), 2);

    /// <summary>The geometry of a named thread; null for a metric size without pitch that the coarse series does not have.</summary>
    /// <param name="thread">By name.</param>
    public static ThreadGeometry? Of(ThreadName thread)
    {
        if (thread.Pitch.Length > 0)
        {
            var typed = double.Parse(thread.Pitch, CultureInfo.InvariantCulture);
            return new(thread.MajorDiameter, thread.Metric ? typed / 1000 : 0.0254 / typed, thread.Metric);
        }

        var row = Array.Find(Coarse, c => Math.Abs((c.Size / 1000) - thread.MajorDiameter) < 1e-9);
        return row.Size > 0 ? new(thread.MajorDiameter, row.Pitch / 1000, true) : null;
    }
}
