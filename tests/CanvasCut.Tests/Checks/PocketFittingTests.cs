using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;
using static CanvasCut.Tests.Checks.BendingChecksTests;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Checks;

/// <summary>The room in the pockets, and the way into them; worked by hand.</summary>
public sealed class PocketFittingTests
{
    /// <summary>Rows at 3, 9.35, 15.7 and 22.05 from the fold; 3 more inside the last of them: with 2 rows 12.35.</summary>
    [Theory]
    [InlineData(1, 6)]
    [InlineData(2, 12.35)]
    [InlineData(3, 18.7)]
    [InlineData(4, 25.05)]
    public void The_ease_left_out_leaves_three_millimetres_inside_every_row(int rows, double ease)
    {
        var job = JobFiles.Sample.Job(JobFiles.Sample.Least + $"\n[sewing]\nrows = {rows}\n");

        Assert.Equal(ease, job.Fastenings.Pocket.Ease.Millimeters, 1e-9);
        Assert.All(RoomOf(job), room => Assert.Equal((Verdict.Pass, 3), (room.Verdict, Math.Round(room.Measured.Value!.Value.Millimeters, 6))));
    }

    /// <summary>
    /// 1100 sewn for 2 % of shrinkage across is 1122.45, so 11.22 more at each side: 3 + 9.35 + 11.22 = 23.57. Along, where the zippers
    /// reach further out than the carrier grows, nothing is added; beside the zippers 575.4 at 4 % adds 11.99.
    /// </summary>
    [Theory]
    [InlineData(true, 0, 0.02, 23.574)]
    [InlineData(true, 0.04, 0, 12.35)]
    [InlineData(false, 0.04, 0, 24.3375)]
    public void The_ease_left_out_leaves_room_for_the_carrier_as_it_is_sewn(bool over, double warp, double fill, double ease)
    {
        var job = Eased(Plain.On(Cloth with { Shrink = new(warp, fill) }).With(Pocket with { OverZipper = over }, Zipper with { Setback = Mm(120) }));

        Assert.Equal(ease, job.Fastenings.Pocket.Ease.Millimeters, 1e-3);
        Assert.All(RoomOf(job), room => Assert.Equal(3, room.Measured.Value!.Value.Millimeters, 1e-6));
    }

    /// <summary>Ease of 10 and rows to 9.35 leave 0.65, which fails; 1 row leaves 7; 3 rows run 5.7 into the carrier and the zipper's tape.</summary>
    [Theory]
    [InlineData(1, 7, Verdict.Pass, "")]
    [InlineData(2, 0.65, Verdict.Fail, "pocket.ease to 12.4 mm")]
    [InlineData(3, -5.7, Verdict.Fail, "pocket.ease to 18.7 mm")]
    public void Too_little_room_fails_with_what_would_do(int rows, double room, Verdict verdict, string remedy)
    {
        var job = Rows(Plain.With(Pocket with { Ease = Mm(10) }), rows);

        Assert.All(RoomOf(job), check =>
        {
            Assert.Equal((room, verdict), (Math.Round(check.Measured.Value!.Value.Millimeters, 6), check.Verdict));
            Assert.Contains(remedy, check.Advice, StringComparison.Ordinal);
        });
    }

    /// <summary>For every job whose check passes the rows themselves, as drawn, stay clear of both zippers' tapes and of the carrier: by NetTopologySuite.</summary>
    [Fact]
    public void No_row_that_passes_runs_through_a_tape_or_the_carrier() =>
        Gen.Select(Gen.Int[1, 4], Gen.Double[0, 40], Gen.Bool, Gen.Double[0, 0.03], Gen.Double[60, 160]).Sample((rows, ease, over, shrink, leg) =>
        {
            var job = Rows(Plain.On(Cloth with { Shrink = new(shrink, shrink) }).With(Pocket with { Ease = Mm(ease), OverZipper = over, Leg = Mm(leg) }), rows);
            var mounted = MountedOf(job);
            var patterns = PatternSet.Of(job, mounted);
            var carrier = Box.Around(mounted.CarrierBox.Center, mounted.CarrierBox.WidthMm / (1 - shrink), mounted.CarrierBox.HeightMm / (1 - shrink));
            var checks = JobChecks.Of(patterns).Where(check => check.Code == CheckCodes.PocketBeside).ToList();
            foreach (var (place, piece) in mounted.Fastened.Pockets.Zip(patterns.TopPieces))
            {
                var passes = checks[Corner.All.Index().Single(each => each.Item == place.Corner).Index].Verdict == Verdict.Pass;
                var rowsOnTop = piece.Lines.Where(line => line.Use?.Kind == RowKind.Edge).Select(line => line.Points.Select(point => point + (place.At - new Point(0, 0))).ToList());
                var hits = rowsOnTop.Any(row => mounted.Fastened.Zippers.Select(zipper => zipper.Band).Append(carrier).Any(box => Crosses(row, box)));
                Assert.False(passes && hits, $"{place.Corner}, {rows} rows, ease {ease}, leg {leg}");
            }
        }, iter: 40);

