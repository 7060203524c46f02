using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Splits a piece that is wider than the roll into widths joined by felled seams along the warp.</summary>
/// <remarks>
/// As few widths as will do, as nearly alike as the places to keep clear allow. Each seam is looked for on both sides
/// of its even place in steps of 5 mm. When no place is clear the even one is taken and the piece says so.
/// </remarks>
public static class RollSplit
{
    /// <summary>Between a seam and what it must keep clear of; 1 in, common practice, no source.</summary>
    public static readonly Length SeamClearance = Length.FromInches(1);

    /// <summary>What a width says when its seam lies where it should not.</summary>
    public static string NotClearText => Say.Of("No place for this seam is clear of zipper ends, pockets, box and cable: it is put where the widths are even.");

    private const double StepMm = 5;
    private const int MostWidths = 100;

    /// <summary>The widths of a piece, or the piece itself when it fits the roll.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="job">The job: roll, warp, turns and kind of seam.</param>
    /// <param name="keepClear">Boxes in the piece's plane that no seam should cross.</param>
    /// <param name="leastWidths">It is cut in so many widths at least, even where fewer would do.</param>
    public static ImmutableArray<PatternPiece> Of(PatternPiece piece, CarrierJob job, ImmutableArray<Box> keepClear, int leastWidths = 1)
    {
        var cloth = job.Workshop.Cloth;
        if (leastWidths == 1 && FitsRoll(piece, cloth))
        {
            return [piece];
        }

        var seams = SeamsOf(piece, cloth, keepClear, leastWidths);
        var parts = ImmutableArray.CreateBuilder<PatternPiece>();
        for (var i = 0; i <= seams.Length; i++)
        {
            parts.Add(new WidthCut(piece, job).Between(i > 0 ? seams[i - 1] : null, i < seams.Length ? seams[i] : null, (i + 1, seams.Length + 1)));
        }

        return parts.ToImmutable();
    }

    /// <summary>Whether a piece can be cut from the roll in one.</summary>
    public static bool FitsRoll(PatternPiece piece, ClothSpec cloth)
    {
        var usable = cloth.Roll.UsableWidth.Millimeters + 1e-9;
        var (athwart, foreAft) = (piece.CutSize.Athwart.Millimeters, piece.CutSize.ForeAft.Millimeters);
        return piece.AcrossWarp.Millimeters <= usable
            || (cloth.Lay.AllowedTurns == RollTurns.Quarter && Math.Min(athwart, foreAft) <= usable);
    }

    /// <summary>The allowances on the two sides of a seam: on the width before it and on the one after.</summary>
    internal static (double BeforeMm, double AfterMm) Allowances(FelledSeam join)
    {
        var half = Length.FromInches(0.5).Millimeters;
        return join == FelledSeam.Full ? (half, 2 * half) : (half, half);
    }

    private static ImmutableArray<Seam> SeamsOf(PatternPiece piece, ClothSpec cloth, ImmutableArray<Box> keepClear, int leastWidths)
    {
        var axis = new FillAxis(piece.Warp);
        ImmutableArray<(double From, double To)> barred =
            [.. keepClear.Select(box => axis.Span(box.Grown(SeamClearance.Millimeters)))];
        for (var widths = Math.Max(2, leastWidths); widths <= MostWidths; widths++)
        {
            foreach (var clearOnly in new[] { true, false })
            {
                if (Find(axis.Span(piece.Shape.Cut.Bounds), cloth, widths, clearOnly ? barred : []) is { } seams)
                {
                    return [.. seams.Select(at => new Seam(at, !barred.Any(span => at > span.From && at < span.To)))];
                }
            }
        }

        throw new InvalidOperationException("The job file should have been refused: no number of widths makes this piece.");
    }

    private static List<double>? Find((double From, double To) whole, ClothSpec cloth, int widths, ImmutableArray<(double From, double To)> barred)
    {
        var (beforeMm, afterMm) = Allowances(cloth.Join);
        var usable = cloth.Roll.UsableWidth.Millimeters;
        var seams = new List<double>();
        for (var i = 1; i < widths; i++)
        {
            var even = whole.From + ((whole.To - whole.From) * i / widths);
            var start = i == 1 ? whole.From : seams[^1] - afterMm;
            bool Suits(double at) =>
                at + beforeMm - start <= usable
                && (i + 1 < widths || whole.To - (at - afterMm) <= usable)
                && !barred.Any(span => at > span.From && at < span.To);
            var steps = (int)((whole.To - whole.From) / widths / StepMm);
            var places = Enumerable.Range(0, steps).SelectMany(step => new[] { even - (step * StepMm), even + (step * StepMm) });
            var found = places.Cast<double?>().FirstOrDefault(at => Suits(at!.Value));
            if (found is null)
            {
                return null;
            }

            seams.Add(found.Value);
        }

        return seams;
    }
}

/// <summary>A seam between two widths.</summary>
/// <param name="At">Where it lies across the warp, in millimetres of the piece's plane.</param>
/// <param name="IsClear">Whether it keeps clear of everything it should.</param>
internal sealed record Seam(double At, bool IsClear);
