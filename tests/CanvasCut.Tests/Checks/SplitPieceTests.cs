using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Checks;

/// <summary>A piece that is split for a narrow roll is looked at like a whole one, and its felled seams besides.</summary>
public sealed class SplitPieceTests
{
    private static readonly CarrierJob Wide = SampleJobs.Plain.Held(MountKind.Zipper, MountKind.Snaps) with
    {
        Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60), SampleJobs.BowAt(800), SampleJobs.BowAt(1540)]),
    };

    private static readonly CarrierJob Narrow = Wide.On(SampleJobs.Cloth with { Roll = SampleJobs.Cloth.Roll with { Width = SampleJobs.Mm(700) } });

    [Theory]
    [InlineData("cells and rows of the weather strip, forward")]
    [InlineData("cells and rows of the flap for snaps, aft")]
    [InlineData("cells and rows of the strip under snaps, aft")]
    [InlineData("cells and rows of the chafe patch, bow 2")]
    public void Its_rows_are_held_against_the_cells_all_the_same(string subject)
    {
        var (whole, split) = (Results(Wide).Single(result => result.Subject == subject), Results(Narrow).Single(result => result.Subject == subject));

        Assert.Equal(whole.Measured.Value!.Value.Millimeters, split.Measured.Value!.Value.Millimeters, 1e-6);
        Assert.Equal(whole.Verdict, split.Verdict);
    }

    /// <summary>
    /// By hand: the patch lies under the panel, so its seam, 12.7 to each side of its line and 25.4 + 2 × 38.1 = 101.6 along the boat,
    /// lies in the cells with all of it; the way out is that of the patch's middle: half the cells' 520 and half of 101.6.
    /// </summary>
    [Fact]
    public void A_felled_seam_of_a_patch_under_the_cells_is_found()
    {
        var seam = Results(Narrow).Single(result => result.Subject == "cells and felled seams of the chafe patch, bow 2");

        Assert.Equal((CheckCodes.SupportSeam, Verdict.Fail), (seam.Code, seam.Verdict));
        Assert.Equal(-260 - 50.8, seam.Measured.Value!.Value.Millimeters, 1e-6);
        Assert.DoesNotContain(Results(Wide), result => result.Subject == seam.Subject);
    }

    private static ImmutableArray<CheckResult> Results(CarrierJob job) => JobChecks.Of(Patterns(job));

    private static PatternSet Patterns(CarrierJob job) => PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0))));
}
