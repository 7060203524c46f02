using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>One way to buy the cloth and to lay the pieces on it.</summary>
/// <param name="Made">The pieces as they are cut that way.</param>
/// <param name="Plan">How they lie.</param>
/// <param name="Cost">What the cloth costs; null without a price.</param>
/// <param name="IsOwn">Whether the job file has it so.</param>
public sealed record ClothChoice(MadeTogether Made, CutPlan Plan, ClothCost? Cost, bool IsOwn)
{
    /// <summary>How pieces may be turned.</summary>
    public RollTurns Turns => Made.Job.Workshop.Cloth.Lay.AllowedTurns;

    /// <summary>Whether a carrier has a seam.</summary>
    public bool HasSeam => Seams > 0;

    /// <summary>How many seams all carriers have together.</summary>
    public int Seams => Made.Carriers.Sum(carrier => carrier.CarrierPieces.Length - 1);

    /// <summary>The area of what is ordered, selvages and all.</summary>
    public Area Ordered => Plan.Roll.Width * Plan.Ordered;

    /// <summary>The kinds of piece that lie end for end.</summary>
    public ImmutableArray<string> EndForEnd => KindsOf(Plan.Placed.Where(placed => placed.Quarters == 2).Select(placed => placed.Piece));

    /// <summary>The kinds of piece that lie across, with warp and fill exchanged.</summary>
    public ImmutableArray<string> Across => KindsOf(Plan.Placed.Where(placed => placed.Quarters % 2 == 1).Select(placed => placed.Piece));

    /// <summary>The kinds of piece besides the carrier that are joined of widths.</summary>
    public ImmutableArray<string> Joined => KindsOf(Made.Carriers.SelectMany(carrier => carrier.Pieces.Except(carrier.CarrierPieces)).Where(piece => piece.Lines.Any(line => line.Use?.Kind == RowKind.Felled)));

    /// <summary>Whether a seam could not be kept clear of what it should.</summary>
    public bool HasAwkwardSeam => Made.Pieces.Any(piece => piece.HasAwkwardSeam);

    /// <summary>Whether another way on the same roll asks for no more and takes no more cloth.</summary>
    public bool IsNoBetterThan(ClothChoice other) =>
        Math.Abs((other.Plan.Roll.Width - Plan.Roll.Width).Millimeters) < 1e-3
        && other.Turns <= Turns
        && (HasSeam || !other.HasSeam)
        && other.Plan.Ordered <= Plan.Ordered
        && (other.Turns, other.HasSeam) != (Turns, HasSeam);

    /// <summary>What the pieces and their like are called.</summary>
    private static ImmutableArray<string> KindsOf(IEnumerable<PatternPiece> pieces) =>
        [.. pieces.Select(piece => Say.Within(piece.Title.KindName)).Distinct().Order(StringComparer.Ordinal)];
}

/// <summary>What the cloth of a choice costs.</summary>
/// <param name="Amount">Rounded to the money's decimals.</param>
/// <param name="IsByWidth">Whether it is reckoned from the price of the job's own roll in proportion to the width.</param>
public sealed record ClothCost(decimal Amount, bool IsByWidth);
