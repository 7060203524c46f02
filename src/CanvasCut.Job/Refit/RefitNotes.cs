using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>What the new job asks for that is sewn otherwise, and what the sewist should know.</summary>
internal static class RefitNotes
{
    private const double SameMm = 1e-3;

    public static ImmutableArray<string> Of(SewnHalf sewn, CarrierJob job) =>
    [
        .. Overruled(sewn, job),
        .. Thicker(sewn, job),
        Say.Of("The carrier's zipper halves must mate with those on the top: unpick them from the old carrier, or buy the same make, size and slider and use one half of each."),
        Say.Of("The panel is bonded to its carrier and does not come off whole; a new panel wants a carrier of its own."),
    ];

    private static IEnumerable<string> Overruled(SewnHalf sewn, CarrierJob job)
    {
        foreach (var (field, wanted, there) in Measures(sewn, job))
        {
            if (job.Defaults.All(used => used.Field != field) && Math.Abs((wanted - there).Millimeters) > SameMm)
            {
                yield return Say.Of($"{field}: the new job says {LengthText.Of(wanted, job.Units)}, but {LengthText.Of(there, job.Units)} is sewn and counts.");
            }
        }

        var (new_, old) = (job.Fastenings, sewn.Fastenings);
        if (new_.Zipper.Kind != old.Zipper.Kind && job.Defaults.All(used => used.Field != "zipper.kind"))
        {
            yield return Say.Of($"zipper.kind: the new job says {Word(new_.Zipper.Kind)}, but {Word(old.Zipper.Kind)} zippers are sewn and count.");
        }

        if (!job.Fastenings.Mount.IsZippersAtBothEnds)
        {
            yield return Say.Of("mount: the new job asks for another fastening, but zippers are sewn at both edges and count.");
        }

        if (job.Carrier.Position is { } place && (Differs(place.Station, sewn.Carrier.Middle.Station) || Differs(place.Offset, sewn.Carrier.Middle.Offset)))
        {
            yield return Say.Of($"carrier.position: the carrier's middle lies where it lay, at station {LengthText.Of(sewn.Carrier.Middle.Station, job.Units)} and offset {LengthText.Of(sewn.Carrier.Middle.Offset, job.Units)}.");
        }
    }

    private static IEnumerable<(string Field, Length Wanted, Length There)> Measures(SewnHalf sewn, CarrierJob job)
    {
        var (wanted, there) = (job.Fastenings, sewn.Fastenings);
        yield return ("zipper.chain", wanted.Zipper.Gauge.Chain, there.Zipper.Gauge.Chain);
        yield return ("zipper.overall_width", wanted.Zipper.Gauge.OverallWidth, there.Zipper.Gauge.OverallWidth);
        yield return ("zipper.setback", wanted.Zipper.Setback, sewn.Zipper.Setback);
        yield return ("zipper.reveal", wanted.Zipper.Reveal, there.Zipper.Reveal);
        yield return ("pocket.leg", wanted.Pocket.Leg ?? sewn.Legs[0], sewn.Legs[0]);
        yield return ("pocket.ease", IsLeftOut(job) ? there.Pocket.Ease : wanted.Pocket.Ease, there.Pocket.Ease);
        yield return ("weather_strip.overlap", wanted.WeatherStrip.Overlap, there.WeatherStrip.Overlap);
    }

    private static IEnumerable<string> Thicker(SewnHalf sewn, CarrierJob job)
    {
        var (now, before) = (job.Panel.Body.Thickness, sewn.Carrier.Panel.Thickness);
        if ((now - before).Millimeters > SameMm)
        {
            yield return Say.Of($"The panel is thicker than the old one, {LengthText.Of(now, job.Units)} instead of {LengthText.Of(before, job.Units)}: try a corner in its pocket before you bond.");
        }
    }

    /// <summary>The ease that is worked out when none is given is no wish.</summary>
    private static bool IsLeftOut(CarrierJob job) => !Differs(job.Fastenings.Pocket.Ease, PocketRoom.EaseFor(job));

    private static bool Differs(Length one, Length other) => Math.Abs((one - other).Millimeters) > SameMm;

    private static string Word(ZipperKind kind) => kind == ZipperKind.Separating ? "separating" : "continuous";
}
