using System.Collections.Immutable;
using CanvasCut.Design;
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
/// <param name="Rows">Each row cut into runs of equal plies.</param>
public sealed record SewnSeam(
    SeamKind Kind, string Name, ImmutableArray<PieceKey> Pieces, int Copies, ImmutableArray<ImmutableArray<SewnRun>> Rows)
{
    /// <summary>A crossing that is shorter than this meets no stitch.</summary>
    public static readonly Length ShortestCrossing = Length.FromMillimeters(1);

    private IEnumerable<SewnRun> Runs => Rows.SelectMany(row => row);

    /// <summary>All rows of all copies.</summary>
    public Length Sewn => Length.FromMillimeters(Copies * Runs.Sum(run => run.Length.Millimeters));

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
