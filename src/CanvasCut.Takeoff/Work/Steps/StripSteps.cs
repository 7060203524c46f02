using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>The weather strips that are sewn to the carrier, while it is made; and what is told of strips when all is fitted.</summary>
internal static class StripSteps
{
    public static IEnumerable<WorkStep> OnCarrier(WorkSubject subject)
    {
        if (!subject.CarrierStrips.IsEmpty)
        {
            yield return Ready(subject);
            yield return Sew(subject);
        }
    }

    /// <summary>What is done with the strips when the carrier is closed; nothing without strips.</summary>
    public static string Laid(WorkSubject subject) =>
        subject.HasStrips ? Say.Of($"; lay the strip over the {(subject.HasZippersOnly ? Say.Of("zipper") : Say.Of("edge"))}{StripHoldSteps.Closed(subject)}") : string.Empty;

    private static WorkStep Ready(WorkSubject subject)
    {
        ImmutableArray<StepPart> parts = [.. subject.CarrierStrips.Select(piece => new StepPart(piece.Name, string.Empty))];
        var how = Say.Of("Fold the ends once, their raw edges sealed with a hot knife, and hem the free edge; turn the seam edge under and tape it.");
        return Step(new("ready-carrier-strips", WorkStage.Carrier, WorkKind.Machine), new(Say.Of("Hem three sides"), count => Say.Of($"Hem three sides of {count} strips"), how, parts))
            .On(subject.CarrierStrips.SelectMany(piece => piece.Widths))
            .Using(subject.CarrierStrips.SelectMany(piece => piece.Flat))
            .Making(subject.CarrierStrips.Select(piece => WorkParts.Ready(piece.Key)))
            .Taking(WorkTimes.Sewing(WholePiece.RowsOf(subject.CarrierStrips)))
            .With(Say.Of("machine, basting tape"))
            .Until(Say.Of($"It lies flat on its template, the finished edges within {subject.AtMost(2)}."))
            .Seen(WorkPicture.Of(subject.CarrierStrips[0].Widths[0], PieceLineKind.Fold, PieceLineKind.Stitch));
    }

    private static WorkStep Sew(WorkSubject subject)
    {
        var centred = CarrierSteps.Centred(subject);
        StripPlace[] places = [.. centred.Fastened.StripsOnCarrier];
        ImmutableArray<StepPart> parts = [.. subject.CarrierStrips.Zip(places, (piece, place) => new StepPart(
            piece.Name,
            Say.Of($"{subject.Text(place.SeamInside(centred.CarrierBox).Millimeters)} inside the carrier's edge")))];
        var how = Say.Of("Lay the strip on the carrier's face, its turned edge on its mark, its ends clear of the pockets, and sew all rows; it falls outward over the closed edge.");
        return Step(new("sew-strips-carrier", WorkStage.Carrier, WorkKind.Machine), new(Say.Of("Sew to the carrier"), count => Say.Of($"Sew {count} weather strips to the carrier"), how, parts))
            .On([.. subject.Carrier.Widths, .. subject.CarrierStrips.SelectMany(piece => piece.Widths)])
            .Using([.. subject.Edges.Select(WorkParts.OnCarrier), .. subject.CarrierStrips.Select(piece => WorkParts.Ready(piece.Key))])
            .Making(subject.CarrierStrips.Select(piece => WorkParts.OnCarrier(piece.Key)))
            .Needing(WorkAccess.CarrierUnderNeedle)
            .Taking(WorkTimes.Sewing(WholePiece.RowsOf(subject.CarrierStrips)))
            .With(Say.Of("machine, basting tape"))
            .Until(Say.Of($"Within {subject.AtMost(2)} of its marks; each row begins and ends with {subject.Text(25)} of overstitching (US Army TM 10-8340)."))
            .Minding(CarrierSteps.Layers)
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, places.Select(strip => Outline.Of(strip.Finished))));
    }
}
