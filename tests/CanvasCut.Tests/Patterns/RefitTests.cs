using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Patterns;

public sealed class RefitTests
{
    private const double Near = 1e-6;

    /// <summary>
    /// The carrier is 1100 by 550 + 2 × 12.7 = 575.4. A panel of 1080 by 540 leaves 20 athwart and 35.4 fore and aft: the
    /// borders asked for, 0 and 12.7, and half of what is over on each side, (20 − 0)/2 and (35.4 − 25.4)/2 = 5.
    /// </summary>
    [Fact]
    public void A_smaller_panel_gets_even_borders()
    {
        var border = RefitCase.OnPlain(Panel(1080, 540)).Way().Border!;

        Assert.Equal([17.7, 17.7, 10, 10], new[] { border.Forward, border.Aft, border.Port, border.Starboard }.Select(side => side.Millimeters), Close);
    }

    /// <summary>
    /// Asked are 12.7 forward and aft and 0 at the sides, at most 100: athwart 1100 − 0 down to 1100 − 200; fore and aft
    /// 575.4 − 25.4 down to 575.4 − 200. A pocket covers (0 + 15) + (12.7 + 15) − 3 = 39.7, so the borders at its corner
    /// must add up to 39.7 + 3 − 30 = 12.7, and the forward border alone is that.
    /// </summary>
    [Fact]
    public void The_range_of_panels_is_as_worked_by_hand()
    {
        var range = RefitCase.OnPlain(Panel(1080, 540)).Way().Range;

        Assert.Equal(
            [900, 1100, 375.4, 550],
            new[] { range.Length.From, range.Length.To, range.Width.From, range.Width.To }.Select(length => length.Millimeters),
            Close);
        Assert.Empty(range.Limits);
    }

    /// <summary>
    /// With dead borders of 12 a corner needs 39.7 + 3 − 24 = 18.7, so the borders of the two diagonally opposite corners
    /// together 37.4: length and width at most 1100 + 575.4 − 37.4 = 1638. So with the length of 1100, which leaves the
    /// sides nothing, the width is at most 538, forward and aft 18.7 each.
    /// </summary>
    [Fact]
    public void Narrow_dead_borders_bar_panels_that_are_large_both_ways()
    {
        var range = RefitCase.OnPlain(Panel(1080, 540, dead: 12)).Way().Range;

        var limit = Assert.Single(range.Limits);
        Assert.Equal((1, 1, 1638.0), (limit.Lengths, limit.Widths, Math.Round(limit.Most.Millimeters, 6)));
        Assert.True(range.Holds(Mm(1100), Mm(538)));
        Assert.False(range.Holds(Mm(1100), Mm(538.1)));
    }

    /// <summary>10 mm longer than the carrier: pockets 5 mm further out on each side, the zippers' setback 25.4 + 5.</summary>
    [Fact]
    public void A_longer_panel_needs_the_pockets_further_out()
    {
        var longer = RefitCase.OnPlain(Panel(1110, 550));
        var change = RefitAnswer.Of(longer.Sewn, longer.Job).Change!;

        var measure = Assert.Single(change.Measures);
        Assert.Equal((ChangedThing.Athwart, 1100, 1110), (measure.Thing, measure.From.Millimeters, Math.Round(measure.To.Millimeters, 6)));
        Assert.Equal(30.4, change.AppliedTo(longer.Sewn).Zipper.Setback.Millimeters, Near);
    }

    /// <summary>
    /// 560 wide: 15.4 are left fore and aft where 25.4 are asked for, and the corners need 12.7 each end. Two pockets made
    /// anew do instead of four: forward 12.7 stay, aft 2.7 are left, so the aft pockets cover 10 less, 29.7, and their
    /// legs of 39.7 + 9.5 + 19.05 + 12.35 + 12.35 = 92.95 go to 82.95, on a ruler of tenths 82.9.
    /// </summary>
    [Fact]
    public void A_wider_panel_needs_smaller_pockets()
    {
        var wider = RefitCase.OnPlain(Panel(1100, 560));
        var change = RefitAnswer.Of(wider.Sewn, wider.Job).Change!;

        Assert.Equal(
            [(ChangedThing.Border, "Aft", 2.7), (ChangedThing.PocketLeg, "aft starboard", 82.9), (ChangedThing.PocketLeg, "aft port", 82.9)],
            change.Measures.Select(measure => (measure.Thing, $"{measure.At}", Math.Round(measure.To.Millimeters, 6))));
    }

