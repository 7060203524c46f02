using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Takeoff;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Patterns;

/// <summary>
/// Weather strips on the top and on the carrier, along every edge; worked by hand. A panel of 1100 by 550 with 25.4 of border all
/// round, so a carrier of 1150.8 by 600.8 with its middle at the origin. Zippers at all four edges reach 28.55 out. Pockets of 120: the leg lies
/// 28.55 + 12.35 = 40.9 out at both edges, so each covers 120 − 81.8 = 38.2.
/// </summary>
public sealed class StripPlaceTests
{
    /// <summary>
    /// On the top the seam is 40.9 + 6 + 9.35 = 56.25 out, the free edge 15.9 in, the ends 25.4 past the corners. On the carrier 9.55 of tape lie
    /// under the edge, so the seam is 9.55 + 3 + 9.35 = 21.9 in, the free edge 28.55 + 15.9 = 44.45 out, the ends 38.2 + 6 = 44.2 in from the corners.
    /// </summary>
    [Theory]
    [InlineData(Side.Forward, StripGround.Top, -600.8, 284.5, 600.8, 356.65, Side.Forward)]
    [InlineData(Side.Aft, StripGround.Top, -600.8, -356.65, 600.8, -284.5, Side.Aft)]
    [InlineData(Side.Port, StripGround.Top, -631.65, -325.8, -559.5, 325.8, Side.Port)]
    [InlineData(Side.Starboard, StripGround.Top, 559.5, -325.8, 631.65, 325.8, Side.Starboard)]
    [InlineData(Side.Forward, StripGround.Carrier, -531.2, 278.5, 531.2, 344.85, Side.Aft)]
    [InlineData(Side.Aft, StripGround.Carrier, -531.2, -344.85, 531.2, -278.5, Side.Forward)]
    [InlineData(Side.Port, StripGround.Carrier, -619.85, -256.2, -553.5, 256.2, Side.Starboard)]
    [InlineData(Side.Starboard, StripGround.Carrier, 553.5, -256.2, 619.85, 256.2, Side.Port)]
    public void A_strip_lies_where_it_was_worked_out(Side edge, StripGround ground, double left, double bottom, double right, double top, Side seam)
    {
        var strip = Assert.Single(MountedShape.Of(Job(ground, edge), LongSide.Athwart).Fastened.Strips);

        Assert.Equal(new Box(left, bottom, right, top), Rounded(strip.Finished));
        Assert.Equal(seam, strip.SeamSide);
        Assert.Equal((edge, ground == StripGround.Carrier), (strip.Side, strip.IsOnCarrier));
    }

    /// <summary>
    /// Finished 1062.4 by 66.35: a seam of 12.7 and a hem of 25.4 across, at each end one fold of 12.7. The needle that sews it to the carrier, 12.55 and
    /// 18.9 from its edge, misses the zipper's tape and its caps; at the strip's ends it meets 2 × 2 of the strip and 3 of the carrier's hem: 7 of 0.5 mm.
    /// </summary>
    [Fact]
    public void A_strip_on_the_carrier_is_the_carriers_piece()
    {
        var patterns = PatternSet.Of(Job(StripGround.Carrier, Side.Forward), MountedShape.Of(Job(StripGround.Carrier, Side.Forward), LongSide.Athwart));
        var piece = Assert.Single(patterns.NotionPieces, each => each.Key.Kind == PieceKind.WeatherStrip);
        var seam = Assert.Single(JobSeams.Of(patterns), each => each.Pieces.Contains(piece.Key) && each.Kind == SeamKind.Edges);

        Assert.DoesNotContain(patterns.TopPieces, each => each.Key.Kind == PieceKind.WeatherStrip);
        Assert.Equal((1062.4, 66.35), (Math.Round(piece.FinishedSize.Athwart.Millimeters, 6), Math.Round(piece.FinishedSize.ForeAft.Millimeters, 6)));
        Assert.Equal((1087.8, 104.45), (Math.Round(piece.CutSize.Athwart.Millimeters, 6), Math.Round(piece.CutSize.ForeAft.Millimeters, 6)));
        Assert.Equal(7, seam.Thickest(patterns.Job.Workshop.Supplies).Plies);
        Assert.Contains(patterns.WholeCarrier.Lines, line => line.Shows == LineShows.StripSeam);
    }

