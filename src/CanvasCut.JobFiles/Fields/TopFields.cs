using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>The head of the file and the top.</summary>
internal static class TopFields
{
    /// <summary>The head of the file.</summary>
    public static Field[] Head { get; } =
    [
        new("format", Count, Any, Presence.Required),
        new("name", Text, Any, Presence.Required),
        new Field("prints", Word, Any, Presence.Optional).Among("metric", "imperial", "both").Or("both", Source.Chosen),
        new("accept_unusual", NameList, Any, Presence.Optional),
        new("copies", Count, Any, Presence.Optional),
        new("materials", Text, Any, Presence.Optional),
        new("prices", Text, Any, Presence.Optional),
    ];

    /// <summary>The top alone.</summary>
    public static Field[] Top { get; } =
    [
        new("top.length", Length, Size("0.3 m", "6 m"), Presence.Required),
        new Field("top.width", Length, Size("0.3 m", "6 m"), Presence.Required).UnlessGivenBy("top.width_at"),
        new Field("top.edge_margin", Length, Reach("0 mm", "300 mm"), Presence.Optional).Or("25 mm", Source.Practice),
        new Field("top.corner_radius", Length, Reach("0 mm", "600 mm"), Presence.Optional).Or("0 mm", Source.NoneAssumed),

        new("top.width_at[].station", Length, Reach("0 mm", "6 m"), Presence.RequiredInTable),
        new("top.width_at[].width", Length, Size("0.3 m", "6 m"), Presence.Optional),
        new("top.width_at[].port", Length, Size("0.15 m", "3 m"), Presence.Optional),
        new("top.width_at[].starboard", Length, Size("0.15 m", "3 m"), Presence.Optional),
        new("top.width_at[].hollow_aft", Length, Signed("-300 mm", "300 mm"), Presence.Optional),
        .. new[] { "forward_edge", "aft_edge" }.SelectMany(edge => new Field[]
        {
            new($"top.{edge}.port", Length, Signed("-600 mm", "600 mm"), Presence.Optional),
            new($"top.{edge}.starboard", Length, Signed("-600 mm", "600 mm"), Presence.Optional),
            new Field($"top.{edge}.form", Word, Any, Presence.Optional).Among("straight", "round"),
        }),
        .. new[] { "rounded", "cut" }.SelectMany(form => SideNames.Corners.Select(corner => new Field($"top.corners.{form}.{corner}", Length, Reach("0 mm", "1 m"), Presence.Optional))),

        new("top.bow[].station", Length, Reach("0 mm", "6 m"), Presence.RequiredInTable),
        new Field("top.bow[].diameter", Length, Size("10 mm", "80 mm"), Presence.Optional).Or("1 in", Say.Later("usually 7/8 in or 1 in tube: common practice")),
        new("top.bow[].girth", Length, Size("0.3 m", "6 m"), Presence.Optional),
        new("top.bow[].chord", Length, Size("0.3 m", "6 m"), Presence.Optional),
        new("top.bow[].crown", Length, Reach("0 mm", "1 m"), Presence.Optional),
        new("top.bow[].girth_port", Length, Size("0.15 m", "3 m"), Presence.Optional),
        new("top.bow[].girth_starboard", Length, Size("0.15 m", "3 m"), Presence.Optional),
        new("top.bow[].crown_port", Length, Reach("0 mm", "1 m"), Presence.Optional),
        new("top.bow[].crown_starboard", Length, Reach("0 mm", "1 m"), Presence.Optional),
        new("top.bow[].height", Length, Signed("-3 m", "5 m"), Presence.Optional),
        new("top.bow[].sag_aft", Length, Reach("0 mm", "200 mm"), Presence.Optional),

        new("top.tube[].name", Text, Any, Presence.RequiredInTable),
        new("top.tube[].station", LengthPair, Signed("-1 m", "7 m"), Presence.Optional),
        new("top.tube[].offset", LengthPair, Signed("-4 m", "4 m"), Presence.Optional),
        new Field("top.tube[].diameter", Length, Size("6 mm", "80 mm"), Presence.Optional).Or("1 in", Say.Later("usually 7/8 in or 1 in tube: common practice")),

        new("top.keep_out[].name", Text, Any, Presence.RequiredInTable),
        new("top.keep_out[].station", LengthPair, Signed("-2 m", "8 m"), Presence.RequiredInTable),
        new("top.keep_out[].offset", LengthPair, Signed("-5 m", "5 m"), Presence.RequiredInTable),
        new Field("top.keep_out[].clearance", Length, Reach("0 mm", "500 mm"), Presence.Optional)
            .Or("2 in", Say.Later("bimini fitting instructions: 2 in from boom, sheet and backstay")),

        new("top.fixed[].name", Text, Any, Presence.RequiredInTable),
        new Field("top.fixed[].kind", Word, Any, Presence.RequiredInTable).Among("seam", "window", "zipper", "strap", "patch"),
        new("top.fixed[].station", LengthList, Signed("-2 m", "8 m"), Presence.RequiredInTable),
        new("top.fixed[].offset", LengthList, Signed("-5 m", "5 m"), Presence.RequiredInTable),
        new("top.fixed[].width", Length, Reach("0 mm", "500 mm"), Presence.Optional),
        new Field("top.fixed[].forbids", WordList, Any, Presence.Optional).Among("everything", "stitches", "hard-edges", "cells"),
        new Field("top.fixed[].clearance", Length, Reach("0 mm", "300 mm"), Presence.Optional).Or("10 mm", Source.RuleOfThumb),

        new("top.boom.pivot", Length, Signed("-6 m", "6 m"), Presence.RequiredInTable),
        new("top.boom.end", Length, Signed("-2 m", "10 m"), Presence.RequiredInTable),
        new("top.boom.swing", Angle, Size("1 deg", "90 deg"), Presence.RequiredInTable),
        new("top.boom.clearance", Length, Reach("0 mm", "500 mm"), Presence.RequiredInTable),
        new("top.boom.height", Length, Size("20 mm", "3 m"), Presence.Optional),
    ];

    /// <summary>All of them.</summary>
    public static Field[] All { get; } = [.. Head, .. Top];
}