    /// <summary>With wide dead borders only the strip is in the way: 15.9 + 3 − 0 forward where the panel leaves 10 fore and aft.</summary>
    [Fact]
    public void A_panel_with_cells_up_to_its_forward_edge_needs_a_shorter_strip()
    {
        var plain = Panel(1000, 565.4, dead: 30);
        var bare = RefitCase.OnPlain(plain with { Fittings = plain.Fittings with { DeadBorder = plain.Fittings.DeadBorder with { Forward = Mm(0) } } });
        var change = RefitAnswer.Of(bare.Sewn, bare.Job).Change!;

        Assert.Contains(change.Measures, measure => measure.Thing == ChangedThing.StripOverlap && Math.Abs(measure.To.Millimeters - 7) < Near);
        Assert.DoesNotContain(change.Measures, measure => measure.Thing is ChangedThing.Athwart or ChangedThing.ForeAft);
    }

    [Fact]
    public void The_old_panel_fits_with_the_old_borders()
    {
        var same = RefitCase.OnPlain(Plain.Panel);

        Assert.Equal([12.7, 12.7, 0, 0], Values(RefitAnswer.Of(same.Sewn, same.Job).Border!), Close);
    }

    [Fact]
    public void A_panel_that_may_lie_either_way_lies_the_way_that_fits()
    {
        var narrow = RefitCase.OnPlain(Panel(570, 545, longSide: null));
        var wide = new RefitCase(narrow.Sewn with { Carrier = narrow.Sewn.Carrier with { Athwart = Mm(560), ForeAft = Mm(600) } }, narrow.Job);

        Assert.Equal(LongSide.ForeAft, RefitAnswer.Of(wide.Sewn, wide.Job).Ways[0].Panel.LongSide);
    }

    /// <summary>What is printed is true at its edge: every panel of the range fits, and none beside it.</summary>
    [Fact]
    public void A_panel_fits_just_when_it_is_in_the_range() => RefitCase.Any.Sample(
        each =>
        {
            var (way, body) = (each.Way(), each.Job.Panel.Body);
            var step = RulerSteps.Of(each.Job.Units);

            var printed = way.Range.InSteps(step);
            if (printed.Holds(body.Length, body.Width))
            {
                Assert.Equal(way.IsThinEnough, way.Border is not null);
            }

            if (way.Border is not null)
            {
                Assert.True(way.Range.Holds(body.Length, body.Width));
            }
        },
        iter: 2000);

    /// <summary>The same at the very corners of the range, a step of the ruler outside, and a step inside.</summary>
    [Fact]
    public void The_corners_of_the_range_fit_and_a_step_further_does_not() => RefitCase.Any.Where(each => !each.Way().Range.InSteps(Mm(0.1)).IsEmpty).Sample(
        each =>
        {
            var range = each.Way().Range.InSteps(Mm(0.1));
            foreach (var length in new[] { range.Length.From, range.Length.To, range.Length.To + Mm(0.1), range.Length.From - Mm(0.1) })
            {
                foreach (var width in new[] { range.Width.From, range.Width.To, range.Width.To + Mm(0.1), range.Width.From - Mm(0.1) })
                {
                    var panel = each.Job.Panel with { Body = each.Job.Panel.Body with { Length = length, Width = width, Thickness = Mm(1) } };
                    var dead = panel.Fittings.DeadBorder;
                    var hasCells = length >= dead.Port + dead.Starboard && width >= dead.Forward + dead.Aft;
                    var fits = hasCells && new RefitWay(each.Sewn, each.Job with { Panel = panel }, LongSide.Athwart).Border is not null;

                    Assert.Equal(range.Holds(length, width), fits);
                }
            }
        },
        iter: 400);

