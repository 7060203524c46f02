using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What kind of seam it is, for what to do when it is too thick.</summary>
public enum SeamKind
{
    /// <summary>Two widths joined.</summary>
    Felled,

    /// <summary>Hems of a piece.</summary>
    Hems,

    /// <summary>An edge in binding.</summary>
    Bound,

    /// <summary>A zipper's half.</summary>
    Zipper,

    /// <summary>Caps folded round the ends of a zipper's tapes.</summary>
    Caps,

    /// <summary>A piece sewn on along its turned edges.</summary>
    Edges,

    /// <summary>Webbing.</summary>
    Webbing,

    /// <summary>The coated patch under the panel.</summary>
    Patch,

    /// <summary>A flap on the carrier, or hook-and-loop on what it is sewn to.</summary>
    Mount,
}

/// <summary>A seam, all its rows together.</summary>
/// <param name="Kind">What kind it is.</param>
/// <param name="Name">As in "forward port pocket, legs on the top".</param>
/// <param name="Pieces">The pieces it sews.</param>
/// <param name="Copies">How often it is sewn.</param>
/// <param name="Rows">Its rows.</param>
public sealed record SewnSeam(SeamKind Kind, string Name, ImmutableArray<PieceKey> Pieces, int Copies, ImmutableArray<SewnRow> Rows)
{
    /// <summary>The carrier's edge that is held there; null for other seams.</summary>
    public Side? Edge { get; init; }

    /// <summary>What it and its like on the other corners and edges are called together.</summary>
    public string KindName { get; init; } = Name;

    /// <summary>A crossing that is shorter than this meets no stitch.</summary>
    public static readonly Length ShortestCrossing = Length.FromMillimeters(1);

    private IEnumerable<SewnRun> Runs => Rows.SelectMany(row => row.Runs);

    /// <summary>All rows of all copies.</summary>
    public Length Sewn => Length.FromMillimeters(Copies * Runs.Sum(run => run.Length.Millimeters));

    /// <summary>
    /// Basting tape: one run between every two faces that are laid on each other, as long as the longest row that holds them. Felled
    /// seams, bound edges and end caps are sewn without.
    /// </summary>
    public Length Basted => Kind is SeamKind.Felled or SeamKind.Bound or SeamKind.Caps
        ? Length.Zero
        : Length.FromMillimeters(Copies * Rows.GroupBy(row => row.Face).Sum(face => face.Max(row => row.LengthMm)));

    /// <summary>What most of it goes through.</summary>
    public LayerCount Usual => Runs.GroupBy(run => run.Stack).MaxBy(group => group.Sum(run => run.Length.Millimeters))!.Key;

    /// <summary>The thickest crossing.</summary>
    public LayerCount Thickest(JobSupplies supplies) => Runs
        .Where(run => run.Length >= ShortestCrossing)
        .Select(run => run.Stack)
        .Append(Usual)
        .MaxBy(stack => (stack.Thickness(supplies).Millimeters, stack.Plies))!;

    /// <summary>Thread of a lockstitch (type 301), needle and bobbin, without waste.</summary>
    /// <remarks>
    /// C = 2 + 2·T·S inches of thread an inch of seam (textilecalculations.com, textileblog.com), T being the thickness
    /// and S the stitches an inch; in any one unit 2·(1 + thickness / stitch length). Run by run, each with its own plies.
    /// </remarks>
    public Length Thread(JobSupplies supplies, Length stitch) => Length.FromMillimeters(
        Copies * Runs.Sum(run => run.Length.Millimeters * LockstitchRatio(run.Stack.Thickness(supplies), stitch)));

    /// <summary>Thread for one length of lockstitch, needle and bobbin together.</summary>
    public static double LockstitchRatio(Length thickness, Length stitch) => 2 * (1 + (thickness / stitch));
}

/// <summary>A row of stitches.</summary>
/// <param name="Face">Rows of one seam with the same number hold the same two faces together.</param>
/// <param name="Runs">The row cut where the plies change.</param>
public sealed record SewnRow(int Face, ImmutableArray<SewnRun> Runs)
{
    /// <summary>From end to end, gaps left out.</summary>
    internal double LengthMm => Runs.Sum(run => run.Length.Millimeters);
}

/// <summary>A row of stitches before it is known what it goes through.</summary>
/// <param name="Face">Rows of one seam with the same number hold the same two faces together.</param>
/// <param name="Points">Where it lies.</param>
internal sealed record RowLine(int Face, ImmutableArray<Point> Points)
{
    /// <summary>A row of a piece.</summary>
    public static RowLine Of(PieceLine row) => new(row.Use?.Face ?? 0, row.Points);

    /// <summary>The row with the plies under it.</summary>
    public SewnRow Through(IReadOnlyList<SewnLayer> layers) => new(Face, [.. SewnRuns.Of(Points, layers)]);
}
