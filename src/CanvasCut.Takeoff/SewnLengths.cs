using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>How much is sewn, measured on the drawn pieces.</summary>
internal static class SewnLengths
{
    /// <summary>A ply of marine canvas; two plies are about 1 mm, common practice, no source.</summary>
    public static readonly Length Ply = Length.FromMillimeters(0.5);

    /// <summary>Added for tails and bobbin ends: 10 to 15 per cent is usual in sewing-room costing.</summary>
    public const double Waste = 1.15;

    /// <summary>Every row on every piece, and the rows that hold the top's half of each zipper.</summary>
    public static Length Seams(PatternSet patterns)
    {
        var onPieces = patterns.Pieces.Sum(piece => piece.Title.Quantity * piece.Lines.Where(line => line.Kind == PieceLineKind.Stitch).Sum(LengthMm));
        var onTop = patterns.Mounted.Fastened.Zippers.Sum(zipper => zipper.Choice.Run.Millimeters) * patterns.Job.Workshop.Sewing.Rows;
        return Length.FromMillimeters(onPieces + onTop);
    }

    /// <summary>Needle and bobbin thread for a length of lockstitch (type 301), with waste.</summary>
    /// <remarks>
    /// C = 2 + 2·T·S inches of thread an inch of seam (textilecalculations.com, textileblog.com), T being the thickness
    /// and S the stitches an inch; in any one unit 2·(1 + thickness / stitch length).
    /// </remarks>
    public static Length Thread(Length seams, SewingSpec sewing) => seams * LockstitchRatio(Ply * sewing.Plies, sewing.StitchLength) * Waste;

    /// <summary>Thread for one length of lockstitch seam, needle and bobbin together.</summary>
    public static double LockstitchRatio(Length thickness, Length stitch) => 2 * (1 + (thickness / stitch));

    /// <summary>Tape to hold zipper tapes and hems before they are sewn.</summary>
    public static Length Basting(PatternSet patterns)
    {
        var zippers = 2 * patterns.Mounted.Fastened.Zippers.Sum(zipper => zipper.Choice.Run.Millimeters);
        return Length.FromMillimeters(zippers + patterns.WholeCarrier.Shape.Finished.PerimeterMm);
    }

    private static double LengthMm(PieceLine line)
    {
        var open = Enumerable.Range(1, line.Points.Length - 1).Sum(i => line.Points[i].DistanceMm(line.Points[i - 1]));
        return line.IsClosed ? open + line.Points[^1].DistanceMm(line.Points[0]) : open;
    }
}
