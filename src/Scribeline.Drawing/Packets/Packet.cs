using Scribeline.Drawing.Sheets;
using Scribeline.Drawing.Templates;
using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Packets;

/// <summary>
/// The printed set of a rocket: summary for the range safety officer, arrangement, joints, answers with working and pictures, failures, drill sheets
/// at true size, build order, flight card, checklists, cautions. The same contents give the same bytes.
/// </summary>
public static class Packet
{
    /// <summary>The whole set as one PDF.</summary>
    public static byte[] Pdf(PacketContents packet) => SheetOutput.Pdf(Sheets(packet), packet.Facts, $"{packet.Facts.Design}: packet");

    /// <summary>Its sheets, in order.</summary>
    internal static IReadOnlyList<Sheet> Sheets(PacketContents packet)
    {
        var flow = new Flow(packet.Paper);
        var blocks = new AnswerBlocks(packet.Inch, flow.Width);
        flow.Insert([new SummaryPage(packet).Sheet, new ArrangementSheet(packet).Sheet]);
        flow.Chapter("Joints");
        flow.Add(new JointBlocks(packet).All());
        Answers(flow, blocks, packet);
        Alone(flow, blocks, packet, "if-it-fails", "What if something fails");
        Bench(flow, packet);
        Alone(flow, blocks, packet, "build-order", "Build order");
        flow.Chapter("Flight card");
        flow.Add(LaunchDayBlocks.Card(packet, flow.Width));
        flow.Chapter("Checklists");
        flow.Add(LaunchDayBlocks.Lists(packet.Study));
        flow.Chapter("Cautions");
        foreach (var caution in Cautions.All) flow.Add(new Words(caution, Lettering.Body) { Above = 2.5 });
        return flow.Done();
    }

    private static void Answers(Flow flow, AnswerBlocks blocks, PacketContents packet)
    {
        flow.Chapter("Answers with working");
        foreach (var answer in packet.Answers.Where(a => a.Question.Id is not ("if-it-fails" or "build-order"))) flow.Add(blocks.Of(answer));
    }

    private static void Alone(Flow flow, AnswerBlocks blocks, PacketContents packet, string id, string chapter)
    {
        if (packet.Of(id) is not { } answer) return;
        flow.Chapter(chapter);
        flow.Add(blocks.Of(answer));
    }

    private static void Bench(Flow flow, PacketContents packet)
    {
        flow.Chapter("Drill sheets");
        flow.Add(new Words("Hole schedule and templates. Print at actual size and measure the scale bars before drilling.", Lettering.Body));
        flow.Add(HoleBlocks.Of(packet, flow.Width));
        flow.Insert(TemplateSheets.Of(RocketTemplates.Of(packet.Study, packet.Paper), packet.Paper));
    }
}
