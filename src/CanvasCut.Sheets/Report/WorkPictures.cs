using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>The small picture of a step: thin what is there, strong what the step is about.</summary>
internal static class WorkPictures
{
    private const double CaptionMm = 1.8;

    /// <summary>Draws a picture into a frame.</summary>
    public static IEnumerable<Figure> Of(WorkPicture picture, MadeTogether made, Box frame)
    {
        var inner = frame with { Bottom = frame.Bottom + CaptionMm + 1.5 };
        return picture.Piece is { } piece ? OfPiece(picture, piece, inner, frame) : OfTop(picture, made, inner, frame);
    }

    private static IEnumerable<Figure> OfPiece(WorkPicture picture, PatternPiece piece, Box inner, Box frame)
    {
        var view = Scaled(piece.Shape.Cut.Bounds, inner);
        yield return view.Line(LineRole.Note, piece.Shape.Cut);
        foreach (var line in picture.Lines)
        {
            yield return new Stroke(RoleOf(line.Kind), [.. line.Points.Select(view.Of)], line.IsClosed);
        }

        yield return Caption(piece.Title.Name, frame);
    }

    /// <summary>The whole top when the step is about it, else only what is mounted.</summary>
    private static IEnumerable<Figure> OfTop(WorkPicture picture, MadeTogether made, Box inner, Box frame)
    {
        var (top, extent) = (Plan.Of(made.Job.Top), made.Carriers.Select(carrier => carrier.Mounted.Extent).Aggregate((all, next) => all.Joined(next)));
        var near = extent.Grown(Math.Max(extent.WidthMm, extent.HeightMm) * 0.06);
        var shown = picture.Lines.All(line => near.Holds(Box.Holding(line.Points))) ? near : top.Joined(near);
        var view = Scaled(shown, inner);
        foreach (var band in made.Job.Top.Bows.Select(bow => Plan.BandOf(made.Job.Top, bow).Shared(shown)).Where(band => band is { WidthMm: > 0, HeightMm: > 0 }).Select(band => Plan.OnTop(made.Job.Top, band)).OfType<Outline>())
        {
            yield return new Tint(view.Of(band), 0.2);
        }

        foreach (var band in made.Job.Top.Tubes.Select(tube => Plan.BandOf(tube).Shared(Outline.Of(shown))).OfType<Outline>())
        {
            yield return new Tint(view.Of(band), 0.2);
        }

        foreach (var line in picture.Lines.Where(line => line.IsClosed))
        {
            yield return new Tint(new Outline([.. line.Points.Select(view.Of)]), 0.12);
        }

        foreach (var thin in made.Carriers.Select(carrier => Outline.Of(carrier.Mounted.CarrierBox)).Prepend(Plan.OutlineOf(made.Job.Top)).Where(line => shown.Holds(line.Bounds)))
        {
            yield return view.Line(LineRole.Note, thin);
        }

        foreach (var line in picture.Lines)
        {
            yield return new Stroke(RoleOf(line.Kind), [.. line.Points.Select(view.Of)], line.IsClosed);
        }

        yield return Caption(shown != near ? Say.Of("the top, forward up") : made.HasSeveral ? Say.Of("the carriers, forward up") : Say.Of("the carrier, forward up"), frame);
    }

    /// <summary>As large as the frame allows: no one measures on these.</summary>
    private static View Scaled(Box content, Box frame)
    {
        var scale = Math.Min(frame.WidthMm / content.WidthMm, frame.HeightMm / content.HeightMm);
        return new(scale, frame.Center - new Point(content.Center.X * scale, content.Center.Y * scale));
    }

    private static LineRole RoleOf(PieceLineKind kind) => kind switch
    {
        PieceLineKind.Stitch => LineRole.Stitch,
        PieceLineKind.Fold => LineRole.Fold,
        _ => LineRole.Cut,
    };

    private static Lettering Caption(string text, Box frame) =>
        new(TextWidth.Shortened(text, frame.WidthMm, CaptionMm, isBold: false), new(frame.Center.X, frame.Bottom + 0.6), CaptionMm, TextAnchor.Middle);
}
