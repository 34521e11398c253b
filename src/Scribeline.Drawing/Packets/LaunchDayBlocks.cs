using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Packets;

/// <summary>Flight card and checklists.</summary>
internal static class LaunchDayBlocks
{
    // Lower-case letters 2.5 mm high can be read at arm's length in the sun.
    private static readonly Lettering Large = new(4.4);
    private static readonly Lettering LargeStrong = new(4.4, true);

    /// <summary>The card to hand in.</summary>
    public static IEnumerable<Block> Card(PacketContents packet, double width)
    {
        var study = packet.Study;
        List<GridRow> rows =
        [
            Row("rocket", study.Rocket.Name),
            Row("flyer, certification", ""),
            Row("motor", study.HasMotor ? $"{study.Motor.Name}, {Shown.Text(study.Motor.Curve.TotalImpulse, Unit.Impulse, packet.Inch)}, burns {Shown.Text(study.Motor.Curve.BurnTime, Unit.Time, packet.Inch)}" : ""),
            Row("length, diameter", $"{Shown.Text(study.Length, Unit.Length, packet.Inch)}, {Shown.Text(study.Shape.ReferenceDiameter, Unit.Length, packet.Inch)}"),
            Row("mass on the pad", Figure("weight", 0)),
            Row("balance and centre of pressure", $"{Figure("weight", 1)} and {(study.SideView.CentreOfPressure is { } cp ? Shown.Text(cp.Station, Unit.Length, packet.Inch) : "open")} aft of the tip"),
            Row("thrust over weight", Figure("thrust-to-weight", 0)),
            Row("speed leaving the rail", Figure("rail-exit", 0)),
            Row("least static margin", Figure("stable", 0)),
            Row("expected height", Figure("how-high", 0)),
            Row("greatest speed, Mach number", $"{Figure("how-fast", 0)}, {Figure("how-fast", 1)}"),
        ];
        rows.AddRange(study.Rocket.Firings.Select(f => Row(f.Name, LaunchDay.Trigger(f.Trigger, packet.Inch))));
        rows.AddRange(study.Rocket.Separation.Charges.Select(c => Row($"charge {c.Name}", c.Mass is { } m ? Shown.Text(m, Unit.Powder, packet.Inch) : "open")));
        rows.AddRange(packet.Of("descends") is { } down ? down.Findings.Where(f => f.Unit == Unit.Speed).Take(4).Select(f => Row(f.Name, Shown.Text(f.Value, f.Unit, packet.Inch))) : []);
        rows.Add(Row("verdicts", AnswerText.Count(packet.Answers)));
        rows.AddRange([Row("pad, rack", ""), Row("range safety officer", ""), Row("time, result", "")]);
        return Grid.Rows([new("", Share: 1), new("", Share: 1.6)], rows, width, new Lettering(3.6), ruled: true);

        string Figure(string id, int index) => packet.Of(id) is { } answer && answer.Findings.Count > index ? Shown.Text(answer.Findings[index].Value, answer.Findings[index].Unit, packet.Inch) : "open";
        static GridRow Row(string name, string value) => new([name, value], null, 1);
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

    private sealed class Item(CheckItem item) : Block
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
