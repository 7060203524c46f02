using CanvasCut.Geometry;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Fits the carrier, and leaves the electric work to those who may do it.</summary>
internal static class FitSteps
{
    /// <summary>The job is looked at again after so long in use; common practice, no source.</summary>
    public static readonly Duration FirstDay = Duration.FromHours(24);

    private const string Live = "A panel in light is live: cover it first. Never part connectors under load. Follow the makers and local codes, and ask a licensed electrician where they require one.";

    public static IEnumerable<WorkStep> Of(WorkSubject subject)
    {
        yield return Fit(subject);
        yield return Wire(subject);
        yield return Test(subject);
        yield return Look(subject);
    }

    private static bool HasZippersOnly(WorkSubject subject) => subject.Patterns.Mounted.Fastened.HasEndZippersOnly;

    /// <summary>As in "zip forward, then aft".</summary>
    private static string Closing(WorkSubject subject)
    {
        var (forward, aft) = (MountText.Close(subject.Edges[0].Kind), MountText.Close(subject.Edges[1].Kind));
        return forward == aft ? $"{forward} forward, then aft" : $"{forward} forward, then {aft} aft";
    }

    private static WorkStep Fit(WorkSubject subject) =>
        Step(new("fit", WorkStage.Fit, WorkKind.Hand, "Fit the carrier", $"Slide the corners into their pockets, {Closing(subject)}; lay the strip over the {(HasZippersOnly(subject) ? "zipper" : "edge")}. Take it off and put it on again once."))
            .Using(BondSteps.Result(subject), WorkParts.StretchedTop)
            .Making(WorkParts.Fitted)
            .Needing(WorkAccess.TopStretched)
            .Opening(WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(20))
            .With("hands")
            .When("In a calm.")
            .Until($"Both {(HasZippersOnly(subject) ? "zippers" : "edges")} close by hand; no cell is covered; the box presses on nothing; the corners sit in their pockets.")
            .Minding("Work at height. The panel is a sail: in any wind two people hold it.")
            .Seen(WorkPicture.OnTop([Outline.Of(subject.Patterns.Mounted.PanelBox), .. subject.TopParts.Select(part => part.Outline)]));

    private static WorkStep Wire(WorkSubject subject) =>
        Step(new("wire", WorkStage.Fit, WorkKind.Electric, "Lead and connect the cable", "Lead the cable with a drip loop below its exit and a tie near it; leave enough slack to take the carrier off. The electric work itself is for someone licensed or competent, after the makers' sheets and the local code; this order does not tell how."))
            .Using(WorkParts.Fitted)
            .Making(WorkParts.Wired)
            .Taking(Duration.FromMinutes(60))
            .With("ties; the electrician's own")
            .When("Dry; the panel covered.")
            .Until("Nothing rubs or pulls on the cable; the connectors are dry and locked; the carrier still comes off.")
            .Minding(Live)
            .Seen(WorkPicture.OnTop(Outline.Of(subject.Patterns.Mounted.JunctionBox ?? subject.Patterns.Mounted.PanelBox)));

    private static WorkStep Test(WorkSubject subject) =>
        Step(new("test", WorkStage.Fit, WorkKind.Electric, "Test and write it down", "Whoever may do so measures the voltage with nothing connected and the charging current; fill in the form in care.pdf."))
            .Using(WorkParts.Wired)
            .Making(WorkParts.Tested)
            .Taking(Duration.FromMinutes(20))
            .Waiting(FirstDay)
            .With("meter, the form")
            .When("Clear sky about noon, the battery not full.")
            .Until("The open voltage is what the panel's label and the temperature let expect; polarity is right before anything is connected.")
            .Minding(Live)
            .Seen(WorkPicture.OnTop(Outline.Of(subject.Patterns.Mounted.CellBox)));

    private static WorkStep Look(WorkSubject subject) =>
        Step(new("look-again", WorkStage.Fit, WorkKind.Look, "Look at it after a day", $"Look at seams, {(HasZippersOnly(subject) ? "zippers" : "edges")}, pockets and the bond; then as care.pdf says, first after the first strong wind."))
            .Using(WorkParts.Tested)
            .Making(WorkParts.Done)
            .Taking(Duration.FromMinutes(10))
            .With("eyes, hands")
            .Until("No seam has moved, nothing rubs, the rim of the panel is down all round; the date is on the carrier.")
            .Seen(WorkPicture.OnTop(subject.TopParts.Select(part => part.Outline)));
}
