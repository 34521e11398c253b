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
    private const string Failing = "if-it-fails";
    private static readonly string[] OnTheDay = ["card", "checklist"];
    private static readonly string[] Drilling = ["holes-clear", "plates-clear", "templates"];

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
        Chapter(flow, blocks, packet, "Answers with working", a => a.Question.Place != Place.Bench && a.Question.Id != Failing && !OnTheDay.Contains(a.Question.Id));
        Chapter(flow, blocks, packet, "What if something fails", a => a.Question.Id == Failing);
        Chapter(flow, blocks, packet, "Drill sheets", a => Drilling.Contains(a.Question.Id));
        flow.Insert(TemplateSheets.Of(RocketTemplates.Of(packet.Study, packet.Paper), packet.Paper));
        Chapter(flow, blocks, packet, "Building", a => a.Question.Place == Place.Bench && !Drilling.Contains(a.Question.Id));
        flow.Chapter("Flight card");
        flow.Add(LaunchDayBlocks.Card(packet, flow.Width));
        flow.Chapter("Checklists");
        flow.Add(LaunchDayBlocks.Lists(packet.Study));
        flow.Chapter("Cautions");
        foreach (var caution in Cautions.All) flow.Add(new Words(caution, Lettering.Body) { Above = 2.5 });
        return flow.Done();
    }

    private static void Chapter(Flow flow, AnswerBlocks blocks, PacketContents packet, string name, Func<Answer, bool> belongs)
    {
        Answer[] answers = [.. packet.Answers.Where(belongs)];
        if (answers.Length == 0) return;
        flow.Chapter(name);
        foreach (var answer in answers) flow.Add(blocks.Of(answer));
    }
}
