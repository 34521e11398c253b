using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Drawing.Tests.Templates;

/// <summary>Strips made by hand for a tube of 79.2 mm: invented.</summary>
internal static class SampleStrips
{
    public static readonly SheetFacts Facts = new("Sample rocket", "0.1.0", "0123456789ab");

    /// <summary>Four holes, one on the scribe line; 0, 45, 200 and 345 degrees round.</summary>
    public static WrapTemplate Strip(double diameter = 0.0792, double height = 0.060)
    {
        WrapTemplate bare = new("Payload: pins", WrapKind.Holes, 1, "Payload", diameter, WrapTemplate.OfficePaper, 0.4, 0.4 + height, new(1, true, "forward edge of Payload", 0.4), 0, [], [], []);
        return bare with
        {
            Lines = [new("scribe line", WrapLineKind.Scribe, 0, 0), new("fin 1", WrapLineKind.Fin, bare.Along(Math.PI / 3), Math.PI / 3)],
            Edges = [new("end of Nose inside", 0.05, 0.45)],
            Marks = [Mark("A1", 0, 0.020), Mark("A2", 45, 0.0255), Mark("A3", 200, 0.020), Mark("A4", 345, 0.040)],
        };

        WrapMark Mark(string mark, double degrees, double down)
        {
            var clock = degrees * Math.PI / 180;
            Hole hole = new(mark, HoleKind.Pin, "pins", 0, 0.4 + down, clock, diameter, [new(1, "Payload", 0.0024, Drill.Named("3/32"), 0.0015)], 0.004, new(1, true, "forward edge of Payload", 0.4), down);
            return new(hole, bare.Along(clock), down);
        }
    }

    /// <summary>A plate with three holes and things on either face.</summary>
    public static PlateLayout Plate { get; } = new(
        "Bay top", 2, 0.0760, 0, 0.0064, 0.9, 0.0762, 0.0732,
        [
            new("charge cup", PlateThingKind.ChargeCup, PlateFace.Forward, new PlateCircle(0.018, 0.012, 0.008), "cup", true),
            new("terminal block", PlateThingKind.TerminalBlock, PlateFace.Aft, new PlateRectangle(-0.018, 0.010, 0.020, 0.010, 0.5), "block", true),
        ]);

    public static readonly PlateHole[] PlateHoles =
    [
        new("H1", "Bay top", "rod 1", 0.0222, Math.PI / 2, 0.0071, Drill.Named("9/32"), 0.0064),
        new("H2", "Bay top", "rod 2", 0.0222, 3 * Math.PI / 2, 0.0071, Drill.Named("9/32"), 0.0064),
    ];
}
