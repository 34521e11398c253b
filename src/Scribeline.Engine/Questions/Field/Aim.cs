using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Field;

/// <summary>How should the rail point? The tilt and azimuth within the code's limit that keep most flights inside and off what must be kept clear.</summary>
public sealed class Aim() : Question("aim", "How should the rail point?", Place.Field)
{
    private const string Flown = "many flights, see method landing";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    public override bool FliesMany => true;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(Basis.Estimated);
        if (!LandsInside.Sound(draft, study)) return draft.Done();
        var now = new RailAim((PI / 2) - study.Day.Rail.Elevation, study.Day.Rail.Azimuth);
        if (study.Day.Field is null) draft.Miss("site: boundary, see question lands-inside");
        else if (study.Flights > 0) Advise(draft, study, now);
        else draft.Note("Nothing was sought: ask with --samples 1000.");
        draft.Find("tilt as set, from the vertical", draft.Working.Given("t_0", now.Tilt, "rad", "tilt as set", "design"), Unit.Angle, "aim.tilt");
        draft.Find("azimuth as set", draft.Working.Given("z_0", now.Azimuth, "rad", "azimuth as set", "design"), Unit.Angle);
        draft.Note("The speed at rail exit, the weathercock into the wind and the drift are in every flight. Never point a rail at people; the code, the site and the range safety officer set the limits.");
        return draft.Done();
    }

    private static void Advise(Draft draft, Study study, RailAim now)
    {
        var w = draft.Working;
        var search = study.BestAim;
        if (search.Fitted == 0)
        {
            draft.Find("advised tilt, from the vertical", double.NaN, Unit.Angle);
            draft.Note("No case came down at every aim that was tried, so none can be advised.");
            return;
        }

        var (planned, advised) = (study.Landings, study.LandingsAimed(search.Best));
        draft.Find("advised tilt, from the vertical", w.Simulated("t", search.Best.Tilt, "rad", "advised tilt", Flown), Unit.Angle, "aim.tilt");
        draft.Find("advised azimuth, from north", w.Simulated("z", search.Best.Azimuth, "rad", "advised azimuth, towards which it leans", Flown), Unit.Angle);
        draft.Find("room to any side before one more flight in a hundred goes astray", w.Simulated("f", search.Room, "rad", "how flat the best is", "fits to the cases, see method landing"), Unit.Angle);
        Share("outside the field", "o", planned.Outside, advised.Outside);
        foreach (var (area, i) in planned.Kept.Select((k, i) => (k.Area, i))) Share($"on {area.Name}", $"a_{i + 1}", planned.Kept[i].Share, advised.Kept[i].Share);
        draft.Chart(() => LandsInside.Map(study, "Landings as set and as advised", [.. planned.Clouds("as set", 600), .. advised.Clouds("as advised", 600)]));
        draft.Note($"{search.Cases} cases were flown at 15 aims out to the limit; a quadratic through each leaves {search.Misfit:0} m over. {planned.Flights} flights each were then flown as set and as advised, with the same draws.");
        draft.Note($"As set {Words(now)}; advised {Words(search.Best)}. A change within the room to any side is worth nothing that could be told.");

        void Share(string what, string symbol, Range.LandingShare was, Range.LandingShare then)
        {
            (string, string)[] names = [("k", $"k_{symbol}"), ("N", $"N_{symbol}"), ("j", $"j_{symbol}")];
            var k = w.Simulated($"k_{symbol}", was.Count, "", $"flights {what}, as set", Flown);
            var j = w.Simulated($"j_{symbol}", then.Count, "", $"flights {what}, as advised", Flown);
            var N = w.Simulated($"N_{symbol}", was.Of, "", "of so many each", "samples asked for");
            draft.Find(Finding.Of($"share {what}, as set", w.StepOf($"p_{symbol}", k / N, "", "share as set", "definition", names), Unit.Share).With(new Spread(was.Value, was.AtLeast, was.AtMost, null, was.Of)));
            draft.Find(Finding.Of($"share {what}, as advised", w.StepOf($"q_{symbol}", j / N, "", "share as advised", "definition", names), Unit.Share).With(new Spread(then.Value, then.AtLeast, then.AtMost, null, then.Of)));
        }
    }

    private static string Words(RailAim aim) => $"{aim.Tilt * 180 / PI:0.0}° towards {aim.Azimuth * 180 / PI:000}°";
}
