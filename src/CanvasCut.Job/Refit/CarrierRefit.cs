using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>What becomes of one of several carriers when a job is changed.</summary>
public enum CarrierFate
{
    /// <summary>Every piece is drawn as it was, and it lies where it lay.</summary>
    Stays,

    /// <summary>What is sewn to the top stays; the carrier is made anew.</summary>
    CarrierAnew,

    /// <summary>Drawn as it was, but it lies elsewhere: what is sewn to the top is unpicked and sewn there.</summary>
    Moved,

    /// <summary>Carrier and what is sewn to the top are made anew.</summary>
    Anew,

    /// <summary>The old job had none of this name.</summary>
    Added,

    /// <summary>The new job has none of this name.</summary>
    Gone,
}

/// <summary>Which carriers of an old job stay in a new one.</summary>
/// <param name="Name">The carrier's name.</param>
/// <param name="Fate">What becomes of it.</param>
/// <param name="Differing">The pieces that are drawn otherwise than they were, or were not there.</param>
public sealed record CarrierRefit(string Name, CarrierFate Fate, ImmutableArray<string> Differing)
{
    /// <summary>Marks are rounded to a millionth when they are written.</summary>
    private const double SameMarkMm = 1e-3;

    /// <summary>What becomes of it and why, in a sentence.</summary>
    public string Told => Fate switch
    {
        CarrierFate.Stays => Say.Of($"{Name}: stays. Every piece is drawn as it was, and it lies where it lay."),
        CarrierFate.CarrierAnew => Say.Of($"{Name}: the carrier is made ANEW, what is sewn to the top stays. Otherwise than they were: {Pieces}."),
        CarrierFate.Moved => Say.Of($"{Name}: lies elsewhere. Its carrier stays; what is sewn to the top is unpicked and sewn at the new marks."),
        CarrierFate.Anew => Say.Of($"{Name}: is made ANEW, with what is sewn to the top. Otherwise than they were: {Pieces}."),
        CarrierFate.Added => Say.Of($"{Name}: is NEW; the old job had no carrier of this name."),
        _ => Say.Of($"{Name}: is not in the new job; its half on the top is unpicked, or left without a carrier."),
    };

    private string Pieces => string.Join(", ", Differing);

    /// <summary>Holds a new job against what was written for an old one.</summary>
    /// <param name="path">The old results.json of all carriers, or its folder.</param>
    /// <param name="fresh">The new job.</param>
    /// <returns>The carriers of the new job, then those that it has no more; or why the old results cannot be used.</returns>
    public static Checked<IReadOnlyList<CarrierRefit>> All(string path, TopRun fresh)
    {
        ArgumentNullException.ThrowIfNull(fresh);
        var log = new ProblemLog();
        var old = ResultsPath.Read(path, log)?.Read(log);
        return log.Finish<IReadOnlyList<CarrierRefit>>(() => fresh.Spoken(() => All(old!, fresh)));
    }

    private static ImmutableArray<CarrierRefit> All(WrittenResults old, TopRun fresh)
    {
        var names = fresh.Mountings.Select(TopFiles.FolderOf).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. fresh.Mountings.Select(run => Of(old.Mountings.FirstOrDefault(was => was.Folder == TopFiles.FolderOf(run)), run)),
            .. old.Mountings.Where(was => was.Folder is { } folder && !names.Contains(folder)).Select(was => new CarrierRefit(was.Folder!, CarrierFate.Gone, [])),
        ];
    }

    private static CarrierRefit Of(WrittenMounting? was, JobRun run)
    {
        var name = TopFiles.FolderOf(run);
        if (was is null)
        {
            return new(name, CarrierFate.Added, []);
        }

        var (top, all) = (DrawnOtherwise(run.Pieces.TopPieces, was), DrawnOtherwise(run.Pieces.Pieces, was));
        var liesThere = IsSame(was.Marks, [.. TopMarks.Of(run.Pieces.Mounted).Select(mark => new PlacePart(mark.Place.Station.Millimeters, mark.Place.Offset.Millimeters))]);
        var fate = (all.IsEmpty, liesThere) switch
        {
            (true, true) => CarrierFate.Stays,
            (true, false) => CarrierFate.Moved,
            (false, true) when top.IsEmpty => CarrierFate.CarrierAnew,
            _ => CarrierFate.Anew,
        };
        return new(name, fate, all);
    }

    private static ImmutableArray<string> DrawnOtherwise(ImmutableArray<PatternPiece> pieces, WrittenMounting was) =>
    [
        .. from piece in pieces.Select(DrawnPiece.Of)
           join old in was.Pieces.Concat(was.Kept) on piece.Id equals old.Id into found
           where !found.Any(piece.IsDrawnLike)
           select piece.Name,
    ];

    private static bool IsSame(ImmutableArray<PlacePart> one, ImmutableArray<PlacePart> other) =>
        one.Length == other.Length && one.Zip(other).All(pair => Math.Abs(pair.First.StationMm - pair.Second.StationMm) < SameMarkMm && Math.Abs(pair.First.OffsetMm - pair.Second.OffsetMm) < SameMarkMm);
}
