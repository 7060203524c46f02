using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether what is sewn will take the later, larger panel that <c>carrier.keep_room</c> asks for.</summary>
internal static class RoomChecks
{
    /// <summary>How large a later panel may be each way when it is as large as asked the other way; nothing when none is asked for.</summary>
    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted)
    {
        var (kept, way) = (job.Carrier.Room.Kept, mounted.Panel.LongSide);
        var asked = (
            Athwart: mounted.Panel.Athwart + kept.Port + kept.Starboard,
            ForeAft: mounted.Panel.ForeAft + kept.Forward + kept.Aft);
        if (asked.Athwart <= mounted.Panel.Athwart && asked.ForeAft <= mounted.Panel.ForeAft)
        {
            return [];
        }

        if (job.Row is not null)
        {
            return [new(CheckCodes.KeepRoom, Say.Of("a later panel"), Verdict.NotChecked, Measured.Nothing, "carrier.keep_room", Say.Of("Only for carriers with one panel: of a row it is not worked out how much larger each of its panels may become."))];
        }

        if (!mounted.Fastened.HasEndZippersOnly)
        {
            return [new(CheckCodes.KeepRoom, Say.Of("a later panel"), Verdict.NotChecked, Measured.Nothing, "carrier.keep_room", Say.Of("Only for carriers on zippers at both edges: the flaps of other fastenings are made anew with the carrier."))];
        }

        var range = new RefitWay(SewnHalf.Of(job, mounted), job, way).Range;
        var (length, width) = way == LongSide.Athwart ? (asked.Athwart, asked.ForeAft) : (asked.ForeAft, asked.Athwart);
        return
        [
            Room(Say.Of("length"), LargestLength(range, width), length, job.Units),
            Room(Say.Of("width"), LargestWidth(range, length), width, job.Units),
        ];
    }

    private static Length LargestLength(PanelRange range, Length width) =>
        range.Limits.Aggregate(range.Length.To, (largest, limit) => UnitMath.Min(largest, (limit.Most - (width * limit.Widths)) / limit.Lengths));

    private static Length LargestWidth(PanelRange range, Length length) =>
        range.Limits.Aggregate(range.Width.To, (largest, limit) => UnitMath.Min(largest, (limit.Most - (length * limit.Lengths)) / limit.Widths));

    private static CheckResult Room(string side, Length largest, Length asked, PrintUnits units) => CheckResult.Judged(
        (CheckCodes.KeepRoom, Say.Of($"a later panel's {side}")),
        Measured.AtLeast(largest, asked),
        Verdict.Caution,
        "carrier.keep_room",
        Say.Of($"Of so large a panel a pocket or strip would cover cells; at {LimitWords.Most(largest, units)} it does not. Shorten pocket.leg or weather_strip.overlap, or leave pocket.leg out."));
}
