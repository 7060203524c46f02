using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>The fields of a grade, kind by kind, in the order of docs/ordering.md.</summary>
internal static class MaterialFields
{
    private static readonly Field[] Named =
    [
        new("name", Text, Any, Presence.Required),
        new("source", Text, Any, Presence.Required),
        new Field("confidence", Word, Any, Presence.Required).Among("published", "single source", "common practice", "from memory", "yours"),
    ];

    private static readonly Field[] Sold =
    [
        new("step", Length, Size("1 mm", "100 m"), Presence.Optional),
        new("roll", Length, Size("1 m", "1000 m"), Presence.Optional),
    ];

    private static readonly Field[] Packed = [.. Named, new("pack", Count, Size("1", "100"), Presence.Required)];

    public static IReadOnlyDictionary<string, Field[]> OfKind { get; } = new Dictionary<string, Field[]>(StringComparer.Ordinal)
    {
        ["cloth"] =
        [
            .. Named,
            Thickness,
            new("roll_width", Length, Size("0.5 m", "4 m"), Presence.Required),
            new("smooth", Flag, Any, Presence.Required),
            new("stretch", Percent, Size("0.1 %", "9 %"), Presence.Optional),
        ],
        ["thread"] =
        [
            .. Named,
            new("needle", Text, Any, Presence.Required),
            new("spool", Length, Size("5 m", "2500 m"), Presence.Optional),
            new("life_months", Count, Size("6", "240"), Presence.Optional),
        ],
        ["zipper"] =
        [
            .. Named,
            new("chain", Length, Size("3 mm", "25 mm"), Presence.Required),
            new("overall_width", Length, Size("15 mm", "80 mm"), Presence.Required),
            new("tape_thickness", Length, Size("0.1 mm", "3 mm"), Presence.Required),
            .. Sold,
        ],
        ["tape"] =
        [
            .. Named,
            new Field("use", Word, Any, Presence.Required).Among("basting", "binding", "foam", "webbing", "hook-and-loop", "lacing"),
            new("width", Length, Size("2 mm", "100 mm"), Presence.Required),
            Thickness,
            .. Sold,
        ],
        ["needle"] = Packed,
        ["notion"] = Packed,
    };

    private static Field Thickness => new("thickness", Length, Size("0.05 mm", "5 mm"), Presence.Required);
}
