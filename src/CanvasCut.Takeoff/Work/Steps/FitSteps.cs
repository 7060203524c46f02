using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Fits the carrier, and leaves the electric work to those who may do it.</summary>
internal static class FitSteps
{
    /// <summary>The job is looked at again after so long in use; common practice, no source.</summary>
    public static readonly Duration FirstDay = Duration.FromHours(24);

    private static string Live => Say.Of("A panel in light is live: cover it first. Never part connectors under load. Follow the makers and local codes, and ask a licensed electrician where they require one.");

    public static IEnumerable<WorkStep> Of(WorkSubject subject)
    {
        yield return Fit(subject);
        yield return Wire(subject);
        yield return Test(subject);
        yield return Look(subject);
    }

    /// <summary>As in "zip forward, then aft".</summary>
    private static string Closing(WorkSubject subject)
    {
        if (subject.Edges.Length > 2)
        {
            return string.Join(Say.Of(", then "), subject.Edges.Select(edge => Say.Of($"{MountText.Close(edge.Kind)} at the {Words.Of(edge.Side)} edge")));
        }

        var (forward, aft) = (MountText.Close(subject.Edges[0].Kind), MountText.Close(subject.Edges[1].Kind));
        return forward == aft ? Say.Of($"{forward} forward, then aft") : Say.Of($"{forward} forward, then {aft} aft");
    }

    private static WorkStep Fit(WorkSubject subject) =>
        Step(new("fit", WorkStage.Fit, WorkKind.Hand, Say.Of("Fit the carrier"), Say.Of($"Slide the corners into their pockets, {Closing(subject)}{StripSteps.Laid(subject)}. Take it off and put it on again once.")))
            .Using(BondSteps.Result(subject), WorkParts.StretchedTop)
            .Making(WorkParts.Fitted)
            .Needing(WorkAccess.TopStretched)
            .Opening(WorkAccess.CarrierInPlace)
            .Taking(Duration.FromMinutes(20))
            .With(Say.Of("hands"))
            .When(Say.Of("In a calm."))
            .Until(subject.Edges.Length > 2
                ? Say.Of("All edges close by hand; no cell is covered; the box presses on nothing; the corners sit in their pockets.")
                : Say.Of($"Both {(subject.HasZippersOnly ? Say.Of("zippers") : Say.Of("edges"))} close by hand; no cell is covered; the box presses on nothing; the corners sit in their pockets."))
            .Minding(Say.Of("Work at height. The panel is a sail: in any wind two people hold it."))
            .Seen(WorkPicture.OnTop([.. subject.Patterns.Mounted.Panels.Select(panel => Outline.Of(panel.Box)), .. subject.TopParts.Select(part => part.Outline)]));

    private static WorkStep Wire(WorkSubject subject) =>
        Step(new("wire", WorkStage.Fit, WorkKind.Electric, Say.Of("Lead and connect the cable"), Say.Of("Lead the cable with a drip loop below its exit and a tie near it; leave enough slack to take the carrier off. The electric work itself is for someone licensed or competent, after the makers' sheets and the local code; this order does not tell how.")))
            .Using(WorkParts.Fitted)
            .Making(WorkParts.Wired)
            .Taking(Duration.FromMinutes(60))
            .With(Say.Of("ties; the electrician's own"))
            .When(Say.Of("Dry; the panel covered."))
            .Until(Say.Of("Nothing rubs or pulls on the cable; the connectors are dry and locked; the carrier still comes off."))
            .Minding(Live)
            .Seen(WorkPicture.OnTop(subject.Patterns.EachPanel.Select(each => Outline.Of(each.Mounted.JunctionBox ?? each.Mounted.PanelBox))));

    private static WorkStep Test(WorkSubject subject) =>
        Step(new("test", WorkStage.Fit, WorkKind.Electric, Say.Of("Test and write it down"), Say.Of("Whoever may do so measures the voltage with nothing connected and the charging current; fill in the form in care.pdf.")))
            .Using(WorkParts.Wired)
            .Making(WorkParts.Tested)
            .Taking(Duration.FromMinutes(20))
            .Waiting(FirstDay)
            .With(Say.Of("meter, the form"))
            .When(Say.Of("Clear sky about noon, the battery not full."))
            .Until(Say.Of("The open voltage is what the panel's label and the temperature let expect; polarity is right before anything is connected."))
            .Minding(Live)
            .Seen(WorkPicture.OnTop(subject.Patterns.Mounted.Cells.Select(Outline.Of)));

    private static WorkStep Look(WorkSubject subject) =>
        Step(new("look-again", WorkStage.Fit, WorkKind.Look, Say.Of("Look at it after a day"), Say.Of($"Look at seams, {(subject.HasZippersOnly ? Say.Of("zippers") : Say.Of("edges"))}, pockets and the bond; then as care.pdf says, first after the first strong wind.")))
            .Using(WorkParts.Tested)
            .Making(WorkParts.Done)
            .Taking(Duration.FromMinutes(10))
            .With(Say.Of("eyes, hands"))
            .Until(Say.Of("No seam has moved, nothing rubs, the rim of the panel is down all round; the date is on the carrier."))
            .Seen(WorkPicture.OnTop(subject.TopParts.Select(part => part.Outline)));
}
