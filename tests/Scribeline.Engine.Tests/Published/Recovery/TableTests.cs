using Scribeline.Engine.Recovery;
using Scribeline.Engine.Tables;
using Scribeline.Engine.Tests.Published.Air;

namespace Scribeline.Engine.Tests.Published.Recovery;

/// <summary>Tables against the specifications and handbook rows they were typed from, kept apart in Published/Data.</summary>
public class TableTests
{
    private const double Pound = 4.4482216152605;

    /// <summary>Minimum breaking strengths of military and Parachute Industry Association specifications, to 5 N of rounding.</summary>
    [Theory]
    [InlineData("MIL-W-4088", "flat nylon type {0}", 13)]
    [InlineData("PIA-W-1100A", "tube-edge nylon type {0}", 4)]
    [InlineData("MIL-C-5040", "nylon cord type {0}", 6)]
    [InlineData("MIL-T-8363B", "nylon tape MIL-T-8363 type {0}", 5)]
    public void Textiles(string specification, string name, int count)
    {
        var rows = AirTable.Read("recovery-textiles.csv").Where(r => r["specification"].StartsWith(specification, StringComparison.Ordinal)).ToArray();
        Assert.Equal(count, rows.Length);
        foreach (var row in rows)
        {
            var cord = CordMaterial.Find(string.Format(System.Globalization.CultureInfo.InvariantCulture, name, row["type"]));
            Assert.Equal(row.Number("min_break_lbf") * Pound, cord!.Strength!.Value, 5.01);
            if (row["width_mm"].Length > 0) Assert.Equal(row.Number("width_mm") / 1000, cord.Width!.Value, 1e-9);
        }
    }

    /// <summary>Working loads: ASME B18.15, RR-C-271, DIN 580 and trade lists, to a newton.</summary>
    [Theory]
    [InlineData("forged shoulder eyebolt", "forged eye bolt {0}", 5)]
    [InlineData("anchor shackle", "shackle {0}", 8)]
    [InlineData("screw-gate quick link", "quick link {0}", 5)]
    public void Hardware(string item, string name, int count)
    {
        var rows = AirTable.Read("recovery-hardware.csv").Where(r => r["item"].StartsWith(item, StringComparison.Ordinal) && r["size"] != "1").ToArray();
        Assert.Equal(count, rows.Length);
        foreach (var row in rows)
        {
            var part = RiggingPart.Find(string.Format(System.Globalization.CultureInfo.InvariantCulture, name, row["size"]));
            Assert.Equal(row.Number("WLL_lbf") * Pound, part!.WorkingLoad!.Value, 1.0);
        }
    }

    /// <summary>DIN 580: 140, 230 and 340 kg axially.</summary>
    [Theory]
    [InlineData("M8", 140)]
    [InlineData("M10", 230)]
    [InlineData("M12", 340)]
    public void Collar_eye_bolts(string size, double kilograms) =>
        Assert.Equal(kilograms * 9.80665, RiggingPart.Find($"collar eye bolt {size}")!.WorkingLoad!.Value, 1.0);

    /// <summary>A bent-wire eye has no rating.</summary>
    [Fact]
    public void A_plain_eye_bolt_is_not_rated() => Assert.Null(RiggingPart.Find("eye bolt 1/4"));

    /// <summary>Handbook rows (Knacke 1991, tables 5-1, 5-2, 5-6, from memory).</summary>
    [Fact]
    public void Canopies()
    {
        var rows = AirTable.Read("recovery-canopies.csv");
        Assert.Equal(18, rows.Count);
        foreach (var row in rows)
        {
            var name = row["type"].Replace("_10_", "_", StringComparison.Ordinal).Replace("_14_", "_", StringComparison.Ordinal).Replace('_', ' ');
            var kind = CanopyKind.All.Single(k => k.Name == name);
            Assert.Equal(row.Number("CD0_min"), kind.DragLow, 1e-9);
            Assert.Equal(row.Number("CD0_max"), kind.DragHigh, 1e-9);
            Assert.Equal(row.Number("Dp_D0_min"), kind.ProjectedLow, 1e-9);
            Assert.Equal(row.Number("Dc_D0_max"), kind.ConstructedHigh, 1e-9);
            Assert.Equal(row.Number("pflanz_n"), kind.ForceGrowth, 1e-9);

            // A coefficient on the projected area is the same drag told by a smaller disc.
            var low = ClothArea.Rebased(kind.DragLow, 1, kind.ProjectedHigh * kind.ProjectedHigh);
            Assert.Equal(row.Number("CDp_min_derived"), low, 0.006);
        }
    }
}
