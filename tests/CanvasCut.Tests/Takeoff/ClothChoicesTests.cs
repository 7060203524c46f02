using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Job;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

/// <summary>The rolls on sale, the turns and the seam, with a short search.</summary>
public sealed class ClothChoicesTests
{
    private static readonly ImmutableArray<ClothChoice> Choices = ChoicesOf(SampleJobs.Plain);

    /// <summary>
    /// The carrier is about 1216 mm across its warp, so the 1168.4 mm roll needs a seam unless quarters are allowed: two rolls, three
    /// turns, with and without; less the two ways that cannot be.
    /// </summary>
    [Fact]
    public void Every_way_that_can_be_is_there_once()
    {
        Assert.Equal(10, Choices.Length);
        Assert.Equal(10, Choices.Select(choice => (choice.Plan.Roll.Width, choice.Turns, choice.HasSeam)).Distinct().Count());
        Assert.Equal((1524.0, RollTurns.Half, false), (Assert.Single(Choices, choice => choice.IsOwn) is var own ? own.Plan.Roll.Width.Millimeters : 0, own.Turns, own.HasSeam));
        Assert.All(Choices.Where(choice => choice is { HasSeam: false, Turns: not RollTurns.Quarter }), choice => Assert.Equal(1524, choice.Plan.Roll.Width.Millimeters));
    }

    [Fact]
    public void Cloth_that_has_an_up_and_a_down_is_never_turned() =>
        Assert.All(ChoicesOf(SampleJobs.Plain.On(SampleJobs.Cloth with { Lay = SampleJobs.Cloth.Lay with { OneWay = true } })), choice =>
        {
            Assert.Equal(RollTurns.None, choice.Turns);
            Assert.Empty(choice.EndForEnd.Concat(choice.Across));
        });

    /// <summary>By NetTopologySuite.</summary>
    [Fact]
    public void In_every_way_the_pieces_lie_apart_and_between_the_selvages() => Assert.All(Choices, choice =>
    {
        var plan = choice.Plan;
        var usable = Outline.Of(new(0, 12.7, plan.Used.Millimeters, plan.Roll.Width.Millimeters - 12.7));
        Assert.Equal(choice.Made.Pieces.Sum(piece => piece.Title.Quantity), plan.Placed.Length);
        Assert.All(plan.Placed, placed => Assert.True(Witness.OutsideMm2(placed.Outline, usable) < 1e-6));
        Assert.All(
            plan.Placed.SelectMany((first, i) => plan.Placed.Skip(i + 1).Select(second => (first, second))),
            pair => Assert.True(Witness.DistanceMm(pair.first.Outline, pair.second.Outline) >= 5 - 1e-6));
    });

    /// <summary>Whoever may turn more has all the layouts of whoever may turn less, as long as the pieces are cut alike.</summary>
    [Fact]
    public void More_turns_or_a_wider_roll_never_take_more_length()
    {
        var compared =
            from one in Choices
            from other in Choices
            where other.Turns >= one.Turns && other.Plan.Roll.Width >= one.Plan.Roll.Width
            where one.Made.Pieces.Select(piece => piece.Key.Id).SequenceEqual(other.Made.Pieces.Select(piece => piece.Key.Id))
            where !one.HasSeam && !other.HasSeam && !one.IsOwn && !other.IsOwn
            select (one.Plan.Used.Millimeters, other.Plan.Used.Millimeters);

        Assert.True(compared.Count() >= 4);
        Assert.All(compared, lengths => Assert.True(lengths.Item2 <= lengths.Item1 + 1e-9));
    }

    [Fact]
    public void What_asks_for_more_and_saves_nothing_is_not_told()
    {
        var told = ClothChoices.WorthTelling(Choices);

        Assert.Contains(told, choice => choice.IsOwn);
        Assert.All(told.Where(choice => choice is { IsOwn: false, HasSeam: true }), choice => Assert.All(
            Choices.Where(other => !other.HasSeam && other.Turns <= choice.Turns && Math.Abs((other.Plan.Roll.Width - choice.Plan.Roll.Width).Millimeters) < 1),
            other => Assert.True(other.Plan.Ordered > choice.Plan.Ordered)));
    }

    [Fact]
    public void What_is_given_up_is_told_in_words()
    {
        var whole = Choices.First(choice => choice is { HasSeam: false, Turns: RollTurns.None });
        var seamed = Choices.First(choice => choice is { HasSeam: true, Turns: RollTurns.None });
        var turned = Choices.First(choice => choice is { HasSeam: false, Turns: RollTurns.Quarter });

        Assert.Equal("nothing", ClothChoiceText.GivenUp(whole));
        Assert.StartsWith("a felled seam in the carrier, a ridge under the panel", ClothChoiceText.GivenUp(seamed), StringComparison.Ordinal);
        Assert.Equal(1168.4, turned.Plan.Roll.Width.Millimeters, 1e-9);
        Assert.Contains("the grain runs the other way in: carrier", ClothChoiceText.GivenUp(turned), StringComparison.Ordinal);
    }

    /// <summary>By hand: 21.40 a metre of 1500 mm, so 17.83 of 1250 mm; rounded to cents, half away from zero.</summary>
    [Fact]
    public void The_cost_is_the_price_of_the_own_roll_and_by_width_of_another()
    {
        var patterns = ExampleTests.OutcomeOf("priced-own-materials").Content.Patterns;
        var job = patterns.Job with { Workshop = patterns.Job.Workshop with { Buying = patterns.Job.Workshop.Buying with { RollWidths = [SampleJobs.Mm(1250)] } } };
        var price = job.Workshop.Buying.Prices!.Of(job.Workshop.Supplies.Cloth.Grade.Id, null)!.Amount;

        var choices = ChoicesOf(job);

        Assert.Equal(21.40m, price);
        Assert.All(choices, choice =>
        {
            var isOwn = choice.Plan.Roll.Width.Millimeters > 1400;
            var metres = (decimal)Math.Round(choice.Plan.Ordered.Meters, 3);
            Assert.Equal(decimal.Round(metres * price * (isOwn ? 1m : 1250m / 1500m), 2, MidpointRounding.AwayFromZero), choice.Cost!.Amount);
            Assert.Equal(!isOwn, choice.Cost.IsByWidth);
        });
    }

    private static ImmutableArray<ClothChoice> ChoicesOf(CarrierJob job)
    {
        var (patterns, search) = (PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart)), new BottomLeftSearch(20));
        return ClothChoices.Of(MadeTogether.Of(patterns), CutPlan.Of(patterns, search), search);
    }
}
