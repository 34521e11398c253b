using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>
/// Places what the builder left open on a plate so that the narrowest gap is as wide as can be found, keeping what was fixed. One group after
/// the other is tried all round and at every radius, the others held, until none can be bettered, and then in ever smaller steps; from several
/// starts, since the best of one start need not be the best of all. Cyclic coordinate search: Bazaraa, Sherali and Shetty, Nonlinear
/// Programming, ch. 8 (from memory).
/// </summary>
public static class PlateSolver
{
    private const int Turns = 48, Radii = 12, Rounds = 6, Starts = 4;

    /// <summary>A step finer than a drill is placed, m and rad.</summary>
    private const double FinestRadius = 0.02e-3, FinestTurn = 0.0005;

    /// <summary>Name of the group that is one on all plates of a part: rods run through.</summary>
    internal const string Shared = "rod";

    /// <summary>The plate with everything in place; proposals for what was left open.</summary>
    /// <param name="draft">What is fixed and what is not.</param>
    public static PlateLayout Solve(PlateDraft draft)
    {
        var free = draft.Groups.Where(g => !g.Fixed).ToArray();
        if (free.Length == 0) return draft.Plate with { Things = draft.Groups.SelectMany(g => g.At(g.FromCentre!.Value, g.Clock!.Value)).ToValueList() };
        var best = Enumerable.Range(0, Starts).Select(start => new Search(draft, free, start).Run()).MaxBy(s => s.Least)!;
        return best.Layout();
    }

    /// <summary>
    /// Plates that share something which must sit alike on all of them, such as rods: each leads in turn, the others follow, and the best is
    /// taken.
    /// </summary>
    /// <param name="drafts">Plates of one part.</param>
    public static ValueList<PlateLayout> Solve(ValueList<PlateDraft> drafts)
    {
        PlateDraft[] leaders = [.. drafts.Where(d => d.Groups.Any(g => g.Name == Shared && !g.Fixed))];
        if (leaders.Length < 2) return drafts.Select(Solve).ToValueList();
        return leaders.Select(leader =>
        {
            var place = Solve(leader).Proposals.Single(p => p.Group == Shared);
            return drafts.Select(d => Solve(d.With(place)) is var solved && leaders.Contains(d) ? solved with { Proposals = [place, .. solved.Proposals] } : solved).ToValueList();
        }).MaxBy(all => all.Min(p => PlateGaps.Of(p).Select(g => g.Width).DefaultIfEmpty(double.PositiveInfinity).Min()))!;
    }

    private sealed class Search
    {
        private readonly PlateDraft draft;
        private readonly PlateGroup[] free;
        private readonly PlateThing[] kept;
        private readonly (double Radius, double Clock)[] at;

        public Search(PlateDraft draft, PlateGroup[] free, int start)
        {
            (this.draft, this.free) = (draft, free);
            kept = [.. draft.Groups.Where(g => g.Fixed).SelectMany(g => g.At(g.FromCentre!.Value, g.Clock!.Value))];

            // Spread round the plate by the golden angle, turned a little further at each start.
            var golden = Math.PI * (3 - Math.Sqrt(5));
            at = [.. free.Select((g, i) => (g.FromCentre ?? Middle, g.Clock ?? WrapTemplate.Turn((i * golden) + (start * 2 * Math.PI / Starts))))];
        }

        public double Least { get; private set; }

        private double Outer => Math.Max(draft.Plate.Diameter, Math.Max(draft.Plate.ForwardBore, draft.Plate.AftBore)) / 2;

        private double Middle => ((draft.Plate.InnerDiameter / 2) + Outer) / 2;

        public Search Run()
        {
            for (var round = 0; round < Rounds; round++)
            {
                var bettered = false;
                for (var i = 0; i < free.Length; i++) bettered |= Sweep(i);
                if (!bettered) break;
            }

            for (double step = 0.5; step * 2 * Math.PI / Turns > FinestTurn || step * Outer / Radii > FinestRadius; step /= 2)
            {
                for (var i = 0; i < free.Length; i++) Refine(i, step);
            }

            Least = PlateGaps.Of(Layout()).Select(g => g.Width).DefaultIfEmpty(double.PositiveInfinity).Min();
            return this;
        }

        public PlateLayout Layout()
        {
            var things = draft.Groups.SelectMany(g => Array.IndexOf(free, g) is >= 0 and var i ? g.At(at[i].Radius, at[i].Clock) : g.At(g.FromCentre!.Value, g.Clock!.Value));
            return draft.Plate with
            {
                Things = things.ToValueList(),
                Proposals = free.Select((g, i) => new PlateProposal(g.Name, at[i].Radius, WrapTemplate.Turn(at[i].Clock))).ToValueList(),
            };
        }

        private bool Sweep(int i)
        {
            var others = Others(i);
            var (from, best) = (at[i], Value(i, at[i], others));
            double start = best, inner = draft.Plate.InnerDiameter / 2;
            var clocks = free[i].Clock is { } c ? [c] : Enumerable.Range(0, Turns / free[i].Count).Select(k => 2 * Math.PI * k / Turns);
            foreach (var clock in clocks)
            {
                foreach (var radius in free[i].FromCentre is { } r ? [r] : Enumerable.Range(0, Radii + 1).Select(k => inner + ((Outer - inner) * k / Radii)))
                {
                    if (Value(i, (radius, clock), others, best) is var value && value > best + 1e-9) (from, best) = ((radius, clock), value);
                }
            }

            at[i] = from;
            return best > start + 1e-6;
        }

        private void Refine(int i, double step)
        {
            var others = Others(i);
            var best = Value(i, at[i], others);
            double turn = free[i].Clock is null ? step * 2 * Math.PI / Turns : 0, shift = free[i].FromCentre is null ? step * Outer / Radii : 0;
            foreach (var (a, b) in new[] { (turn, 0.0), (-turn, 0), (0, shift), (0, -shift), (turn, shift), (turn, -shift), (-turn, shift), (-turn, -shift) })
            {
                var tried = (Radius: Math.Max(at[i].Radius + b, 0), Clock: at[i].Clock + a);
                if (Value(i, tried, others, best) is var value && value > best) (at[i], best) = (tried, value);
            }
        }

        private PlateThing[] Others(int i) => [.. kept, .. free.Index().Where(g => g.Index != i).SelectMany(g => g.Item.At(at[g.Index].Radius, at[g.Index].Clock))];

        private double Value(int i, (double Radius, double Clock) place, PlateThing[] others, double enough = double.NegativeInfinity) =>
            PlateGaps.Least(draft.Plate, [.. free[i].At(place.Radius, place.Clock)], others, enough);
    }
}
