using System.Collections.Immutable;

namespace CanvasCut.Job;

/// <summary>What this program reads again of a results file, whichever format it has.</summary>
/// <param name="Job">What the job was called.</param>
/// <param name="Files">The files written with it.</param>
/// <param name="Mountings">The carriers.</param>
/// <param name="IsForOnePrinter">Whether the pages of templates.pdf are stretched for a printer that is not true.</param>
internal sealed record WrittenResults(string Job, ImmutableArray<string> Files, ImmutableArray<WrittenMounting> Mountings, bool IsForOnePrinter)
{
    /// <summary>Of format 1.</summary>
    public static WrittenResults Of(EarlierResults results)
    {
        ImmutableArray<DrawnPiece> Drawn(ImmutableArray<EarlierPiece> pieces) => [.. pieces.Select(piece => DrawnPiece.Of(
            piece.Id, piece.Name, piece.FinishedMm, piece.CutMm, piece.Lines.Select(line => DrawnPiece.Line(line.Kind, line.Closed, line.PointsMm))))];
        return new(
            results.Job,
            results.Files,
            [new(string.Empty, Drawn(results.Pieces), Drawn(results.KeptPieces), results.Marks, results.Sewn, HeldOf(results.Mounts?.Count))],
            results.Paper.ReadXMm is not null);
    }

    /// <summary>How the edges are held, by how many are held by something else than a zipper; null where there is no such list.</summary>
    private static HeldBy HeldOf(int? others) => others switch
    {
        null => HeldBy.EndZippers,
        0 => HeldBy.ZippersAtSidesToo,
        _ => HeldBy.Others,
    };
}

/// <summary>A carrier in a results file.</summary>
/// <param name="Field">The field in which it stands, with a point at its end; empty for the whole file.</param>
/// <param name="Pieces">What was cut.</param>
/// <param name="Kept">What was sewn already.</param>
/// <param name="Marks">Where the marks on the top are.</param>
/// <param name="Sewn">What is sewn to the top; null where it was not kept.</param>
/// <param name="Held">What holds the edges.</param>
internal sealed record WrittenMounting(
    string Field, ImmutableArray<DrawnPiece> Pieces, ImmutableArray<DrawnPiece> Kept, ImmutableArray<PlacePart> Marks, SewnPart? Sewn, HeldBy Held);

/// <summary>What holds the edges of a carrier.</summary>
internal enum HeldBy
{
    /// <summary>Zippers forward and aft, and nothing at the sides.</summary>
    EndZippers,

    /// <summary>Zippers alone, at the sides too.</summary>
    ZippersAtSidesToo,

    /// <summary>Something else than zippers, at one edge or more.</summary>
    Others,
}
