using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Docs;

/// <summary>A rod in its sleeves, of the sample job.</summary>
internal static class SleeveFigures
{
    private static readonly MountedShape Mounted = MountedShape.Of(SampleJobs.Plain.Held(MountKind.Sleeve, MountKind.Zipper), LongSide.Athwart);
    private static readonly FlapPlace Flap = Mounted.Fastened.Flaps.Single();
    private static readonly SleeveSpec Spec = Flap.Parts.Sleeve!;

    /// <summary>Above the lugs along the rod from the port end, below a section through one.</summary>
    public static Sheet Sleeve()
    {
        var page = new DocPage("rod-sleeve", "A rod through two sleeves", new(180, 118));
        return Section(Plan(page)).ToSheet();
    }

    private static DocPage Plan(DocPage page)
    {
        var (edge, lugs) = (Mounted.CarrierBox.Top, SleeveLug.Of(Flap).Take(4).ToList());
        var window = new Box(Flap.Flap.Left - 32, edge - 16, Flap.Flap.Left + 290, edge + 54);
        var view = DocView.Putting(window.LowerLeft, new(4, 66), 0.42);
        var (line, rod, second, third) = (view.Of(0, edge).Y, view.Of(Flap.Rod!.Value), view.Of(lugs[1].Box), view.Of(lugs[2].Box));
        page.Add(view.Clipped(
            window,
            [
                view.Shade(Outline.Of(Mounted.CarrierBox), 0.1),
                .. lugs.Select(lug => view.Line(lug.IsOnTop ? LineRole.Stitch : LineRole.Mark, lug.Box)),
                view.Shade(Outline.Of(Flap.Rod!.Value), 0.6),
                view.Line(LineRole.Cut, new(window.Left, edge), new(window.Right, edge)),
            ]));
        return page
            .Across((second.Left - (Spec.Gap.Millimeters * 0.21), third.Left - (Spec.Gap.Millimeters * 0.21)), (100, second.Top), "run / lugs")
            .Across((third.Right, third.Right + (Spec.Gap.Millimeters * 0.42)), (64, line), "gap")
            .Upright((line, rod.Center.Y), (146, 130), "rod's middle")
            .Text("carrier", new(8, 68))
            .Callout("a lug of the carrier", third.Center - new Step(14, 3), new(56, 62))
            .Callout("a lug of the top", second.Center + new Step(12, 3), new(96, 107))
            .Callout("rod, its end for stop and cap", new(rod.Left + 2, rod.Center.Y), new(6, 107));
    }

    private static DocPage Section(DocPage page)
    {
        const double Scale = 1.7;
        var view = DocView.Putting(new(-SleeveSpec.SewnDown.Millimeters, 0), new(30, 28), Scale);
        var (land, rod) = (SleeveSpec.Land.Millimeters, Spec.ToRod.Millimeters);
        Band loop = new(land, rod, Spec.Rod.Millimeters / 2);
        page.Add(
            view.Shade(RoundedBox.Circle(new(rod, 0), Spec.Rod.Millimeters / 2), 0.5),
            new Stroke(LineRole.Cut, [.. loop.Points(-SleeveSpec.SewnDown.Millimeters).Select(view.Of)], IsClosed: false),
            new Stroke(LineRole.Stitch, [.. loop.Points(-SleeveSpec.SewnDown.Millimeters).Select(point => view.Of((2 * rod) - point.X, point.Y))], IsClosed: false),
            view.Line(LineRole.Cut, new(-SleeveSpec.SewnDown.Millimeters - 12, 1.6), new(0, 1.6)),
            view.Line(LineRole.Mark, new((2 * rod) - land - 4, -1.6), new((2 * rod) + SleeveSpec.SewnDown.Millimeters + 10, -1.6)),
            view.Line(LineRole.Note, new(0, -5), new(0, 5)),
            view.Line(LineRole.Note, new(land, -3.5), new(land, 3.5)));
        var (edge, row, middle) = (view.Of(0, 0), view.Of(land, 0), view.Of(rod, 0));
        return page
            .Across((row.X, middle.X), (12, middle.Y), "x")
            .Across((edge.X, row.X), (6, row.Y), "1/4 in, from the edge to the row")
            .Callout("carrier's edge", view.Of(-18, 1.6), new(8, 44))
            .Callout("carrier's sleeve", view.Of(rod + 3.4, 3.4), new(66, 50))
            .Callout("the top's sleeve, mirrored", view.Of((2 * rod) - land - 3, 1.2), new(112, 44))
            .Callout("top", view.Of((2 * rod) + 18, -1.6), new(150, 14));
    }

    /// <summary>A band from a row round a rod and back.</summary>
    private sealed record Band(double RowMm, double MiddleMm, double RadiusMm)
    {
        private const int Steps = 40;
        private const double PlyMm = 0.5;

        /// <summary>From where the upper ply is sewn on, out, round, and back along the lower.</summary>
        public IEnumerable<Point> Points(double fromMm)
        {
            var touch = Math.PI - Math.Acos(RadiusMm / (MiddleMm - RowMm));
            var arc = Enumerable.Range(0, Steps + 1)
                .Select(i => touch - (2 * touch * i / Steps))
                .Select(angle => new Point(MiddleMm + (RadiusMm * Math.Cos(angle)), RadiusMm * Math.Sin(angle)));
            return [new(fromMm, PlyMm), new(RowMm, PlyMm), .. arc, new(RowMm, -PlyMm), new(fromMm, -PlyMm)];
        }
    }
}
