using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>
/// Tells where what holds an edge of the carrier passes over a tube, and what the program does not cut for a slanted tube; fasteners are looked
/// at one by one by <see cref="FitChecks"/>.
/// </summary>
internal static class SideChecks
{
    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted) =>
    [
        .. from side in mounted.Fastened.Sides
           where side is not FlapPlace { Fasteners: not null }
           from bow in job.Top.Bows.Index()
           where !Plan.BandOf(job.Top, bow.Item).Shared(side.Band).IsEmpty
           select Over(side, Say.Of($"{side.Name} over bow {bow.Index + 1}")),
        .. from tube in job.Top.Tubes.Index()
           from edge in mounted.Fastened.Edges
           where edge.IsEnd == tube.Item.RunsForeAft && edge is not FlapPlace { Fasteners: not null } && LiesOn(edge.Band, tube.Item)
           select Over(edge, Say.Of($"{edge.Name} over {tube.Item.Name}")).On(new PartKeys(job).Fastening(edge.Side), PartKey.Tube(tube.Index + 1)),
        .. from tube in job.Top.Tubes.Index()
           where mounted.Fastened.Edges.Select(edge => edge.Band).Append(mounted.CarrierBox).Any(box => LiesOn(box, tube.Item))
           select Patch(job, mounted, tube.Item, PartKey.Tube(tube.Index + 1)),
    ];

    private static bool LiesOn(Box box, TopTube tube) =>
        ConvexZone.Around([Plan.Of(tube.From), Plan.Of(tube.To)], box).DistanceMm(0, 0) < tube.Diameter.Millimeters / 2;

    private static CheckResult Over(EdgePlace edge, string subject) => new(
        edge.Kind == MountKind.Zipper ? CheckCodes.TubeZipper : CheckCodes.TubeMount,
        subject,
        Verdict.Caution,
        Measured.Nothing,
        LimitSource.Practice,
        Say.Of("It passes over the tube and is worn there from below: sew the chafe patch under it first, and look at this place in every six-month check."));

    /// <summary>The patch along a tube that is no bow is told in figures, for no pattern is drawn of it.</summary>
    private static CheckResult Patch(CarrierJob job, MountedShape mounted, TopTube tube, PartKey key)
    {
        var (from, to) = (Plan.Of(tube.From), Plan.Of(tube.To));
        var under = mounted.Bounds.Aggregate((all, next) => all.Joined(next)).PartOf(from, to);
        var length = UnitsNet.Length.FromMillimeters(under is { } part ? part.From.DistanceMm(part.To) : 0) + tube.Diameter;
        var width = tube.Diameter + (job.Fastenings.Chafe.WidthBeyondTube * 2);
        var turn = job.Fastenings.Chafe.TurnUnder * 2;
        return new CheckResult(
            CheckCodes.TubePatch,
            Say.Of($"chafe patch along {tube.Name}"),
            Verdict.Caution,
            Measured.Nothing,
            LimitSource.Practice,
            Say.Of($"The carrier rubs on this tube, and the patch between top and tube is neither drawn nor ordered: cut one {LengthText.Of(length + turn, job.Units)} by {LengthText.Of(width + turn, job.Units)}, turn its edges under, and sew it along the tube before the carrier's fastenings.")).On(new PartKeys(job).Carrier, key);
    }
}
