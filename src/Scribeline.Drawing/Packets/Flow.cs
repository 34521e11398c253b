using Scribeline.Drawing.Sheets;

namespace Scribeline.Drawing.Packets;

/// <summary>Sets blocks beneath one another, page after page.</summary>
/// <param name="paper">Upright paper.</param>
internal sealed class Flow(Paper paper)
{
    private const double Side = 15, Top = 14;

    private readonly List<Sheet> sheets = [];
    private readonly List<Block> waiting = [];
    private List<(Block Block, double Y)> page = [];
    private double y = Top;
    private string chapter = "";

    /// <summary>Width of the text, mm.</summary>
    public double Width => paper.Width - (2 * Side);

    /// <summary>Height of the text, mm.</summary>
    public double Height => Bottom - Top;

    private double Bottom => paper.Height - TitleStrip.Height - 4;

    /// <summary>Begins a chapter on a new page.</summary>
    public void Chapter(string name, bool heading = true)
    {
        Break();
        chapter = name;
        if (heading) Add(new Words(name, Lettering.Chapter) { Bookmark = new(name), KeepWithNext = true });
    }

    /// <summary>Sets blocks.</summary>
    public void Add(IEnumerable<Block> blocks)
    {
        foreach (var block in blocks) Add(block);
    }

    /// <summary>Sets a block.</summary>
    public void Add(Block block)
    {
        waiting.Add(block);
        if (!block.KeepWithNext) Settle();
    }

    /// <summary>Begins a new page, unless this one is empty.</summary>
    public void Break()
    {
        Settle();
        if (page.Count == 0) return;
        var placed = page;
        var title = chapter;
        sheets.Add(new(paper, title, pen =>
        {
            foreach (var (block, at) in placed) block.Draw(pen, Side, at, Width);
        })
        {
            Bookmarks = [.. placed.Where(p => p.Block.Bookmark is not null).Select(p => p.Block.Bookmark! with { Y = p.Y - 2 })],
        });
        page = [];
        y = Top;
    }

    /// <summary>Puts whole sheets in.</summary>
    public void Insert(IEnumerable<Sheet> whole)
    {
        Break();
        sheets.AddRange(whole);
    }

    /// <summary>All sheets.</summary>
    public IReadOnlyList<Sheet> Done()
    {
        Break();
        return sheets;
    }

    // Places what waits, together on one page if it fits one at all.
    private void Settle()
    {
        if (waiting.Count == 0) return;
        var blocks = waiting.ToArray();
        waiting.Clear();
        var height = blocks.Select((b, i) => b.Height(Width) + (i == 0 && page.Count == 0 ? 0 : b.Above)).Sum();
        if (page.Count > 0 && y + height > Bottom) Break();
        foreach (var block in blocks)
        {
            if (page.Count > 0 && y + block.Above + block.Height(Width) > Bottom) Break();
            if (page.Count == 0 && block.Heads is { } heads) Place(heads);
            Place(block);
        }
    }

    private void Place(Block block)
    {
        if (page.Count > 0) y += block.Above;
        page.Add((block, y));
        y += block.Height(Width);
    }
}
