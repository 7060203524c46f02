using CanvasCut.Nesting.Rectangles;

namespace CanvasCut.Nesting;

/// <summary>Tries every way to lay a few rectangles that could matter.</summary>
/// <param name="mostSteps">How many pieces may be laid on trial; a million take about a second.</param>
public sealed class RectangleProof(long mostSteps = RectangleProof.UsualSteps) : ILengthProof
{
    private const long UsualSteps = 100_000;

    /// <summary>With more pieces there is no hope within the steps.</summary>
    private const int MostPieces = 16;

    /// <inheritdoc/>
    public LengthAnswer Try(NestingTask task, double lengthMm) =>
        task.Items.Sum(item => item.Demand) <= MostPieces && RectangleTask.Of(task, isRoomier: true) is { } rectangles
            ? ExactFill.Try(rectangles, rectangles.LengthWithin(lengthMm + BoundTurns.SlackMm), mostSteps, out _)
            : LengthAnswer.Unknown;
}
