using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>Cloth, sewing, paper, plotter and the limits of the checks.</summary>
internal static class WorkshopFields
{
    private static readonly string TestYours = Say.Later("no standard figure; acrylic taken off wet can shrink: test yours");

    public static Field[] All { get; } =
    [
        new Field("cloth.grade", Text, Any, Presence.Optional).Or("marine-acrylic", Source.Practice),
        new Field("cloth.name", Text, Any, Presence.Optional).Or("marine acrylic canvas, about 300 g/m2", Source.Practice),
        new Field("cloth.roll_width", Length, Size("0.5 m", "4 m"), Presence.Optional).Or("60 in", Say.Later("from memory; ask the shop")),
        new Field("cloth.widths", LengthList, Size("0.5 m", "4 m"), Presence.Optional).Or("46 in, 60 in", Say.Later("from memory; ask the shop")),
        new Field("cloth.selvage", Length, Reach("0 mm", "60 mm"), Presence.Optional).Or("1/2 in", Source.Practice),
        new Field("cloth.order_step", Length, Size("1 mm", "5 m"), Presence.Optional).Or("0.1 m", Source.Practice).OrImperial("1/4 yd"),
        new Field("cloth.spare", Share, Reach("0 %", "25 %"), Presence.Optional).Or("5 %", Say.Later("5 to 10 %: common practice, no source")),
        new Field("cloth.warp", Word, Any, Presence.Optional).Among("fore-aft", "athwart")
            .Or("fore-aft", Say.Later("Marine Fabricator, \"Tips for better fitting tops\", 2013")),
        new Field("cloth.turns", Word, Any, Presence.Optional).Among("none", "half", "quarter").Or("half", Source.Practice),
        new Field("cloth.gap", Length, Reach("0 mm", "100 mm"), Presence.Optional).Or("5 mm", Source.Practice),
        new Field("cloth.shrink.warp", Percent, Reach("0 %", "5 %"), Presence.Optional).Or("0 %", TestYours),
        new Field("cloth.shrink.fill", Percent, Reach("0 %", "5 %"), Presence.Optional).Or("0 %", TestYours),
        new Field("cloth.one_way", Flag, Any, Presence.Optional).Or("false", Source.NoneAssumed),
        new Field("cloth.join", Word, Any, Presence.Optional).Among("full", "semi").Or("full", Source.Practice),

        new Field("sewing.stitch_length", Length, Size("1.5 mm", "10 mm"), Presence.Optional).Or("4.5 mm", Say.Later("5 to 7 an inch: US Army TM 10-8340")),
        new Field("sewing.thread_grade", Text, Any, Presence.Optional).Or("v92", Source.Practice),
        new Field("sewing.thread", Text, Any, Presence.Optional).Or("bonded UV polyester V92 (Tex 90)", Source.Practice),
        new Field("sewing.rows", Count, Size("1", "4"), Presence.Optional).Or("2", Source.Practice),

        .. new[] { "basting-6", "binding-25", "foam-25", "webbing-25" }.Select(id =>
            new Field($"tapes.{id.Split('-')[0]}", Text, Any, Presence.Optional).Or(id, Source.Practice)),
        new Field("tapes.hook_and_loop", Text, Any, Presence.Optional).Or("hook-loop-25", Source.Practice),
        new Field("tapes.lacing", Text, Any, Presence.Optional).Or("lacing-4", Source.Practice),

        new Field("paper.size", Paper, Any, Presence.Optional).Or("A4", Source.Chosen).OrImperial("Letter"),
        new Field("paper.margin", Length, Reach("0 mm", "40 mm"), Presence.Optional).Or("10 mm", Say.Later("office printers leave 1/4 in: common practice")),
        new Field("paper.overlap", Length, Reach("0 mm", "60 mm"), Presence.Optional).Or("10 mm", Source.Practice),
        new Field("paper.read_x", Length, Any, Presence.Optional),
        new Field("paper.read_y", Length, Any, Presence.Optional),

        new Field("dxf.units", Word, Any, Presence.Optional).Among("mm", "in").Or("mm", Source.Chosen),
        new Field("dxf.arcs", Flag, Any, Presence.Optional).Or("false", Source.Chosen),
        new Field("dxf.one_file_per_piece", Flag, Any, Presence.Optional).Or("false", Source.Chosen),
        new Field("plot.roll_width", Length, Size("0.3 m", "2 m"), Presence.Optional),
        new Field("plot.single_stroke", Flag, Any, Presence.Optional).Or("false", Source.Chosen),

        new Field("limits.bend_factor", Factor, Size("1", "5"), Presence.Optional).Or("1.5", Source.RuleOfThumb),
        new Field("limits.between_carriers", Length, Reach("0 mm", "500 mm"), Presence.Optional).Or("50 mm", Source.Practice),
        new Field("limits.between_pockets", Length, Reach("0 mm", "200 mm"), Presence.Optional).Or("15 mm", Source.Practice),
        new Field("limits.between_pulls", Length, Reach("0 mm", "200 mm"), Presence.Optional).Or("50 mm", Source.Practice),
        new Field("limits.between_hands", Length, Reach("0 mm", "200 mm"), Presence.Optional).Or("60 mm", Source.Practice),
        new Field("limits.between_cables", Length, Reach("0 mm", "200 mm"), Presence.Optional).Or("40 mm", Source.Practice),
        new Field("limits.tube_clearance", Length, Reach("0 mm", "100 mm"), Presence.Optional).Or("10 mm", Source.RuleOfThumb),
        new Field("limits.cell_margin", Length, Reach("0 mm", "100 mm"), Presence.Optional).Or("10 mm", Source.RuleOfThumb),
        new Field("limits.shade_gap", Length, Reach("0 mm", "50 mm"), Presence.Optional).Or("3 mm", Source.RuleOfThumb),
        new Field("limits.cloth_sag", Factor, Reach("0", "0.05"), Presence.Optional).Or("0.025", Source.RuleOfThumb),
        new Field("limits.edge_gap", Length, Reach("0 mm", "50 mm"), Presence.Optional).Or("5 mm", Source.RuleOfThumb),
        new Field("limits.zipper_pull", Length, Reach("0 mm", "30 mm"), Presence.Optional).Or("6 mm", Source.RuleOfThumb),
        new Field("limits.shrink", Percent, Reach("0 %", "5 %"), Presence.Optional).Or("1 %", Source.RuleOfThumb),
        new Field("limits.creep", Percent, Reach("0 %", "5 %"), Presence.Optional).Or("0.5 %", Source.RuleOfThumb),
        new Field("limits.sewn_thickness", Length, Size("1 mm", "20 mm"), Presence.Optional).Or("4 mm", Source.RuleOfThumb),
    ];
}
