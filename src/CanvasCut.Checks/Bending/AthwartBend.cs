using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Checks;

/// <summary>Holds the arc of the top across against the smallest radius the panel may be bent to.</summary>
internal static class AthwartBend
{
    /// <summary>At so many stations and offsets each the radius is taken under the panel, its edges included.</summary>
    public const int Stations = 13;

    private const int Offsets = 9;
    private static string TooSharp => Say.Of("Too sharp for this panel: turn it, move it to a flatter bow, or choose a panel that bends further.");

    /// <summary>One result a bow that shapes the panel, and one for the panel from its forward to its aft edge.</summary>
    public static IEnumerable<CheckResult> Check(CarrierJob job, MountedShape mounted, TopSurface? surface)
    {
        if (!PanelBends.MayAcross(job, mounted.Panel.LongSide))
        {
            var side = job.Panel.Limits.Bends == BendAxis.Length ? Say.Of("length") : Say.Of("width");
            yield return new(
                CheckCodes.BendAthwart,
                Say.Of("panel's bend across the boat"),
                Verdict.Fail,
                Measured.Nothing,
                "panel.bends",
                Say.Of($"The maker allows only its {side} to be curved, and the top curves the other side: turn the panel."));
        }

        var shaping = Shaping(job.Top, mounted).ToList();
        if (shaping.Count == 0)
        {
            yield return Missing(Say.Of("arc across"), Say.Of("No bow is given, so the arc is not known: add [[top.bow]] with chord and crown."));
        }

        foreach (var (index, bow) in shaping)
        {
            var result = bow.Across is not null
                ? BendLimit.Of(job).Judge((CheckCodes.BendAthwart, Say.Of($"arc across at bow {index + 1}")), BendLimit.RadiusOf(SharperHalfMm(bow)), TooSharp)
                : Missing(Say.Of($"arc across at bow {index + 1}"), Say.Of($"Give chord and crown (or girth) of bow {index + 1}."));
            yield return result.On(PartKey.Bow(index + 1));
        }

        if (surface is not null)
        {
            yield return UnderPanel(job, mounted, surface);
        }
    }

    /// <summary>The smallest radius on a net of places under the panel; unequal halves and tilted bows show in it.</summary>
    private static CheckResult UnderPanel(CarrierJob job, MountedShape mounted, TopSurface surface)
    {
        var sharpest = PanelNet.Places(mounted, Stations, Offsets)
            .Select(place => (Place: place, Radius: surface.ArcRadiusAt(place)))
            .MinBy(each => each.Radius?.Millimeters ?? double.PositiveInfinity);
        return BendLimit.Of(job).Judge(
            (CheckCodes.BendAthwart, Say.Of($"arc across under the panel, {Stations} stations")),
            sharpest.Radius,
            TooSharp,
            sharpest.Radius is null ? string.Empty : Say.Of($"Sharpest at station {LengthText.Of(sharpest.Place.Station, job.Units)}."));
    }

    private static CheckResult Missing(string subject, string advice) =>
        new(CheckCodes.BendAthwart, subject, Verdict.NotChecked, Measured.Nothing, BendLimit.Source, advice);

    /// <summary>The bows under the panel, and the nearest forward and aft of it.</summary>
    public static IEnumerable<(int Index, Bow Bow)> Shaping(TopCloth top, MountedShape mounted)
    {
        var (from, to) = (-mounted.PanelBox.Top, -mounted.PanelBox.Bottom);
        var all = top.Bows.Index().ToList();
        var before = all.LastOrDefault(each => each.Item.Station.Millimeters < from, (-1, null!));
        var after = all.FirstOrDefault(each => each.Item.Station.Millimeters > to, (-1, null!));
        return all.Where(each => each == before || each == after || (each.Item.Station.Millimeters >= from && each.Item.Station.Millimeters <= to));
    }

    private static double SharperHalfMm(Bow bow) => Math.Min(bow.Halves!.Port.RadiusMm, bow.Halves.Starboard.RadiusMm);
}
