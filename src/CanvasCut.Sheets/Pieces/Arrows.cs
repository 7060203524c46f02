using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>Arrows made of lines, so that every format and font can draw them.</summary>
internal static class Arrows
{
    private const double HeadMm = 4;

    /// <summary>An arrow with a head at its end, or at both ends.</summary>
    public static ImmutableArray<Figure> Between(LineRole role, Point from, Point to, bool isTwoHeaded)
    {
        var shaft = Stroke.Open(role, from, to);
        return isTwoHeaded ? [shaft, Head(role, from, to), Head(role, to, from)] : [shaft, Head(role, from, to)];
    }

    /// <summary>An upright arrow that says FORWARD, its lower left corner at the origin.</summary>
    public static Block Forward(double heightMm)
    {
        const double TextMm = 3;
        var width = TextWidth.Of(Say.Of("FORWARD"), TextMm, isBold: true);
        return new(
        [
            .. Between(LineRole.Note, new(width / 2, TextMm + 2), new(width / 2, heightMm), isTwoHeaded: false),
            new Lettering(Say.Of("FORWARD"), new(width / 2, 0), TextMm, TextAnchor.Middle, IsBold: true),
        ],
            width,
            heightMm);
    }

    /// <summary>A two-headed arrow along the warp, with its word, its lower left corner at the origin.</summary>
    public static Block Grain(double lengthMm, bool isUpright)
    {
        const double TextMm = 2.5;
        const double RoomMm = 6;
        return isUpright
            ? new([.. Between(LineRole.Grain, new(RoomMm, 0), new(RoomMm, lengthMm), true), new Lettering(Say.Of("warp"), new(RoomMm - 2.8, lengthMm / 2), TextMm, TextAnchor.Middle, 90)], RoomMm + 2, lengthMm)
            : new([.. Between(LineRole.Grain, new(0, 2), new(lengthMm, 2), true), new Lettering(Say.Of("warp"), new(lengthMm / 2, 4), TextMm, TextAnchor.Middle)], lengthMm, RoomMm + 2);
    }

    private static Stroke Head(LineRole role, Point from, Point to)
    {
        var back = (from - to).Unit() * HeadMm;
        var aside = back.Left * 0.35;
        return Stroke.Open(role, to + back + aside, to, to + back - aside);
    }
}
