using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Checks;

/// <summary>Holds the panel's bend along the boat, over the tubes and between them, against its limit.</summary>
internal static class AlongBend
{
    private static string TooSharp => Say.Of("Too sharp for this panel: move it off the ridge, turn it, ease the tube with a wedge of foam on both sides, or choose a panel that bends further.");

    /// <summary>One result for each tube under the panel, and one for the sharpest place.</summary>
    public static IEnumerable<CheckResult> Check(CarrierJob job, MountedShape mounted, ImmutableArray<PanelProfile> profiles)
    {
        var limit = LimitFor(job, mounted);
        foreach (var tubes in profiles.SelectMany(profile => profile.Tubes).GroupBy(tube => tube.Bow))
        {
            var sharpest = tubes.OrderBy(tube => tube.Radius?.Millimeters ?? double.PositiveInfinity).ThenByDescending(tube => tube.StandsOff.Millimeters).First();
            yield return limit.Judge((CheckCodes.BendAlong, Say.Of($"bend along over bow {sharpest.Bow + 1}")), sharpest.Radius, TooSharp, Note(job, sharpest));
        }

        var (profile, place) = profiles.Select(each => (Profile: each, Place: each.Strip.Sharpest)).MinBy(each => each.Place.RadiusMm);
        var isOnTube = profile.Tubes.Any(tube => tube.IsTouched && Math.Abs(tube.At.Millimeters - place.AtMm) < 1e-6);
        if (!isOnTube)
        {
            yield return limit.Judge(
                (CheckCodes.BendAlong, Say.Of("sharpest bend along between the tubes")),
                BendLimit.RadiusOf(place.RadiusMm),
                Say.Of($"It hangs too far between what carries it: add a bow or a strip of foam under it, or tighten the top."),
                double.IsInfinity(place.RadiusMm) ? string.Empty : Say.Of($"It lies {LengthText.Of(UnitsNet.Length.FromMillimeters(place.AtMm), job.Units)} aft of the panel's forward edge."));
        }
    }

    /// <summary>What to say when the shape is not known.</summary>
    public static CheckResult Unknown(string code, string subject, SurfaceFinding finding) =>
        new(code, subject, Verdict.NotChecked, Measured.Nothing, Say.Of("the shape of the top"), Say.Of($"The shape of the top is not known: give {string.Join(", ", finding.Missing)}."));

    private static BendLimit LimitFor(CarrierJob job, MountedShape mounted)
    {
        var limit = BendLimit.Of(job);
        return PanelBends.MayAlong(job, mounted.Panel.LongSide)
            ? limit
            : limit with { Needed = UnitsNet.UnitMath.Max(limit.Needed, BendLimit.StraightRadius) };
    }

    private static string Note(CarrierJob job, TubeUnder tube) =>
        tube.IsWrapped ? Say.Of("It lies round the tube.")
        : tube.IsTouched ? string.Empty
        : Say.Of($"It does not touch this tube but stands {LengthText.Of(tube.StandsOff, job.Units)} off.");
}
