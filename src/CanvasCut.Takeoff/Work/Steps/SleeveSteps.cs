using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Takeoff.StepWriting;

namespace CanvasCut.Takeoff;

/// <summary>Makes a sleeve, and cuts the rod that goes through it.</summary>
internal static class SleeveSteps
{
    /// <summary>To cut a rod, smooth its ends and try it through; from memory.</summary>
    private static readonly Duration Rodding = Duration.FromMinutes(25);

    /// <summary>The caution of sawing a rod.</summary>
    public static string Splinters => Say.Of("Dust of glass fibre gets into lungs and skin: keep it wet, wear a mask, gloves and glasses.");

    /// <summary>How a sleeve is made of its strip.</summary>
    public static string HowToFold => Say.Of("Cut the openings out with a hot knife while the strip lies flat. Fold the corners in, turn all raw edges in and sew the turned ends. Fold the strip in half and sew the row beside the fold; the ends stay open.");

    /// <summary>What must be true of a sleeve before it is sewn on.</summary>
    public static string Folded(WorkSubject subject) => Say.Of($"It lies flat, the finished edges within {subject.AtMost(2)}; the rod slides through from end to end.");

    /// <summary>The caution of a hot knife.</summary>
    public static string HotKnife => Say.Of("A hot knife burns, and its fumes are bad: gloves, and work in the open.");

    /// <summary>How the flap on the top is sewn.</summary>
    public static string HowToSew => Say.Of("Sew the flap down along its outer edge, all rows; its lugs stay loose, toward the carrier.");

    /// <summary>Cuts the rods and tries them through the carrier's sleeves.</summary>
    public static WorkStep CutRods(WorkSubject subject, ImmutableArray<FlapPlace> flaps)
    {
        var units = subject.Job.Units;
        ImmutableArray<StepPart> parts = [.. flaps.Select(flap => new StepPart(flap.Name, Say.Of($"cut the rod to {LengthText.Of(RodOrder.LengthOf(flap), units)}")))];
        var how = Say.Of($"Cut the rod, round its ends with wet sandpaper and press a cap on each. Thread it through the carrier's sleeve and put a stop on at each end, {LengthText.Of(SleeveSpec.StickOut / 2, units)} in from the cap.");
        return Step(new("cut-rods", WorkStage.Carrier, WorkKind.Hand), new(Say.Of("Cut the rod"), count => Say.Of($"Cut {count} rods"), how, parts))
            .Using(flaps.Select(WorkParts.OnCarrier))
            .Making(flaps.Select(WorkParts.RodOf))
            .Taking(Rodding * flaps.Length)
            .With(Say.Of("fine saw, wet sandpaper"))
            .Until(Say.Of("No end splinters or catches; no stop slips into the sleeve when you pull at it; the rod comes out by hand."))
            .Minding(Splinters)
            .Seen(WorkPicture.On(subject.Patterns.WholeCarrier, flaps.Select(flap => FlapSteps.Centred(subject, flap)).SelectMany(flap => new[] { Outline.Of(flap.Flap), Outline.Of(flap.Rod!.Value) })));
    }
}
