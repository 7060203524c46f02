using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether what holds a weather strip's free edge lies clear of zipper tape, panel and pockets, and a rod bears its bend.</summary>
internal static class StripHoldChecks
{
    public static IEnumerable<CheckResult> Of(PatternSet patterns) =>
        from strip in patterns.Mounted.Fastened.Strips
        where strip.Holding is not null
        from check in Of(patterns, strip, strip.Holding!)
        select check.On(new PartKeys(patterns.Job).Strip(strip.Side));

    private static IEnumerable<CheckResult> Of(PatternSet patterns, StripPlace strip, StripHolding holding)
    {
        var (job, mounted) = (patterns.Job, patterns.Mounted);
        yield return Tape(job, mounted, strip);
        if (!strip.IsOnCarrier)
        {
            yield return Panel(job, mounted, strip);
        }

        if (holding.Kind == Design.StripHold.Rod)
        {
            var (from, to) = strip.FreeEdge;
            yield return RodBend.Check(Say.Of($"bend of the rod of the {strip.Name}"), new(strip.Side, from, to, job.Fastenings.WeatherStrip.Rod), patterns);
            yield break;
        }

        yield return CheckResult.Judged(
            (CheckCodes.StripHold, Say.Of($"{strip.Name}, how many hold it")),
            Measured.AtLeast(Scalar.FromAmount(holding.Centres.Length), Scalar.FromAmount(2)),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of("The pockets leave no room for two of them: shorten pocket.leg, or hold it by a rod."));
        if (holding.Kind == Design.StripHold.HookAndLoop)
        {
            yield return CheckResult.Judged(
                (CheckCodes.StripHold, Say.Of($"{strip.Name}, squares and the width of their tape")),
                Measured.AtMost(holding.Size, job.Workshop.Supplies.Tapes.Mount.HookAndLoop.Width),
                Verdict.Fail,
                Say.Of("the tape's grade (tapes.hook_and_loop)"),
                Say.Of("Squares so large cannot be cut from this tape: make weather_strip.square smaller, or take a wider tape."));
        }
    }

    /// <summary>
    /// Between what holds the free edge and the tape, or the flap, of what holds the carrier's own edge: there it would be sewn through or lie
    /// on teeth.
    /// </summary>
    private static CheckResult Tape(CarrierJob job, MountedShape mounted, StripPlace strip)
    {
        var (fastenings, inner) = (job.Fastenings, InnerReach(job));
        var edge = -StripPlace.Inside(strip.Side, mounted.CarrierBox, Box.Holding([strip.FreeEdge.From, strip.FreeEdge.To]));
        var room = strip.IsOnCarrier ? edge - inner - fastenings.OuterEdge(strip.Side) : -edge - inner - fastenings.UnderEdge(strip.Side);
        var needed = fastenings.WeatherStrip.Overlap - room + StripHolding.Rim;
        return CheckResult.Judged(
            (CheckCodes.StripHold, Say.Of($"{strip.Name}, what holds it and what holds the carrier's edge")),
            Measured.AtLeast(room, StripHolding.Rim),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of($"It would lie on the zipper's tape or the flap: set weather_strip.overlap to {LimitWords.Least(needed, job.Units)} or more."));
    }

    /// <summary>On the carrier it must find its place between the edge and the panel.</summary>
    private static CheckResult Panel(CarrierJob job, MountedShape mounted, StripPlace strip)
    {
        var outer = job.Fastenings.WeatherStrip.Overlap - (strip.Holding!.Kind == Design.StripHold.Rod ? Length.Zero : StripHolding.Rim);
        return CheckResult.Judged(
            (CheckCodes.StripHold, Say.Of($"{strip.Name}, what holds it and the panel")),
            Measured.AtLeast(StripPlace.Inside(strip.Side, mounted.CarrierBox, mounted.RowBox) - outer, StripHolding.Rim),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of($"It would lie on the panel: widen carrier.border.{Words.Id(strip.Side)} to {LimitWords.Least(outer + StripHolding.Rim, job.Units)} or more, or sew the strip to the carrier (weather_strip.sewn_to)."));
    }

    /// <summary>How far from the free edge it reaches.</summary>
    private static Length InnerReach(CarrierJob job)
    {
        var (strip, size) = (job.Fastenings.WeatherStrip, StripHolding.SizeOf(job.Fastenings));
        return strip.Held == Design.StripHold.Rod ? StripHolding.FreeHem(strip, size).Width : size + StripHolding.Rim;
    }
}