    /// <summary>
    /// The forward zipper's tape ends 28.55 out, and with 12.35 of ease and rows to 9.35 the teeth, 9.5 + 5 out, can go 17.05 forward; the
    /// side 3 to the other hand: 20.05 go in flat. 39.7 are covered, so 19.65 are missing. The arc of 4298.5 takes 1100³/(24·4298.5²) = 3.00
    /// already: 22.65 of 1100 by the sine bow is R = 1100^1.5/(2π√22.65) = 1220, a rise of 2√(1100·22.65)/π = 100.5. Along, on 550, it is 463.
    /// The elastica proper is some hundredths off the sine.
    /// </summary>
    [Fact]
    public void The_last_corner_asks_for_the_bend_worked_by_hand()
    {
        var check = Assert.Single(ResultsOf(Plain), each => each.Code == CheckCodes.PocketFitting);
        var mounted = MountedOf(Plain);
        var bow = PocketFitting.Of(Plain, mounted.CarrierBox, mounted.Panel).BowFor(mounted.Fastened.Pockets[3])!;

        Assert.Equal((Verdict.Pass, 900), (check.Verdict, check.Measured.Limit!.Value.Millimeters));
        Assert.Equal(1220, check.Measured.Value!.Value.Millimeters, 12.0);
        Assert.Equal((false, 19.65), (bow.IsForeAft, Math.Round(bow.Shortening.Millimeters, 6)));
        Assert.Equal(100.5, bow.Rise.Millimeters, 1.0);
    }

    /// <summary>A leg of 153.25 covers 100, so 79.95 are missing and 83 with the arc: R = 36483/(2π√83) = 637 misses 900. What may be covered is 20.05 + 41.6 − 3.0 = 58.6, a leg of 111.9.</summary>
    [Fact]
    public void A_pocket_too_large_to_get_into_fails_with_what_would_do()
    {
        var job = Plain.With(Pocket with { Leg = Mm(153.25) });
        var check = Assert.Single(ResultsOf(job), each => each.Code == CheckCodes.PocketFitting);

        Assert.Equal(Verdict.Fail, check.Verdict);
        Assert.Equal(637, check.Measured.Value!.Value.Millimeters, 10.0);
        Assert.Contains("shorten pocket.leg to 11", check.Advice, StringComparison.Ordinal);
    }

    /// <summary>Only the width may be curved, 550 along: of 19.65 missing R = 12898/(2π√19.65) = 463, which misses 900.</summary>
    [Fact]
    public void A_side_that_may_not_be_curved_is_not_bowed()
    {
        var job = Plain with { Panel = Plain.Panel with { Limits = Plain.Panel.Limits with { Bends = BendAxis.Width } } };
        var mounted = MountedOf(job.With(Pocket with { Leg = Mm(92.95) }));
        var bow = PocketFitting.Of(job, mounted.CarrierBox, mounted.Panel).BowFor(mounted.Fastened.Pockets[3])!;

        Assert.True(bow.IsForeAft);
        Assert.Equal(463, bow.Radius.Millimeters, 10.0);
    }

    /// <summary>
    /// With cells far inside, borders of 60: the mouth may cover 60 + 60 + 30 − 3 = 147. 40 hold, so 40 are taken. A maker who wants 1200, so
    /// 1800, allows 1100 + 2·0: (36483/(2π·1800))² = 10.4 less 3.0 of the arc, with the 20.05 that go in flat 27.4. One who wants 4 m allows
    /// nothing beyond the 20.05; then 1 in is taken all the same, for less holds nothing, and the check fails.
    /// </summary>
    [Theory]
    [InlineData(600, 40, Verdict.Pass)]
    [InlineData(1200, 27.4, Verdict.Pass)]
    [InlineData(4000, 25.4, Verdict.Fail)]
    public void A_leg_left_out_is_as_large_as_holds_and_can_be_fitted(double allowed, double covers, Verdict verdict)
    {
        var job = Plain with
        {
            Carrier = Plain.Carrier with { Border = Sides.All(Mm(60)) },
            Panel = Plain.Panel with { Limits = Plain.Panel.Limits with { MinBendRadius = Mm(allowed) } },
        };

        Assert.All(MountedOf(job).Fastened.Pockets, pocket => Assert.Equal(covers, pocket.Covers.Millimeters, 0.15));
        Assert.Equal(verdict, Assert.Single(ResultsOf(job), check => check.Code == CheckCodes.PocketFitting).Verdict);
    }

