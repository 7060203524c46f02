using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether what lies in a pocket finds room inside the rows that hold its legs.</summary>
internal static class PocketRoomCheck
{
    private static string Source => Say.Of("as much as from a row to a fold (common practice, no source)");

    /// <summary>The room of one pocket, at the leg where it is least.</summary>
    public static CheckResult Of(CarrierJob job, MountedShape mounted, PocketPlace pocket)
    {
        var room = UnitMath.Min(Beside(job, mounted, pocket, pocket.Corner.Hand), Beside(job, mounted, pocket, pocket.Corner.End));
        var ease = RulerSteps.Up(job.Fastenings.Pocket.Ease + PocketRoom.Least - room, RulerSteps.Of(job.Units));
        return CheckResult.Judged(
            (CheckCodes.PocketBeside, Say.Of($"{pocket.Corner} pocket, room beside what lies in it")),
            Measured.AtLeast(room, PocketRoom.Least),
            Verdict.Fail,
            Source,
            Say.Of($"The innermost row of a leg comes too near the carrier as it is sewn, or runs through what holds its edge: set pocket.ease to {LengthText.Of(ease, job.Units)} or more, or sew fewer rows (sewing.rows)."));
    }

    /// <summary>From the innermost row at one side in to the carrier as it is sewn, or to what holds its edge where the row passes that.</summary>
    private static Length Beside(CarrierJob job, MountedShape mounted, PocketPlace pocket, Side side)
    {
        var (isEnd, row) = (side is Side.Forward or Side.Aft, PocketRoom.InnermostRow(job.Workshop.Sewing));
        var (finished, shrink) = isEnd
            ? (mounted.CarrierBox.HeightMm, job.Workshop.Cloth.ShrinkForeAft)
            : (mounted.CarrierBox.WidthMm, job.Workshop.Cloth.ShrinkAthwart);
        var carrier = ClothSpec.GrownBy(Length.FromMillimeters(finished), shrink);
        var held = Reach(pocket, row, mounted.Fastened.Edges.SingleOrDefault(edge => edge.Side == side), mounted.CarrierBox);
        return (isEnd ? pocket.OutY : pocket.OutX) - row - UnitMath.Max(carrier, held);
    }

    /// <summary>How far out what holds an edge reaches, if it comes under the row, which ends at the pocket's mouth.</summary>
    private static Length Reach(PocketPlace pocket, Length row, EdgePlace? edge, Box carrier)
    {
        var alongEdge = pocket.Leg - row - (edge is { IsEnd: true } ? pocket.OutX : pocket.OutY);
        if (edge is null || edge.Setback > alongEdge)
        {
            return Length.Zero;
        }

        var (band, turned) = (edge.AsEnd.Band, edge.Frame.Turned(carrier));
        return Length.FromMillimeters(edge.Outward > 0 ? band.Top - turned.Top : turned.Bottom - band.Bottom);
    }
}
