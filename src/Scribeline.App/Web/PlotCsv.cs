using System.Globalization;
using System.Text;
using Scribeline.App.Json;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Web;

/// <summary>The data of a plot as CSV, SI, every digit: for each line two columns, because lines need not share their values across.</summary>
internal static class PlotCsv
{
    public static string Of(Plot plot)
    {
        StringBuilder text = new();
        var heads = plot.Series.SelectMany(s => new[] { Head($"{s.Name}: {plot.Across.Name}", plot.Across.Unit), Head(s.Name, plot.Up.Unit) });
        text.AppendJoin(',', heads).Append('\n');
        var rows = plot.Series.Count == 0 ? 0 : plot.Series.Max(s => Math.Min(s.X.Count, s.Y.Count));
        for (var row = 0; row < rows; row++)
        {
            text.AppendJoin(',', plot.Series.SelectMany(s => row < Math.Min(s.X.Count, s.Y.Count) ? new[] { Number(s.X[row]), Number(s.Y[row]) } : ["", ""])).Append('\n');
        }

        return text.ToString();
    }

    private static string Head(string name, Unit unit)
    {
        var symbol = UnitSymbol.Of(unit);
        var head = symbol.Length == 0 ? name : $"{name} [{symbol}]";
        return head.IndexOfAny([',', '"']) < 0 ? head : $"\"{head.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static string Number(double value) => double.IsFinite(value) ? value.ToString("R", CultureInfo.InvariantCulture) : "";
}
