using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>All that is made at one time, bought in one order and cut from one roll.</summary>
/// <param name="Carriers">The pieces of each carrier of a top, in their order; at least one. Cloth, thread and prices are the same for all.</param>
/// <param name="Sets">How often all of them are made, as for sister boats; at least one.</param>
public sealed record MadeTogether(ImmutableArray<PatternSet> Carriers, int Sets)
{
    /// <summary>The job of the first, whose shared parts are those of all.</summary>
    public CarrierJob Job => Carriers[0].Job;

    /// <summary>Whether what belongs to one must be told from what belongs to another.</summary>
    public bool HasSeveral => Carriers.Length > 1;

    /// <summary>Every piece of one set, in the order in which they are numbered.</summary>
    public ImmutableArray<PatternPiece> Pieces => [.. Carriers.SelectMany(carrier => carrier.Pieces)];

    /// <summary>Every piece, as often as it is cut for all sets.</summary>
    public ImmutableArray<PatternPiece> PiecesOfAllSets =>
        [.. Pieces.Select(piece => piece with { Title = piece.Title with { Quantity = piece.Title.Quantity * Sets } })];

    /// <summary>The grades that are used, each once.</summary>
    public ImmutableArray<Grade> Grades => [.. Carriers.SelectMany(carrier => carrier.Job.Workshop.Supplies.GradesFor(carrier.Job.Fastenings)).DistinctBy(grade => grade.Id)];

    /// <summary>One carrier, once.</summary>
    public static MadeTogether Of(PatternSet only) => new([only], 1);
}