    /// <summary>Sewn while the carrier is made, before the bond, and nothing of it to the top.</summary>
    [Fact]
    public void A_strip_on_the_carrier_is_sewn_before_the_bond()
    {
        var patterns = WorkOrderTests.Patterned(Job(StripGround.Carrier, Side.Forward, Side.Port));
        var order = WorkOrder.Of(patterns);
        string[] ids = [.. order.Steps.Select(each => each.Step.Task.Id)];

        Assert.Empty(new WorkAudit(patterns, order).Faults());
        Assert.InRange(Array.IndexOf(ids, "sew-strips-carrier"), Array.IndexOf(ids, "sew-zippers-carrier") + 1, Array.IndexOf(ids, "bond") - 1);
        Assert.DoesNotContain("sew-weather-strips-top", ids);
        Assert.DoesNotContain(TopMarks.Of(patterns.Mounted), mark => mark.Name.Contains("weather strip", StringComparison.Ordinal));
    }

    [Fact]
    public void A_strip_at_a_side_is_marked_from_forward_to_aft() =>
        Assert.Equal(
            [("port weather strip, seam, forward end", -325.8), ("port weather strip, seam, aft end", 325.8)],
            TopMarks.Of(MountedShape.Of(Job(StripGround.Top, Side.Port), LongSide.Athwart)).Where(mark => mark.Name.Contains("weather strip", StringComparison.Ordinal)).Select(mark => (mark.Name, Math.Round(mark.Place.Station.Millimeters, 6))));

    /// <summary>25.4 of border less 21.9 leave 3.5 beside the panel; a third row, 6.35 further in, runs under it by 2.85; with one row 9.85 are left.</summary>
    [Theory]
    [InlineData(1, 9.85, Verdict.Pass)]
    [InlineData(2, 3.5, Verdict.Pass)]
    [InlineData(3, -2.85, Verdict.Fail)]
    public void The_seam_must_find_room_beside_the_panel(int rows, double toPanel, Verdict verdict)
    {
        var job = Job(StripGround.Carrier, Side.Starboard);
        var checks = JobChecks.Of(WorkOrderTests.Patterned(job with { Workshop = job.Workshop with { Sewing = job.Workshop.Sewing with { Rows = rows } } })).Where(check => check.Code == CheckCodes.StripSeam).ToList();

        Assert.Equal([toPanel, 6], checks.Select(check => Math.Round(check.Measured.Value!.Value.Millimeters, 6)));
        Assert.Equal([verdict, Verdict.Pass], checks.Select(check => check.Verdict));
        Assert.Equal(verdict == Verdict.Fail, checks[0].Advice.Contains("carrier.border.starboard to 31.3 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mirror_image_has_its_strips_on_the_other_side()
    {
        var strip = Strip with { Edges = [Side.Port, Side.Aft], SewnTo = Sides.All(StripGround.Top) with { Port = StripGround.Carrier } };
        var twin = strip.Mirrored();

        Assert.Equal([Side.Starboard, Side.Aft], twin.Edges);
        Assert.Equal(Sides.All(StripGround.Top) with { Starboard = StripGround.Carrier }, twin.SewnTo);
    }

    private static Box Rounded(Box box) => new(Math.Round(box.Left, 6), Math.Round(box.Bottom, 6), Math.Round(box.Right, 6), Math.Round(box.Top, 6));

    private static CarrierJob Job(StripGround ground, params Side[] edges) => (Plain with { Carrier = Carrier with { Border = Sides.All(Mm(25.4)) } })
        .HeldAtSides(MountKind.Zipper, MountKind.Zipper)
        .With(Pocket with { Leg = Mm(120) }, strip: Strip with { Edges = [.. edges], SewnTo = Sides.All(ground) });
}
