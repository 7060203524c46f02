using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>One piece on the roll: its outline and number, the arrow forward, and its distances where they find room.</summary>
internal static class PlacedFigures
{
    /// <summary>The height of a small number.</summary>
    public const double SmallMm = 1.8;

    private const double TextMm = 1.8;
    private const double RoomMm = 1;

    /// <summary>Below this only the number goes inside.</summary>
    private const double ArrowRoomMm = 14;

    /// <summary>Whether a piece has room for its number; else the number stands beside it.</summary>
    public static bool HasRoom(PlacedPiece placed, View view)
    {
        const double EdgeMm = 0.15;
        var outline = view.Of(placed.Outline);
        return new FreePlace(outline, []).IsFree(Figures.BoundsOf(NumberIn(placed, outline)).Grown(EdgeMm));
    }

    /// <summary>The number in the piece's middle.</summary>
    public static Lettering NumberIn(PlacedPiece placed, Outline outline)
    {
        var center = Witness.ToPolygon(outline).InteriorPoint.Coordinate;
        var room = Math.Min(outline.Bounds.WidthMm, outline.Bounds.HeightMm);
        var height = room > ArrowRoomMm ? 3.5 : room > 6 ? 2.5 : SmallMm;
        return new($"{placed.Number}", new(center.X, center.Y - (height / 2)), height, TextAnchor.Middle, IsBold: true);
    }

    /// <summary>Draws the piece.</summary>
    public static IEnumerable<Figure> Of(PlacedPiece placed, View view, PrintUnits units)
    {
        var outline = view.Of(placed.Outline);
        var room = Math.Min(outline.Bounds.WidthMm, outline.Bounds.HeightMm);
        var number = NumberIn(placed, outline);
        var middle = number.At + new Step(0, number.HeightMm / 2);
        var free = new FreePlace(outline, [number], RoomMm);
        List<Figure> arrow = room > ArrowRoomMm ? [.. Arrow(placed.Forward, Math.Min(12, (room / 2) - 2), free, middle)] : [];
        arrow.ForEach(free.Take);
        return
        [
            new Tint(outline, 0.06), Stroke.Closed(LineRole.Mark, outline) with { Shows = placed.Piece.Key.Id }, .. HasRoom(placed, view) ? [number] : Array.Empty<Figure>(), .. arrow,
            .. WordBlock.Fitting(Wordings(placed.Outline.Bounds, units), TextMm, free, outline.Bounds.LowerLeft),
        ];
    }

    /// <summary>An arrow forward, near the number where there is room for it.</summary>
    private static ImmutableArray<Figure> Arrow(Step forward, double lengthMm, FreePlace free, Point middle)
    {
        const double HeadWidthMm = 2.8;
        var (half, aside) = (forward * (lengthMm / 2), forward.Left * (HeadWidthMm / 2));
        var box = Box.Holding([new Point(0, 0) - half - aside, new Point(0, 0) + half + aside]);
        return free.Find(box.WidthMm, box.HeightMm, middle + half + (forward * 4)) is { } place
            ? Arrows.Between(LineRole.Note, place + new Step(box.WidthMm / 2, box.HeightMm / 2) - half, place + new Step(box.WidthMm / 2, box.HeightMm / 2) + half, isTwoHeaded: false)
            : [];
    }

    /// <summary>The distances in two lines, in one, in four.</summary>
    private static string[][] Wordings(Box place, PrintUnits units)
    {
        var (end, selvage) = (LengthText.Of(Length.FromMillimeters(place.Left), units), LengthText.Of(Length.FromMillimeters(place.Bottom), units));
        return
        [
            [Say.Of($"{end} from the cut end"), Say.Of($"{selvage} from the selvage")],
            [Say.Of($"{end} from the cut end, {selvage} from the selvage")],
            [end, Say.Of("from the cut end"), selvage, Say.Of("from the selvage")],
        ];
    }
}
