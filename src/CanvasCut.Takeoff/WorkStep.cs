using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>One step of the work.</summary>
/// <param name="Do">What to do.</param>
/// <param name="Check">What must be true before going on.</param>
public sealed record WorkStep(string Do, string Check);

/// <summary>The order of work; tolerances are common practice, no source, unless named.</summary>
public static class WorkOrder
{
    /// <summary>The steps for a job.</summary>
    public static ImmutableArray<WorkStep> Of(PatternSet patterns)
    {
        var fastenings = patterns.Job.Fastenings;
        return
        [
            new("Print the templates at 100 %, never \"fit to page\", and join the pages.", "The 100 mm and 4 in squares measure true on every page, within 0.5 mm."),
            new("Lay the joined templates on the stretched top in a calm.", "Nothing lies on a tube, a seam or a keep-out; the marks agree with the table."),
            new("Cut all pieces as the cut plan shows, outer face up, warp along the arrows.", "The pieces are counted and labelled; no piece was turned over."),
            .. patterns.CarrierPieces.Length > 1
                ? [new WorkStep("Join the widths of the carrier with felled seams.", "The joined width is within 2 mm of the template.")]
                : ImmutableArray<WorkStep>.Empty,
            new(HemStep(patterns), "The finished size is within 3 mm; the diagonals are equal within 3 mm."),
            new("Tape and sew the carrier's half of each zipper: closed, ticks on ticks, ends capped.", "Both halves match within 1.5 mm and the slider runs from end to end."),
            .. patterns.Job.Panel.Fittings.CableExit is not null
                ? [new WorkStep("Sew on the cable exit patch and set the grommet.", "The edge of the hole is covered.")]
                : ImmutableArray<WorkStep>.Empty,
            new("Hem the mouths of the corner pockets, then turn their legs under.", "Each pocket lies flat on its template."),
            .. fastenings.WeatherStrip.Edges.IsEmpty
                ? ImmutableArray<WorkStep>.Empty
                : [new WorkStep("Hem the weather strip on three sides; turn its seam edge under.", "It lies flat on its template.")],
            new("Bond the panel to the carrier as the adhesive's maker says: clean, dry, warm, pressed. Raw woven cloth is porous; sew a smooth tape or patch to bond to.", "72 hours have passed in the warm before anything pulls on the bond."),
            new("Zip the top's halves to the carrier, lay it all on the stretched top, and tape the halves down.", "The carrier lies without wrinkles; the diagonals of the marks are equal within 3 mm."),
            new("Mark the pockets and the strip on the top with the carrier in place, then unzip and take the top off its frame.", "Every mark of the table is on the cloth, port and starboard."),
            new("Sew the chafe patches, then the top's zipper halves, then the pockets, then the weather strip: what lies under comes first.", "Each seam starts and ends with 25 mm of overstitching (US Army TM 10-8340)."),
            new("Put the top back, zip the panel in, lead the cable with a drip loop.", "No cell is covered, the box presses on nothing, the corners sit in their pockets."),
            new("Look at it again after a day and after the first wind.", "No seam has moved; write the date on the carrier."),
        ];
    }

    private static string HemStep(PatternSet patterns)
    {
        var isBound = Enum.GetValues<Side>().Any(side => patterns.Job.Carrier.Edges[side] == EdgeFinish.Binding);
        var hem = patterns.Job.Carrier.Corner == CornerKind.Mitred ? "Fold and sew the carrier's hems, mitring the corners" : "Fold and sew the carrier's hems";
        return isBound ? $"{hem}; bind the bound edges." : $"{hem}.";
    }
}