    /// <summary>What fits shades nothing, measured on the drawn outlines; what does not fit does so for no border on a grid of 3 mm.</summary>
    [Fact]
    public void Borders_are_found_just_when_there_are_any() => RefitCase.Any.Where(each => each.Way().IsThinEnough).Sample(
        each =>
        {
            var way = each.Way();
            if (way.Border is { } border)
            {
                Assert.True(Suits(each, border, 1e-6), "The borders found do not do.");
                return;
            }

            for (var port = 0.0; port <= way.Across.Millimeters; port += 3)
            {
                for (var forward = 0.0; forward <= way.Along.Millimeters; forward += 3)
                {
                    Assert.False(Suits(each, new(Mm(forward), way.Along - Mm(forward), Mm(port), way.Across - Mm(port)), -1e-6));
                }
            }
        },
        iter: 150);

    /// <summary>The change that is asked for does, and no measure of it may be a step of the ruler less.</summary>
    [Fact]
    public void The_smallest_change_makes_it_fit() => RefitCase.Any.Where(each => each.Way().Border is null).Sample(
        each =>
        {
            var change = RefitAnswer.Of(each.Sewn, each.Job).Change!;

            Assert.NotEmpty(change.Measures);
            Assert.True(RefitAnswer.Of(change.AppliedTo(each.Sewn), change.AppliedTo(each.Job)).Fits);
            foreach (var measure in change.Measures)
            {
                var step = RulerSteps.Of(each.Job.Units) * Math.Sign((measure.To - measure.From).Millimeters);
                var less = new RefitChange([.. change.Measures.Select(other => other == measure ? other with { To = other.To - step } : other)]);
                Assert.False(RefitAnswer.Of(less.AppliedTo(each.Sewn), less.AppliedTo(each.Job)).Fits);
            }
        },
        iter: 200);

    /// <summary>The rules told anew, on the boxes and triangles that are drawn.</summary>
    private static bool Suits(RefitCase each, Sides<Length> border, double within)
    {
        var (asked, widest, shape) = (each.Job.Carrier.AskedBorder, each.Job.Carrier.Room.Widest, each.Sewn.With(each.Way().Panel, border));
        bool IsAsWide(Side side) => border[side].Millimeters >= asked[side].Millimeters - within;
        bool IsNotTooWide(Side side) => border[side].Millimeters <= Math.Max(NeededMm(each, side), widest.Millimeters) + within;
        bool IsFreeOfStrip(StripPlace strip) => (strip.Side == Side.Forward ? strip.Finished.Bottom - shape.CellBox.Top : shape.CellBox.Bottom - strip.Finished.Top)
            >= each.Job.Limits.ShadeGap.Millimeters - within;

        // The mouth is a line at 45 degrees, so a gap counted along both edges is 1/√2 of it across.
        bool IsFreeOfPocket(PocketPlace pocket) => pocket.Covers.Millimeters <= 0
            || (pocket.Corner.Of(shape.CellBox) - pocket.EndAthwart) is var step
            && (step.X * -pocket.Corner.OutwardX) + (step.Y * -pocket.Corner.OutwardY) >= each.Job.Limits.ShadeGap.Millimeters - within;
        Side[] sides = [Side.Forward, Side.Aft, Side.Port, Side.Starboard];
        return sides.All(IsAsWide) && sides.All(IsNotTooWide) && shape.Fastened.Strips.All(IsFreeOfStrip) && shape.Fastened.Pockets.All(IsFreeOfPocket);
    }

    private static double NeededMm(RefitCase each, Side side)
    {
        var strip = each.Sewn.Fastenings.WeatherStrip;
        var under = strip.Edges.Contains(side) ? (strip.Overlap + each.Job.Limits.ShadeGap - each.Job.Panel.Fittings.DeadBorder[side]).Millimeters : 0;
        return Math.Max(each.Job.Carrier.AskedBorder[side].Millimeters, under);
    }

    private static IEnumerable<double> Values(Sides<Length> sides) => new[] { sides.Forward, sides.Aft, sides.Port, sides.Starboard }.Select(side => side.Millimeters);

    private static bool Close(double expected, double actual) => Math.Abs(expected - actual) < Near;
}
