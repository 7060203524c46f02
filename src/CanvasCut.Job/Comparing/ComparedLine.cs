using UnitsNet;

namespace CanvasCut.Job;

/// <summary>One piece in one file, held against the model.</summary>
/// <param name="File">The file, below the folder.</param>
/// <param name="Piece">The piece's name; empty when the whole file is in trouble.</param>
/// <param name="Distance">The largest distance between the file's cut line and the model's; null when there is no line to compare.</param>
/// <param name="Trouble">Why there is none, in plain words; empty when there is one.</param>
public sealed record ComparedLine(string File, string Piece, Length? Distance, string Trouble)
{
    /// <summary>How far a line may lie off: a tenth of the cut line's width, and well below what scissors keep to.</summary>
    public static Length Allowed { get; } = Length.FromMillimeters(0.05);

    /// <summary>Whether the line is where it should be.</summary>
    public bool IsTrue => Distance is { } distance && distance <= Allowed;
}
