using CanvasCut.Design;
using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>The fields of a measures file, as docs/measuring.md describes it.</summary>
internal static class MeasureFields
{
    public const string Bow = "bow";
    public const string Overall = "overall";
    public const string Top = "top";

    /// <summary>In files of this format heights are those of the ends; in newer ones of the tube's middle on the centreline, as in the job.</summary>
    public const int FormatOfEnds = 1;

    /// <summary>The newest format.</summary>
    public const int Format = 2;

    private const string FromPort = "diagonal_from_port";
    private const string FromStarboard = "diagonal_from_starboard";

    public static Field[] All { get; } =
    [
        new("format", Count, Any, Presence.Required),
        new("name", Text, Any, Presence.Required),
        new Field("tape", Length, Size("0.3 mm", "5 mm"), Presence.Optional).Or("1.5 mm", Say.Later("1/16 in, a tape's smallest division: chosen for this program")),
        new($"{Top}.length", LengthList, Size("0.3 m", "6 m"), Presence.Optional),
        new($"{Top}.width", LengthList, Size("0.3 m", "6 m"), Presence.Optional),
        new("bow[].name", Text, Any, Presence.Optional),
        new("bow[].station", LengthList, Reach("0 mm", "6 m"), Presence.Optional),
        new("bow[].height", Length, Signed("-3 m", "5 m"), Presence.Optional),
        new("bow[].diameter", Length, Reach("0 mm", "80 mm"), Presence.Optional),
        new("bow[].sag_aft", Length, Reach("0 mm", "200 mm"), Presence.Optional),
        .. Kinds.Where(kind => kind.Kind != MeasureKind.Station).Select(kind => new Field($"bow[].{kind.Name}", LengthList, kind.Range, Presence.Optional)),
        new($"{Overall}.{FromPort}", LengthList, Size("0.3 m", "6 m"), Presence.Optional),
        new($"{Overall}.{FromStarboard}", LengthList, Size("0.3 m", "6 m"), Presence.Optional),
    ];

    /// <summary>The measures of a bow by their names, in the order of the sheet.</summary>
    public static (MeasureKind Kind, string Name, FieldRange Range)[] Kinds =>
    [
        (MeasureKind.Chord, "chord", Size("0.3 m", "6 m")),
        (MeasureKind.Girth, "girth", Size("0.3 m", "6 m")),
        (MeasureKind.Crown, "crown", Reach("0 mm", "1 m")),
        (MeasureKind.Port, "port", Size("50 mm", "6 m")),
        (MeasureKind.Starboard, "starboard", Size("50 mm", "6 m")),
        (MeasureKind.DiagonalFromPort, FromPort, Size("0.3 m", "6 m")),
        (MeasureKind.DiagonalFromStarboard, FromStarboard, Size("0.3 m", "6 m")),
        (MeasureKind.Station, "station", Reach("0 mm", "6 m")),
    ];

    /// <summary>The measures of the whole top by their paths, with the bow they are kept under: the first, or for overall diagonals the last.</summary>
    public static (MeasureKind Kind, string Path, bool IsAtLast)[] Whole =>
    [
        (MeasureKind.OverallFromPort, $"{Overall}.{FromPort}", true),
        (MeasureKind.OverallFromStarboard, $"{Overall}.{FromStarboard}", true),
        (MeasureKind.TopLength, $"{Top}.length", false),
        (MeasureKind.TopWidth, $"{Top}.width", false),
    ];

    /// <summary>The names that may stand at the top of the file, or in one of its tables.</summary>
    public static IEnumerable<string> NamesIn(string table) => All
        .Select(field => field.Name.Replace("[]", string.Empty, StringComparison.Ordinal).Split('.'))
        .Where(parts => table.Length == 0 || (parts.Length == 2 && parts[0] == table))
        .Select(parts => parts[table.Length == 0 ? 0 : 1])
        .Distinct();
}
