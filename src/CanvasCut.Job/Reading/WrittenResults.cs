using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.Job;

/// <summary>What this program reads again of a results file, whichever format it has.</summary>
/// <param name="Job">What the job was called.</param>
/// <param name="Files">The files written with it.</param>
/// <param name="Mountings">The carriers.</param>
/// <param name="IsForOnePrinter">Whether the pages of templates.pdf are stretched for a printer that is not true.</param>
internal sealed record WrittenResults(string Job, ImmutableArray<string> Files, ImmutableArray<WrittenMounting> Mountings, bool IsForOnePrinter)
{
    /// <summary>What is printed of it, with its field.</summary>
    public IEnumerable<(string Field, string Text)> Printed() =>
    [
        ("job", Job),
        .. Files.Select((file, i) => (FormattableString.Invariant($"files[{i + 1}]"), file)),
        .. Mountings.SelectMany(mounting => Printed($"{mounting.Field}pieces", mounting.Pieces).Concat(Printed($"{mounting.Field}kept_pieces", mounting.Kept))),
    ];

    private static IEnumerable<(string Field, string Text)> Printed(string list, ImmutableArray<DrawnPiece> pieces) => pieces.SelectMany((piece, i) => new[]
    {
        (FormattableString.Invariant($"{list}[{i + 1}].id"), piece.Id),
        (FormattableString.Invariant($"{list}[{i + 1}].name"), piece.Name),
    });

    /// <summary>Of format 2.</summary>
    public static WrittenResults Of(ResultsDocument results) => new(
        results.Job, results.Files, [.. results.Mountings.Select((mounting, index) => Of(mounting, index))], results.Paper.ReadXMm is not null);

    /// <summary>Of format 1.</summary>
    public static WrittenResults Of(EarlierResults results)
    {
        ImmutableArray<DrawnPiece> Drawn(ImmutableArray<EarlierPiece> pieces) => [.. pieces.Select(piece => DrawnPiece.Of(
            piece.Id, piece.Name, piece.FinishedMm, piece.CutMm, piece.Lines.Select(line => DrawnPiece.Line(line.Kind, line.Closed, line.PointsMm))))];
        return new(
            results.Job,
            results.Files,
            [new(string.Empty, null, Drawn(results.Pieces), Drawn(results.KeptPieces), results.Marks, results.Sewn, HeldOf(results.Mounts?.Count))],
            results.Paper.ReadXMm is not null);
    }

    private static WrittenMounting Of(MountingPart mounting, int index)
    {
        ImmutableArray<DrawnPiece> Drawn(ImmutableArray<PiecePart> pieces) => [.. pieces.Select(piece => DrawnPiece.Of(
            piece.Id, piece.Name, piece.FinishedMm, piece.CutMm, piece.Lines.Select(line => DrawnPiece.Line(line.Kind, line.Closed, line.PointsMm))))];
        return new(
            FormattableString.Invariant($"mountings[{index + 1}]."),
            mounting.Folder,
            Drawn(mounting.Pieces),
            Drawn(mounting.KeptPieces),
            [.. mounting.Marks.Select(mark => new PlacePart(mark.StationMm, mark.OffsetMm))],
            mounting.Sewn,
            !mounting.Mounts.IsEmpty ? HeldBy.Others : mounting.Zippers.Any(zipper => zipper.Edge is Side.Port or Side.Starboard) ? HeldBy.ZippersAtSidesToo : HeldBy.EndZippers);
    }

    /// <summary>How the edges were held in format 1, by how many are held by something else than a zipper; null where there is no such list.</summary>
    private static HeldBy HeldOf(int? others) => others switch
    {
        null => HeldBy.EndZippers,
        0 => HeldBy.ZippersAtSidesToo,
        _ => HeldBy.Others,
    };
}

/// <summary>A carrier in a results file.</summary>
/// <param name="Field">The field in which it stands, with a point at its end; empty for the whole file.</param>
/// <param name="Folder">The folder of its files; null where they lie beside the results file.</param>
/// <param name="Pieces">What was cut.</param>
/// <param name="Kept">What was sewn already.</param>
/// <param name="Marks">Where the marks on the top are.</param>
/// <param name="Sewn">What is sewn to the top; null where it was not kept.</param>
/// <param name="Held">What holds the edges.</param>
internal sealed record WrittenMounting(
    string Field, string? Folder, ImmutableArray<DrawnPiece> Pieces, ImmutableArray<DrawnPiece> Kept, ImmutableArray<PlacePart> Marks, SewnPart? Sewn, HeldBy Held);

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
