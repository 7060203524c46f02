using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Patterns;

/// <summary>One run of basting tape between every two faces, by hand on the sample job.</summary>
public sealed class BastingTests
{
    private static readonly IReadOnlyList<SewnSeam> Seams = JobSeams.Of(Patterns(SampleJobs.Plain with
    {
        Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60), SampleJobs.BowAt(800), SampleJobs.BowAt(1540)]),
    }));

    /// <summary>
    /// The carrier's four hems have a row each, 2 × (1100 + 575.4). Both rows of a zipper hold one tape of 1049.2. Both rows of the strip
    /// hold one edge of 1100 + 2 × 25.4. The four edges of a chafe patch, 1100 by 25.4 + 2 × 38.1, have one row each.
    /// </summary>
    [Theory]
    [InlineData("Carrier, hems", 3350.8, 3350.8)]
    [InlineData("forward zipper, half on the carrier", 1049.2, 2098.4)]
    [InlineData("aft zipper, half on the top", 1049.2, 2098.4)]
    [InlineData("Weather strip, forward, edges on the top", 1150.8, 2301.6)]
    [InlineData("Chafe patch, bow 2, edges on the top", 2403.2, 2403.2)]
    public void A_seam_takes_one_run_for_every_two_faces(string name, double basted, double sewn)
    {
        var seam = Seams.Single(seam => seam.Name == name);

        Assert.Equal(basted, seam.Basted.Millimeters, 1e-6);
        Assert.Equal(sewn, seam.Sewn.Millimeters, 1e-6);
    }

    /// <summary>A leg's outer row, 3 mm inside, ends where the mouth comes 3 mm nearer: leg - 3; its inner row is no run more.</summary>
    [Fact]
    public void A_pocket_takes_one_run_a_leg()
    {
        var pocket = MountedShape.Of(SampleJobs.Plain, LongSide.Athwart).Fastened.Pockets[0];
        var seam = Seams.Single(seam => seam.Name == "Corner pocket, forward port, edges on the top");

        Assert.Equal(4, seam.Rows.Length);
        Assert.Equal(2 * (pocket.Leg.Millimeters - 3), seam.Basted.Millimeters, 1e-6);
    }

    [Fact]
    public void Felled_seams_and_caps_are_sewn_without()
    {
        var narrow = SampleJobs.Plain.On(SampleJobs.Cloth with { Roll = SampleJobs.Cloth.Roll with { Width = SampleJobs.Mm(900) } });
        var without = JobSeams.Of(Patterns(narrow)).Where(seam => seam.Kind is SeamKind.Felled or SeamKind.Caps).ToList();

        Assert.Contains(without, seam => seam.Kind == SeamKind.Felled);
        Assert.Contains(without, seam => seam.Kind == SeamKind.Caps);
        Assert.All(without, seam => Assert.Equal(0, seam.Basted.Millimeters));
    }

    private static PatternSet Patterns(CarrierJob job) => PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0))));
}
