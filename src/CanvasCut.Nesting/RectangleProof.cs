using CanvasCut.Nesting.Rectangles;

namespace CanvasCut.Nesting;

/// <summary>Tries every way to lay a few rectangles that could matter: those of a task, or those that lie inside its pieces.</summary>
/// <param name="mostSteps">How many pieces may be laid on trial; a million take about a second.</param>
public sealed class RectangleProof(long mostSteps = RectangleProof.UsualSteps) : ILengthProof
{
    private const long UsualSteps = 100_000;

    /// <summary>With more pieces there is no hope within the steps.</summary>
    private const int MostPieces = 16;

    /// <inheritdoc/>
    public LengthAnswer Try(NestingTask task, double lengthMm)
    {
        if (RectangleTask.Of(task, isRoomier: true) is { } rectangles)
        {
            return Try(rectangles, lengthMm);
        }

        // Room for what lies inside the pieces is not yet room for the pieces.
        var isRuledOut = InnerRectangles.Of(task) is { } inner
            && RectangleTask.Of(inner, isRoomier: true) is { } insides
            && Try(insides, lengthMm) == LengthAnswer.Impossible;
        return isRuledOut ? LengthAnswer.Impossible : LengthAnswer.Unknown;
    }

    private LengthAnswer Try(RectangleTask rectangles, double lengthMm) => rectangles.Pieces.Length <= MostPieces
        ? ExactFill.Try(rectangles, rectangles.LengthWithin(lengthMm + BoundTurns.SlackMm), mostSteps, out _)
        : LengthAnswer.Unknown;
}
