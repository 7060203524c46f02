using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>What holds the carrier's edges in the place of zippers.</summary>
internal static class MountFields
{
    /// <summary>The tables of the kinds that are set at a pitch.</summary>
    public static readonly string[] Pitched = ["snaps", "twist", "lacing"];

    private const string Zipper = "zipper";
    private const string None = "none";
    private static readonly string[] Edges = ["forward", "aft", "port", "starboard"];

    /// <summary>The kinds but the zipper, as they are written, with the table of each and the tape it needs.</summary>
    private static readonly (string Word, string Table, string Tape)[] Kinds =
    [
        ("snaps", "mount.snaps", string.Empty),
        ("twist", "mount.twist", string.Empty),
        ("hook-and-loop", "mount.hook_and_loop", "tapes.hook_and_loop"),
        ("lacing", "mount.lacing", "tapes.lacing"),
        ("sleeve", "mount.sleeve", string.Empty),
    ];

    public static Field[] All { get; } =
    [
        Edge("forward"),
        Edge("aft"),
        SideEdge("port"),
        SideEdge("starboard"),
        new Field("mount.setback", Length, Reach("0 mm", "300 mm"), Presence.Optional).Or("1 in", Source.Practice),
        .. Fasteners("snaps", ("1 in", "4 in", "4 in", "15 mm"), Say.Later("4 to 6 in: from memory")),
        .. Fasteners("twist", ("1 1/2 in", "8 in", "4 1/2 in", "20 mm"), Say.Later("6 to 10 in: from memory")),
        .. Fasteners("lacing", ("1 in", "4 in", "6 in", "16 mm"), Say.Later("closer than the 12 to 16 in of good tarpaulins (a forum, single source), for the cloth puckers between them; common practice, no source")),
        new Field("mount.lacing.gap", Length, Reach("0 mm", "150 mm"), Presence.Optional).Or("1 in", Source.Practice),
        new Field("mount.hook_and_loop.width", Length, Size("20 mm", "150 mm"), Presence.Optional).Or("1 1/2 in", Source.Practice),
        new Field("mount.hook_and_loop.peel", Force, Size("0.2 lbf", "20 lbf"), Presence.Optional).Or("1 lbf", Say.Later("about 1 lbf an inch of width in peel: from memory")),
        .. Sleeve,
    ];

    /// <summary>Whether a default is worth telling: those of fastenings only when the job has them, and never that a side has none.</summary>
    public static bool Concerns(string field, JobValues values)
    {
        if (field is "mount.port" or "mount.starboard")
        {
            return false;
        }

        if (field.StartsWith("zipper.", StringComparison.Ordinal))
        {
            return IsUsed("zipper", values);
        }

        if ((field, CarrierFields.Held(values)) is ("mount.snaps.diameter", "snaps") or ("tapes.hook_and_loop", "hook-and-loop"))
        {
            return true;
        }

        var kind = Kinds.FirstOrDefault(each => field == each.Tape || field.StartsWith(each.Table + ".", StringComparison.Ordinal));
        return kind.Word is not null
            ? IsUsed(kind.Word, values)
            : !field.StartsWith("mount.", StringComparison.Ordinal) || Kinds.Any(each => IsUsed(each.Word, values));
    }

    /// <summary>Whether an edge is held so.</summary>
    public static bool IsUsed(string word, JobValues values) => IsUsedAtEnds(word, values) || IsUsedAtSides(word, values);

    /// <summary>Whether the forward or the aft edge is held so.</summary>
    public static bool IsUsedAtEnds(string word, JobValues values) => Edges[..2].Any(edge => values.Text($"mount.{edge}") == word);

    /// <summary>Whether the port or the starboard edge is held so.</summary>
    public static bool IsUsedAtSides(string word, JobValues values) => Edges[2..].Any(edge => values.Text($"mount.{edge}") == word);

    private static Field SideEdge(string side) =>
        new Field($"mount.{side}", Word, Any, Presence.Optional).Among([None, Zipper, .. Kinds.Select(kind => kind.Word)]).Or(None, Source.Practice);

    private static Field[] Sleeve =>
    [
        new Field("mount.sleeve.rod", Length, Size("4 mm", "25 mm"), Presence.Optional).Or("3/8 in", Source.Practice),
        new Field("mount.sleeve.ease", Length, Size("8 mm", "50 mm"), Presence.Optional).Or("1/2 in", Source.Practice),
        new Field("mount.sleeve.segment", Length, Size("50 mm", "0.3 m"), Presence.Optional).Or("4 in", Source.Practice),
        new Field("mount.sleeve.gap", Length, Size("2 mm", "15 mm"), Presence.Optional).Or("1/4 in", Source.Practice),
        new("mount.sleeve.bend_radius", Length, Size("50 mm", "50 m"), Presence.Optional),
    ];

    private static Field Edge(string side) =>
        new Field($"mount.{side}", Word, Any, Presence.Optional).Among([Zipper, .. Kinds.Select(kind => kind.Word)]).Or(Zipper, Source.Practice);

    private static Field[] Fasteners(string kind, (string Width, string Pitch, string End, string Diameter) size, string pitchSource) =>
    [
        new Field($"mount.{kind}.width", Length, Size("15 mm", "150 mm"), Presence.Optional).Or(size.Width, Source.Practice),
        new Field($"mount.{kind}.pitch", Length, Size("25 mm", "0.6 m"), Presence.Optional).Or(size.Pitch, pitchSource),
        new Field($"mount.{kind}.end_distance", Length, Reach("5 mm", "300 mm"), Presence.Optional).Or(size.End, Source.Practice),
        new Field($"mount.{kind}.diameter", Length, Size("6 mm", "50 mm"), Presence.Optional).Or(size.Diameter, Say.Later("nominal, from memory; measure yours")),
        new($"mount.{kind}.strength", Force, Size("5 N", "2000 N"), Presence.Optional),
    ];
}
