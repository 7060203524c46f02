using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>How the work is planned, and what the care of the finished job depends on.</summary>
internal static class WorkFields
{
    public static Field[] All { get; } =
    [
        new Field("work.hours_per_day", Duration, Positive, Presence.Optional).Or("4 h", Source.Chosen),
        new Field("work.cure", Duration, Size("24 h", "168 h"), Presence.Optional)
            .Or("72 h", Say.Later("a tape maker's guide to acrylic foam tapes; 24 h to 7 days elsewhere, ask yours")),
        new Field("work.order", Word, Any, Presence.Optional).Among("bond-first", "sew-first").Or("bond-first", Source.Chosen),

        new("care.fitted", Date, Any, Presence.Optional),
        new("care.thread_life_months", Count, Size("6", "240"), Presence.Optional),
        new Field("care.hook_and_loop", Flag, Any, Presence.Optional).Or("false", Source.NoneAssumed),
    ];
}
