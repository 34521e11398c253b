using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Packets;

/// <summary>Flight card and checklists.</summary>
internal static class LaunchDayBlocks
{
    // Lower-case letters 2.5 mm high can be read at arm's length in the sun.
    private static readonly Lettering Large = new(4.4);
    private static readonly Lettering LargeStrong = new(4.4, true);

    /// <summary>The card to hand in: the tables of question card, and the verdicts over the tolerances.</summary>
    public static IEnumerable<Block> Card(PacketContents packet, double width)
    {
        if (packet.Of("card") is not { } card) yield break;
        var letters = new Lettering(3);
        foreach (var table in card.Tables)
        {
            yield return new Words(table.Title, Lettering.Strong) { Above = 1.5, KeepWithNext = true };
            List<GridRow> rows = [.. table.Rows.Select(r => new GridRow([r.Cells[0].Words ?? "", Blank(r.Cells[1].Words)], r.Verdict, 1))];
            if (packet.Cases > 0 && table == card.Tables[^1]) rows.Insert(rows.FindIndex(r => r.Cells[0].StartsWith("verdicts", StringComparison.Ordinal)) + 1, new(["verdicts, over the tolerances", AnswerText.Count(packet.Answers)], null, 1));
            foreach (var block in Grid.Rows([new("", Share: 1), new("", Share: 1.9)], rows, width, letters, ruled: true)) yield return block;
        }

        yield return new Words(Cautions.Everything, Lettering.Small, Ink.Light.Quiet) { Above = 1.5 };

        // What is written by hand has the whole line.
        static string Blank(string? entry) => entry is null || entry.All(c => c == '_') ? "" : entry;
    }

    /// <summary>The lists of the day.</summary>
    public static IEnumerable<Block> Lists(Study study)
    {
        yield return new Words(
            "One reads, another looks, touches and says what is seen. HOLD: nothing goes on until it is so. After an interruption begin the list again. A list with an open line is not done.",
            Lettering.Body);
        foreach (var list in LaunchDay.Of(study))
        {
            yield return new Words(list.Phase, Lettering.Heading) { Above = 7, KeepWithNext = true, Bookmark = new(list.Phase, 0, 1) };
            for (var i = 0; i < list.Items.Count; i++) yield return new Item(list.Items[i]) { Above = 0.8, KeepWithNext = true };
            yield return new Words(list.Closing, LargeStrong, Ink.Light.Accent, 8) { Above = 1 };
        }
    }

    private sealed class Item(DayItem item) : Block
    {
        private const double Box = 4, Indent = 8;

        private static double Left(double width) => (width - Indent) * 0.34;

        private double Right(double width) => width - Indent - Left(width) - (item.Hold ? 16 : 0);

        public override double Height(double width) => 1 + (Large.Leading * Math.Max(
            LargeStrong.Wrap(item.Challenge, Left(width) - 3).Count, Large.Wrap(item.Response, Right(width)).Count));

        public override void Draw(Pen pen, double x, double y, double width)
        {
            pen.Box(x + 0.5, y + 0.8, Box, Box, item.Hold ? Stroke.Dye : Stroke.Line);
            var challenge = LargeStrong.Wrap(item.Challenge, Left(width) - 3);
            for (var i = 0; i < challenge.Count; i++) pen.Words(challenge[i], x + Indent, y + Large.Size + (i * Large.Leading), LargeStrong);
            var response = Large.Wrap(item.Response, Right(width));
            for (var i = 0; i < response.Count; i++) pen.Words(response[i], x + Indent + Left(width), y + Large.Size + (i * Large.Leading), Large);
            if (item.Hold) pen.Words("HOLD", x + width, y + Large.Size, LargeStrong, Ink.Light.Accent, SkiaSharp.SKTextAlign.Right);
        }
    }
}