    /// <summary>1340.8 sewn for 1 % along and stretched by 0.5 %: 1340.8/0.99·1.005 − 1340.8 = 20.32; with 6 of the zippers' pull, twice that: 52.63 hold.</summary>
    [Fact]
    public void A_long_carrier_sewn_larger_needs_pockets_that_take_up_its_slack()
    {
        var job = Plain.On(Cloth with { Shrink = new(0.01, 0) }) with
        {
            Panel = Panel(1290, 655, longSide: LongSide.ForeAft),
            Carrier = Plain.Carrier with { Border = Sides.All(Mm(25.4)) },
        };

        Assert.Equal(52.63, MountedShape.Of(job, LongSide.ForeAft).Fastened.Pockets[0].Covers.Millimeters, 0.01);
    }

    /// <summary>
    /// Two ridges of 0.2003 and a window of 550 that takes in one of them: 550·(1 − cos 0.1002) = 2.76 nearer, and a panel that is
    /// bowed along begins from there: 19.65 + 2.76 of 550 give 12898/(2π√22.41) = 434.
    /// </summary>
    [Fact]
    public void A_ridge_under_the_panel_brings_its_edges_nearer()
    {
        var ridged = Ridged(60);
        var job = ridged with { Panel = ridged.Panel with { Limits = ridged.Panel.Limits with { Bends = BendAxis.Width } } };
        var mounted = MountedOf(job.With(Pocket with { Leg = Mm(92.95) }));
        var bow = PocketFitting.Of(job, mounted.CarrierBox, mounted.Panel).BowFor(mounted.Fastened.Pockets[3])!;

        Assert.Equal(434, bow.Radius.Millimeters, 8.0);
    }

    /// <summary>
    /// As above, of a maker who wants 297, so 445.5: flat the 463 of the sine bow would do, but the ridges of 0.1002 leave 434. While their heights are not known
    /// it is not checked; a maker who wants 400, so 600, is told in any case that it fails.
    /// </summary>
    [Theory]
    [InlineData(297, true, Verdict.Fail)]
    [InlineData(297, false, Verdict.NotChecked)]
    [InlineData(400, false, Verdict.Fail)]
    [InlineData(280, true, Verdict.Pass)]
    public void Ridges_that_are_not_known_are_not_taken_for_flat(double allowed, bool isKnown, Verdict verdict)
    {
        var ridged = Ridged(60).With(Pocket with { Leg = Mm(92.95) });
        var job = ridged with
        {
            Panel = ridged.Panel with { Limits = ridged.Panel.Limits with { Bends = BendAxis.Width, MinBendRadius = Mm(allowed) } },
            Top = isKnown ? ridged.Top : Top(1600, 1800, [.. ridged.Top.Bows.Select(bow => new Bow(bow.Station, bow.Diameter, bow.Halves, null, bow.SagAft))]),
        };
        var check = Assert.Single(ResultsOf(job), each => each.Code == CheckCodes.PocketFitting);

        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(verdict == Verdict.NotChecked, check.Advice.Contains("give top.bow[1].height, top.bow[2].height", StringComparison.Ordinal));
    }

    /// <summary>Across the arc counts alone: 1220 holds 900 whatever the heights are. Without the arcs of the bows beside the panel it is not known.</summary>
    [Theory]
    [InlineData(true, Verdict.Pass)]
    [InlineData(false, Verdict.NotChecked)]
    public void Across_only_the_arcs_of_the_bows_matter(bool isKnown, Verdict verdict)
    {
        var job = Plain with { Top = Top(1600, 1800, [.. Plain.Top.Bows.Select(bow => new Bow(bow.Station, bow.Diameter, isKnown ? bow.Halves : null, null, bow.SagAft))]) };
        var check = Assert.Single(ResultsOf(job), each => each.Code == CheckCodes.PocketFitting);

        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(!isKnown, check.Advice.Contains("top.bow[1].chord, top.bow[1].crown, top.bow[2].chord", StringComparison.Ordinal));
    }

    private static CarrierJob Rows(CarrierJob job, int rows) => job with { Workshop = job.Workshop with { Sewing = job.Workshop.Sewing with { Rows = rows } } };

    private static CarrierJob Eased(CarrierJob job) => job.With(job.Fastenings.Pocket with { Ease = PocketRoom.EaseFor(job) });

    private static List<CheckResult> RoomOf(CarrierJob job) =>
        [.. JobChecks.Of(PatternSet.Of(job, MountedOf(job))).Where(check => check.Code == CheckCodes.PocketBeside)];

    /// <summary>Whether a straight row has any part strictly inside a box.</summary>
    private static bool Crosses(IReadOnlyList<Point> row, Box box)
    {
        var factory = new NetTopologySuite.Geometries.GeometryFactory();
        var line = factory.CreateLineString([.. row.Select(point => new NetTopologySuite.Geometries.Coordinate(point.X, point.Y))]);
        return line.Intersection(Witness.ToPolygon(Outline.Of(box.Grown(-1e-6)))).Length > 1e-6;
    }
}
