using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Thread, needles, basting tape and binding.</summary>
internal static class SewingOrder
{
    /// <summary>For tails and bobbin ends: 10 to 15 per cent is usual in sewing-room costing (apparelscience.com).</summary>
    public const double WasteFactor = 1.15;

    /// <summary>A needle is worn after so much canvas; common practice, no source.</summary>
    private static readonly Length ANeedleSews = Length.FromMeters(20);

    public static IEnumerable<OrderLine> Of(MadeTogether made, ImmutableArray<MadeSeam> seams) =>
        [Thread(made, seams), Needles(made, seams), Basting(made, seams), .. NeedSums.Of(made, Binding)];

    private static OrderLine Thread(MadeTogether made, ImmutableArray<MadeSeam> seams)
    {
        var (job, supplies, units) = (made.Job, made.Job.Workshop.Supplies, made.Job.Units);
        var needed = Sum(made, seams, seam => seam.Thread);
        var (bought, rounding) = SoldBy.Of(OrderList.WithWaste(needed), supplies.Sewing.Thread, units);
        return new(
            new(supplies.Sewing.Thread.Grade.Id, Say.Of($"thread, {job.Workshop.Sewing.Thread}")),
            bought,
            Say.Of($"{Bought.Whole(needed, units)} needle and bobbin together, and 15 % waste; {Bought.Whole(Sum(made, seams, seam => seam.Seam.Sewn), units)} of rows"),
            rounding,
            Use(seams, Say.Of("every seam, its own plies and rows")));
    }

    private static OrderLine Needles(MadeTogether made, ImmutableArray<MadeSeam> seams)
    {
        var grade = made.Job.Workshop.Supplies.Sewing.Needle;
        var count = 1 + (int)Math.Ceiling(Sum(made, seams, seam => seam.Seam.Sewn) / ANeedleSews);
        var (bought, rounding) = SoldBy.Of(count, grade);
        return new(
            new(grade.Grade.Id, grade.Grade.Name),
            bought,
            Say.Of($"{count}: a new one every {ANeedleSews.Meters:0} m of rows and one to spare"),
            rounding,
            Use(seams, Say.Of("every seam")));
    }

    /// <summary>One run of tape between every two faces laid on each other, see <see cref="SewnSeam.Basted"/>.</summary>
    private static OrderLine Basting(MadeTogether made, ImmutableArray<MadeSeam> seams)
    {
        var job = made.Job;
        var fastened = made.Carriers.Select(carrier => carrier.Mounted.Fastened).ToList();
        string[] edges = [.. fastened.All(each => each.Zippers.IsEmpty) ? [] : new[] { Say.Of("zipper halves") }, .. fastened.All(each => each.Flaps.IsEmpty) ? [] : new[] { Say.Of("flaps") }];
        ImmutableArray<MadeSeam> basted = [.. seams.Where(seam => seam.Seam.Basted > Length.Zero)];
        var grade = job.Workshop.Supplies.Tapes.Basting;
        var length = OrderList.WithWaste(Sum(made, basted, seam => seam.Seam.Basted));
        var (bought, rounding) = SoldBy.Of(length, grade.Sold, job.Units);
        return new(
            new(grade.Grade.Id, grade.Grade.Name),
            bought,
            Say.Of("one run between every two faces laid on each other, 15 % waste"),
            rounding,
            Use(basted, Say.Of($"hems, {string.Join(", ", edges)}, pockets, strips, patches, webbing")));
    }

    private static IEnumerable<OrderNeed> Binding(PatternSet patterns)
    {
        var bounds = patterns.WholeCarrier.Shape.Finished.Bounds;
        var edges = patterns.Job.Carrier.Edges;
        var length = Enum.GetValues<Side>()
            .Where(side => edges[side] == EdgeFinish.Binding)
            .Sum(side => side is Side.Forward or Side.Aft ? bounds.WidthMm : bounds.HeightMm);
        if (length > 0)
        {
            var grade = patterns.Job.Workshop.Supplies.Tapes.Binding;
            yield return new(
                default,
                new(grade.Grade.Id, grade.Grade.Name),
                NeedAmount.Of(OrderList.WithWaste(Length.FromMillimeters(length)), grade.Sold, patterns.Job.Units),
                Say.Of($"{LengthText.Of(Length.FromMillimeters(length), patterns.Job.Units)} of edge, 15 % waste"),
                new(Say.Of("the carrier's bound edges"), [.. patterns.CarrierPieces.Select(piece => piece.Key)]));
        }
    }

    /// <summary>Of every seam of all sets.</summary>
    private static Length Sum(MadeTogether made, ImmutableArray<MadeSeam> seams, Func<MadeSeam, Length> part) =>
        Length.FromMillimeters(seams.Sum(seam => part(seam).Millimeters) * made.Sets);

    private static OrderUse Use(ImmutableArray<MadeSeam> seams, string text) => new(text, [.. seams.SelectMany(seam => seam.Seam.Pieces).Distinct()]);
}
