using System.Collections;
using System.Globalization;
using System.Text;
using QRCoder;

namespace Scribeline.App.Web;

/// <summary>A QR code (ISO/IEC 18004) as squares, with the quiet border it needs.</summary>
/// <param name="Size">Squares on a side, border included.</param>
/// <param name="Path">The dark ones, as path data of SVG.</param>
/// <param name="Lines">The same in half-height signs, light ones drawn, for a dark terminal.</param>
internal sealed record QrPicture(int Size, string Path, IReadOnlyList<string> Lines)
{
    /// <summary>The code of a text.</summary>
    public static QrPicture Of(string text)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = code.ModuleMatrix;
        var path = new StringBuilder();
        for (var y = 0; y < rows.Count; y++)
        {
            for (var x = 0; x < rows.Count; x++)
            {
                if (rows[y][x]) path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
            }
        }

        return new(rows.Count, path.ToString(), [.. Enumerable.Range(0, (rows.Count + 1) / 2).Select(i => Line(rows, 2 * i))]);
    }

    private static string Line(List<BitArray> rows, int y)
    {
        bool Dark(int row, int column) => row < rows.Count && rows[row][column];
        return new([.. Enumerable.Range(0, rows.Count).Select(x => (Dark(y, x), Dark(y + 1, x)) switch { (true, true) => ' ', (true, false) => '▄', (false, true) => '▀', _ => '█' })]);
    }
}
