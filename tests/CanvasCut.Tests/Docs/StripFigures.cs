using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Docs;

/// <summary>Weather strips that are sewn to the carrier, and what holds a free edge.</summary>
internal static class StripFigures
{
    private static readonly CarrierJob Job = (SampleJobs.Plain with { Carrier = SampleJobs.Carrier with { Border = Sides.All(SampleJobs.Mm(25.4)) } })
        .HeldAtSides(MountKind.Zipper, MountKind.Zipper)
        .With(SampleJobs.Pocket with { Leg = SampleJobs.Mm(120) }, strip: SampleJobs.Strip with { SewnTo = Sides.All(StripGround.Carrier) });

    private static readonly MountedShape Mounted = MountedShape.Of(Job, LongSide.Athwart);

    public static Sheet OnCarrier()
    {
        var (strip, pocket, zipper) = (Mounted.Fastened.Strips[0], Mounted.Fastened.Pockets[1], Mounted.Fastened.Zippers[0]);
        var corner = pocket.Corner.Of(Mounted.CarrierBox);
        var window = new Box(corner.X - 120, corner.Y - 62, corner.X + 50, corner.Y + 60);
        var view = DocView.Putting(window.LowerLeft, new(5, 12), 0.8);
        var (box, seam, at) = (view.Of(strip.Finished), view.Of(strip.Seam.To).Y, view.Of(corner));
        var tape = view.Of(zipper.Band).Top;
        var rows = Enumerable.Range(0, Job.Workshop.Sewing.Rows).Select(row => strip.Seam.From.Y + StitchRows.DistanceFromFold(row).Millimeters);
        return new DocPage("strip-on-carrier", "A weather strip sewn to the carrier", new(178, 118))
            .Add(view.Clipped(
                window,
                [
                    view.Shade(Outline.Of(Mounted.CellBox), 0.2),
                    view.Shade(Outline.Of(strip.Finished), 0.12),
                    view.Line(LineRole.Cut, Mounted.CarrierBox),
                    view.Line(LineRole.Mark, Mounted.PanelBox),
                    .. Mounted.Fastened.Zippers.Select(each => view.Line(LineRole.Mark, each.Band)),
                    view.Line(LineRole.Cut, pocket.Outline),
                    view.Line(LineRole.Cut, strip.Finished),
                    .. rows.Select(row => view.Line(LineRole.Stitch, new(strip.Finished.Left, row), new(strip.Finished.Right, row))),
                ]))
            .Across((box.Right, at.X), (6, seam), "covers + 6 mm")
            .Upright((seam, at.Y), (146, box.Right), "u + 3 + i")
            .Upright((at.Y, tape), (146, box.Right), "reach")
            .Upright((tape, box.Top), (146, box.Right), "overlap")
            .Callout("sewn edge, on the carrier", new(30, seam), new(14, 114))
            .Callout("free edge, over the top", new(68, box.Top), new(72, 114))
            .Callout("pocket", view.Of(pocket.At - new Step(4, 60)), new(146, 36))
            .Callout("carrier's edge", view.Of(corner - new Step(0, 56)), new(146, 24))
            .Callout("panel", view.Of(Mounted.PanelBox.Right, corner.Y - 58), new(146, 16))
            .ToSheet();
    }
}
