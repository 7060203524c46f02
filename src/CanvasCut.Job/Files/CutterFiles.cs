using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Export.Dxf;
using CanvasCut.Export.Exchange;
using CanvasCut.Export.Hpgl;
using CanvasCut.Language;
using CanvasCut.Sheets;

namespace CanvasCut.Job;

/// <summary>Makes the files for a shop's cutter, plotter or pattern program.</summary>
internal static class CutterFiles
{
    /// <summary>The files, the usual one first.</summary>
    public static IEnumerable<FilePlan> Of(JobRun outcome, ImmutableArray<PieceDrawing> drawings)
    {
        var spec = outcome.Job.Workshop.Dxf;
        var form = new DxfForm(spec.Unit == DxfUnit.Inch, spec.HasArcs);
        var all = DxfSheet.Of(drawings);
        return
        [
            .. spec.IsOneFilePerPiece
                ? drawings.Select(drawing => Dxf(DxfSheet.Of([drawing]), form, $"dxf/{drawing.Piece.Key.Id}.dxf", Say.Of($"{drawing.Title}, for a shop's cutter")))
                : [Dxf(all, form, "pieces.dxf", Say.Of("all pieces for a shop's cutter"))],
            FilePlan.Written("pieces-pattern.dxf", Say.Of("all pieces for a pattern program"), output => ExchangeWriter.Write(ExchangeStyle.Of(drawings, outcome.Pieces, outcome.Context), output)),
            FilePlan.Written("pieces.hpgl", HpglTells(all.WidthMm), output => HpglWriter.Write(all, output)),
        ];
    }

    private static FilePlan Dxf(Drawing.Sheet sheet, DxfForm form, string name, string tells) =>
        FilePlan.Written(name, tells, output => DxfWriter.Write(sheet, form, output));

    private static string HpglTells(double reachMm) => reachMm > HpglWriter.OldReachMm
        ? Say.Of("all pieces for a plotter with HP-GL/2; too long for one with plain HP-GL")
        : Say.Of("all pieces for a plotter");
}
