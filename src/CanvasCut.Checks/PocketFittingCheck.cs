using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether the last corner can be slipped into its pocket without bending the panel too far.</summary>
internal static class PocketFittingCheck
{
    /// <summary>The order of work puts the forward corners in first, so either aft corner may be the last; the harder one is judged.</summary>
    public static CheckResult Of(CarrierJob job, MountedShape mounted)
    {
        EachPanel PanelAt(PocketPlace pocket) => EachPanel.Of(job, mounted)[PocketFitting.IndexAt(job, pocket.Corner)];
        PocketFitting At(PocketPlace pocket) => PocketFitting.Of(job, mounted.CarrierBox, mounted.Panels, pocket.Corner);
        var last = mounted.Fastened.Pockets.Where(pocket => pocket.Corner.End == Side.Aft)
            .OrderBy(pocket => At(pocket).BowsFor(pocket) is [var bow, ..] ? bow.Radius / PanelAt(pocket).Job.LeastRadius : double.PositiveInfinity)
            .ThenByDescending(pocket => (pocket.Covers - At(pocket).Flat(pocket.Corner)).Millimeters)
            .First();
        var panel = PanelAt(last);
        return Of(panel, At(last), last).On(new PartKeys(job).Pocket(last.Corner), new PartKeys(panel.Job).Panel);
    }

    private static CheckResult Of(EachPanel panel, PocketFitting fitting, PocketPlace last)
    {
        var job = panel.Job;
        var (code, subject) = (CheckCodes.PocketFitting, PanelWords.Of(job, Say.Of($"last corner into the {last.Corner} pocket")));
        var (limit, bows) = (BendLimit.Of(job), fitting.BowsFor(last));
        if (bows.IsEmpty)
        {
            return new(code, subject, Verdict.Pass, Measured.Nothing, BendLimit.Source, Say.Of("It goes in flat: forward corners first, then the carrier pushed forward."));
        }

        // What is not known of the top can only make a bow sharper: one that fails without it fails.
        var known = bows.FirstOrDefault(bow => MissingFor(bow, panel).IsEmpty);
        var bow = known?.Radius >= limit.Needed || bows[0].Radius < limit.Needed ? known ?? bows[0] : null;
        return bow is null
            ? new(code, subject, Verdict.NotChecked, Measured.Nothing, BendLimit.Source, Say.Of($"The top's own curve brings the panel's edges nearer before it is bowed, and is not known: give {string.Join(", ", MissingFor(bows[0], panel))}."))
            : limit.Judge((code, subject), bow.Radius, TooSharp(job, last, fitting.Most(last.Corner)), How(job, bow));
    }

    /// <summary>The fields without which it is not known how much nearer the top's curve brings the edges that a bow brings nearer.</summary>
    private static ImmutableArray<string> MissingFor(PanelBow bow, EachPanel panel)
    {
        if (bow.IsForeAft)
        {
            return TopSurface.Of(panel.Job.Top).Missing;
        }

        var shaping = AthwartBend.Shaping(panel.Job.Top, panel.Mounted).ToList();
        return shaping.Count == 0
            ? ["top.bow"]
            : [.. shaping.Where(each => each.Bow.Halves is null).SelectMany(each => new[] { $"top.bow[{each.Index + 1}].chord", $"top.bow[{each.Index + 1}].crown" })];
    }

    private static string How(CarrierJob job, PanelBow bow) => bow.IsForeAft
        ? Say.Of($"Forward corners first; for the last one bow the panel until its forward and aft edge are {LengthText.Of(bow.Shortening, job.Units)} nearer and its middle stands about {LengthText.Of(bow.Rise, job.Units)} up.")
        : Say.Of($"Forward corners first; for the last one bow the panel until its port and starboard edge are {LengthText.Of(bow.Shortening, job.Units)} nearer and its middle stands about {LengthText.Of(bow.Rise, job.Units)} up.");

    private static string TooSharp(CarrierJob job, PocketPlace last, Length most)
    {
        var step = RulerSteps.Of(job.Units);
        var ease = RulerSteps.Up(job.Fastenings.Pocket.Ease + ((UnitMath.Max(last.Covers, PocketPlace.LeastCover) - most) / 2), step);
        return most >= PocketPlace.LeastCover
            ? Say.Of($"Slipping it in would bend the panel too sharply: shorten pocket.leg to {LengthText.Of(RulerSteps.Down(most + last.OutX + last.OutY, step), job.Units)} or less, or give more room with pocket.ease of {LengthText.Of(ease, job.Units)}.")
            : Say.Of($"Slipping it in would bend the panel too sharply, and a pocket small enough would hold nothing: give more room with pocket.ease, or choose a panel that bends further.");
    }
}
