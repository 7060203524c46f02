using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Holds the panel's bend along the boat, over the tubes and between them, against its limit.</summary>
internal static class AlongBend
{
    private static string OnlyAssumed => Say.Of("On the cloth as it was measured it would hold; measure the sag between the bows and give it as sag_aft.");

    private static string TooSharp => Say.Of("Too sharp for this panel: move it off the ridge, turn it, ease the tube with a wedge of foam on both sides, or choose a panel that bends further.");

    /// <summary>One result for each tube under the panel, and one for the sharpest place.</summary>
    /// <param name="job">The job.</param>
    /// <param name="mounted">What is mounted.</param>
    /// <param name="on">The panel on the cloth as slack as it may be, which is judged, and on the cloth as it was measured.</param>
    public static IEnumerable<CheckResult> Check(CarrierJob job, MountedShape mounted, (ImmutableArray<PanelProfile> Slack, ImmutableArray<PanelProfile> Measured) on)
    {
        var limit = LimitFor(job, mounted);
        CheckResult Judge(string subject, Length? slack, Length? measured, string tooSharp, string note)
        {
            var result = limit.Judge((CheckCodes.BendAlong, subject), slack, tooSharp, note);
            var holds = measured is not { } radius || radius >= limit.Needed;

            // What was only assumed can fail no panel.
            return result.Verdict == Verdict.Fail && holds ? result with { Verdict = Verdict.Caution, Advice = $"{OnlyAssumed} {result.Advice}" } : result;
        }

        foreach (var tubes in on.Slack.SelectMany(profile => profile.Tubes).GroupBy(tube => tube.Bow))
        {
            var sharpest = SharpestOf(tubes);
            var measured = on.Measured.SelectMany(profile => profile.Tubes).Where(tube => tube.Bow == tubes.Key).ToList();
            yield return Judge(Say.Of($"bend along over bow {sharpest.Bow + 1}"), sharpest.Radius, measured.Count > 0 ? SharpestOf(measured).Radius : null, TooSharp, Note(job, sharpest))
                .On(PartKey.Bow(sharpest.Bow + 1), new PartKeys(job).Panel);
        }

        var place = SharpestPlace(on.Slack);
        if (!place.IsOnTube)
        {
            yield return Judge(
                Say.Of("sharpest bend along between the tubes"),
                BendLimit.RadiusOf(place.RadiusMm),
                BendLimit.RadiusOf(SharpestPlace(on.Measured).RadiusMm),
                Say.Of($"It hangs too far between what carries it: add a bow or a strip of foam under it, or tighten the top."),
                double.IsInfinity(place.RadiusMm) ? string.Empty : Say.Of($"It lies {LengthText.Of(Length.FromMillimeters(place.AtMm), job.Units)} aft of the panel's forward edge."));
        }
    }

    private static TubeUnder SharpestOf(IEnumerable<TubeUnder> tubes) =>
        tubes.OrderBy(tube => tube.Radius?.Millimeters ?? double.PositiveInfinity).ThenByDescending(tube => tube.StandsOff.Millimeters).First();

    /// <summary>The smallest radius along that is found anywhere, on a tube or between them; null when it is straight.</summary>
    public static Length? Sharpest(ImmutableArray<PanelProfile> profiles)
    {
        var place = SharpestPlace(profiles);
        var onTubes = profiles.SelectMany(profile => profile.Tubes).Select(tube => tube.Radius?.Millimeters ?? double.PositiveInfinity);
        return BendLimit.RadiusOf(onTubes.Append(place.IsOnTube ? double.PositiveInfinity : place.RadiusMm).Min());
    }

    /// <summary>The sharpest place of the strip, which takes no notice of a tube that the panel lies round.</summary>
    private static (double RadiusMm, double AtMm, bool IsOnTube) SharpestPlace(ImmutableArray<PanelProfile> profiles)
    {
        var (profile, place) = profiles.Select(each => (Profile: each, Place: each.Strip.Sharpest)).MinBy(each => each.Place.RadiusMm);
        return (place.RadiusMm, place.AtMm, profile.Tubes.Any(tube => tube.IsTouched && Math.Abs(tube.At.Millimeters - place.AtMm) < 1e-6));
    }

    /// <summary>What to say when the shape is not known.</summary>
    public static CheckResult Unknown(string code, string subject, SurfaceFinding finding) =>
        new(code, subject, Verdict.NotChecked, Measured.Nothing, Say.Of("the shape of the top"), Say.Of($"The shape of the top is not known: give {string.Join(", ", finding.Missing)}."));

    private static BendLimit LimitFor(CarrierJob job, MountedShape mounted)
    {
        var limit = BendLimit.Of(job);
        return PanelBends.MayAlong(job, mounted.Panel.LongSide)
            ? limit
            : limit with { Needed = UnitMath.Max(limit.Needed, BendLimit.StraightRadius) };
    }

    private static string Note(CarrierJob job, TubeUnder tube) =>
        tube.IsWrapped ? Say.Of("It lies round the tube.")
        : tube.IsTouched ? string.Empty
        : Say.Of($"It does not touch this tube but stands {LengthText.Of(tube.StandsOff, job.Units)} off.");
}
