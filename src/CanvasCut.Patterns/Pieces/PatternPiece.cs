using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Which of a mirrored pair a piece is.</summary>
public enum Hand
{
    /// <summary>It has no twin.</summary>
    Neither,

    /// <summary>For the port side; its twin is drawn separately.</summary>
    Port,

    /// <summary>For the starboard side; its twin is drawn separately.</summary>
    Starboard,
}

/// <summary>What a piece is called and how often and how it is cut.</summary>
/// <param name="Name">What the sewist calls it.</param>
/// <param name="Quantity">How many are cut, all alike.</param>
/// <param name="Hand">Which of a pair it is.</param>
/// <param name="Face">Which face of the cloth lies up when it is cut.</param>
public sealed record PieceTitle(string Name, int Quantity, Hand Hand, string Face)
{
    /// <summary>The face that is up on every piece: pairs are drawn separately, so none is ever turned over.</summary>
    public static string OuterFaceUp => Say.Of("outer face up");

    /// <summary>What it and its like are called together, as in "Corner pocket".</summary>
    public string KindName { get; init; } = Name;

    /// <summary>The name of the piece that this one is a width of; its own name when it is whole.</summary>
    public string WholeName { get; private init; } = Name;

    /// <summary>One width of a piece that is too wide for the roll.</summary>
    internal PieceTitle OfWidth(string name) => this with { Name = name, WholeName = Name };
}

/// <summary>The two outlines of a piece, in its own plane: Y points forward, X to starboard, millimetres.</summary>
/// <param name="Finished">What is left when all is folded and sewn; it includes any growth for shrinkage.</param>
/// <param name="Cut">Where the cloth is cut.</param>
public sealed record PieceShape(Outline Finished, Outline Cut);

/// <summary>One piece of cloth to cut.</summary>
/// <param name="Key">Which piece it is.</param>
/// <param name="Title">What it is called and how it is cut.</param>
/// <param name="Shape">Its outlines.</param>
/// <param name="Warp">Which way the warp runs.</param>
/// <param name="Lines">What else is drawn on it.</param>
/// <param name="Notes">What is written on it besides its label; the first tells which allowances the cut line includes.</param>
public sealed record PatternPiece(
    PieceKey Key, PieceTitle Title, PieceShape Shape, WarpDirection Warp, ImmutableArray<PieceLine> Lines, ImmutableArray<string> Notes)
{
    /// <summary>
    /// From its own plane to the plan of the top, where it lies when all is sewn; a width keeps that of the whole piece. Null for
    /// what is folded round the ends of tapes.
    /// </summary>
    public PlaneMap? At { get; private init; }

    /// <summary>Whether a seam that joins it could not be kept clear of what it should.</summary>
    public bool HasAwkwardSeam { get; internal init; }

    /// <summary>The same piece with its place on the top.</summary>
    public PatternPiece LyingAt(PlaneMap at) => this with { At = at };

    /// <summary>The folds in the order in which they are made: what lies outside each is folded over it.</summary>
    public ImmutableArray<HalfPlane> Folds { get; private init; } = [];

    /// <summary>The same piece with its folds.</summary>
    public PatternPiece FoldedAlong(IEnumerable<HalfPlane> folds) => this with { Folds = [.. folds] };

    /// <summary>The same piece for a side, when it was drawn for an end; the warp stays as it runs on the boat.</summary>
    internal PatternPiece Back(EdgeFrame frame)
    {
        Step Turned(Step step) => frame.Back(new Point(0, 0) + step) - new Point(0, 0);
        return frame.Quarters == 0 ? this : this with
        {
            Shape = new(frame.Back(Shape.Finished), frame.Back(Shape.Cut)),
            Lines = [.. Lines.Select(line => line.Mapped(frame.Back))],
            Folds = [.. Folds.Select(fold => new HalfPlane(frame.Back(fold.On), Turned(fold.Along)))],
        };
    }

    /// <summary>The finished size: across the boat and along it.</summary>
    public (Length Athwart, Length ForeAft) FinishedSize => SizeOf(Shape.Finished);

    /// <summary>The cut size: across the boat and along it.</summary>
    public (Length Athwart, Length ForeAft) CutSize => SizeOf(Shape.Cut);

    /// <summary>The cloth it takes across the warp.</summary>
    public Length AcrossWarp => Warp == WarpDirection.ForeAft ? CutSize.Athwart : CutSize.ForeAft;

    private static (Length Athwart, Length ForeAft) SizeOf(Outline outline) =>
        (Length.FromMillimeters(outline.Bounds.WidthMm), Length.FromMillimeters(outline.Bounds.HeightMm));
}
