using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>What takes the place of sewing to the top when its half is sewn already.</summary>
internal static class RefitSteps
{
    public static WorkStep LookOver(WorkSubject subject) =>
        Step(new("look-over-top", WorkStage.Prepare, WorkKind.Look, Say.Of("Look over what is sewn to the top"), Say.Of("Try each new zipper half in its half on the top before it is sewn to the carrier; a half of another make may not mate. Pick at the thread of every row, and measure the chains and pockets against the table of marks.")))
            .Using(WorkParts.Measures)
            .Making(WorkParts.StretchedTop)
            .Needing(WorkAccess.TopStretched)
            .Taking(Duration.FromMinutes(30))
            .With(Say.Of("tape measure, the zipper halves"))
            .When(Say.Of("The top stretched as it is used."))
            .Until(Say.Of($"Both zippers close by hand; no stitch breaks; chains and pocket corners lie at their marks within {subject.AtMost(3)}."))
            .Minding(TopSteps.Height)
            .Seen(WorkPicture.OnTop([Outline.Of(subject.Patterns.Mounted.CarrierBox), .. subject.Zippers.Select(zipper => Outline.Of(zipper.Band))]));
}
