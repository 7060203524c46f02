using System.Collections.Immutable;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>What tells a results file of ours from any other; the same in every format.</summary>
internal sealed record ResultsHead(string Format);

/// <summary>The files that were written with a results file; the same in every format.</summary>
internal sealed record ResultsFiles(string Format, ImmutableArray<string> Files);

/// <summary>What is read of a results file of format 1, which had no list of mountings and worded marks.</summary>
/// <param name="Job">What the job was called.</param>
/// <param name="Files">The files written with it.</param>
/// <param name="Pieces">What was cut.</param>
/// <param name="KeptPieces">What was sewn already.</param>
/// <param name="Marks">The marks on the top.</param>
/// <param name="Paper">The paper of the templates.</param>
/// <param name="Sewn">What is sewn; null where an edge is not held by a zipper, or an early version wrote the file.</param>
/// <param name="Mounts">What holds the edges otherwise; null where zippers hold the forward and the aft one and nothing the sides.</param>
internal sealed record EarlierResults(
    string Job,
    ImmutableArray<string> Files,
    ImmutableArray<EarlierPiece> Pieces,
    ImmutableArray<EarlierPiece> KeptPieces,
    ImmutableArray<PlacePart> Marks,
    EarlierPaper Paper,
    SewnPart? Sewn = null,
    IReadOnlyList<EarlierMount>? Mounts = null);

/// <summary>A piece.</summary>
internal sealed record EarlierPiece(string Id, string Name, ImmutableArray<PointPart> FinishedMm, ImmutableArray<PointPart> CutMm, ImmutableArray<EarlierLine> Lines);

/// <summary>A line on a piece.</summary>
internal sealed record EarlierLine(PieceLineKind Kind, bool Closed, ImmutableArray<PointPart> PointsMm);

/// <summary>What holds an edge.</summary>
internal sealed record EarlierMount(string Edge);

/// <summary>The paper of the templates.</summary>
internal sealed record EarlierPaper(double? ReadXMm = null, double? ReadYMm = null);
