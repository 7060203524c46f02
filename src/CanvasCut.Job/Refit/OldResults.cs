using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>What a results.json tells of the half that is sewn to the top.</summary>
public sealed class OldResults
{
    /// <summary>A mark may lie so far from where the sewn half puts it: both are rounded to a millionth.</summary>
    private const double SameMarkMm = 1e-4;

    private OldResults(string jobName, SewnHalf sewn, ImmutableArray<DrawnPiece> pieces) => (JobName, Sewn, Pieces) = (jobName, sewn, pieces);

    /// <summary>What the old job was called.</summary>
    public string JobName { get; }

    internal SewnHalf Sewn { get; }

    internal ImmutableArray<DrawnPiece> Pieces { get; }

    /// <summary>Reads a file, or the results.json of a folder.</summary>
    /// <returns>What it tells, or why it cannot be used; never throws for any file.</returns>
    public static Checked<OldResults> Read(string path)
    {
        var log = new ProblemLog();
        return Read(ResultsPath.Read(path, log), log);
    }

    /// <summary>Reads a file's bytes.</summary>
    public static Checked<OldResults> Read(byte[] bytes, string fileName) => Read(new ResultsText(bytes, fileName), new());

    private static Checked<OldResults> Read(ResultsText? text, ProblemLog log)
    {
        var results = text?.Read(log) is { } written ? Of(text, written, log) : null;
        return log.Finish(() => results ?? throw new InvalidOperationException("Nothing was read although nothing was reported."));
    }

    private static OldResults? Of(ResultsText text, WrittenResults written, ProblemLog log)
    {
        if (written.Mountings is not [var mounting])
        {
            log.Report(ResultsCode.SeveralCarriers, text.PlaceOf("mountings"), Say.Of($"tells of {written.Mountings.Length} carriers; name the results.json in the folder of the one that gets the new panel."));
            return null;
        }

        void Report(string field, string message) => log.Report(ResultsCode.Damaged, text.PlaceOf(field), ResultsText.Damaged(message));
        if (Unfit(mounting) is { } problem)
        {
            log.Report(problem.Code, text.PlaceOf(problem.Field), problem.Message);
            return null;
        }

        var sewn = new SewnReader($"{mounting.Field}sewn", Report).Read(mounting.Sewn!);
        if (log.IsEmpty)
        {
            CheckMarks(mounting, sewn, Report);
        }

        return new(written.Job, sewn, [.. mounting.Pieces, .. mounting.Kept]);
    }

    private static (string Code, string Field, string Message)? Unfit(WrittenMounting mounting) => (mounting.Held, mounting.Sewn) switch
    {
        (HeldBy.ZippersAtSidesToo, _) => (ResultsCode.NoZippers, $"{mounting.Field}mounts", Say.Of("tells of zippers at the sides too, and only tops with zippers at the forward and the aft edge alone are refitted; mark the new carrier's fastenings from those on the top.")),
        (HeldBy.Others, _) => (ResultsCode.NoZippers, $"{mounting.Field}mounts", Say.Of("holds an edge by something else than a zipper, and only tops with zippers at both edges are refitted; mark the new carrier's fastenings from those on the top.")),
        (_, null) => (ResultsCode.Damaged, $"{mounting.Field}sewn", ResultsText.Damaged(Say.Of("should tell what is sewn."))),
        _ => null,
    };

    /// <summary>
    /// The marks say the same as the sewn half: where they do not, one of the two was changed. They stand in the same order, and
    /// their names do not count, for they may have been written in another language.
    /// </summary>
    private static void CheckMarks(WrittenMounting mounting, SewnHalf sewn, Action<string, string> report)
    {
        foreach (var (index, mark) in TopMarks.Of(sewn.WithOldPanel()).Index().Where(each => !each.Item.IsOfPanel))
        {
            if (index >= mounting.Marks.Length || PlaceOf(mounting.Marks[index]).DistanceMm(Plan.Of(mark.Place)) is not <= SameMarkMm)
            {
                var field = index >= mounting.Marks.Length ? $"{mounting.Field}marks" : FormattableString.Invariant($"{mounting.Field}marks[{index + 1}]");
                report(field, Say.Of($"should have \"{mark.Name}\" at station {Number(mark.Place.Station.Millimeters)} and offset {Number(mark.Place.Offset.Millimeters)} mm, as sewn tells."));
                return;
            }
        }
    }

    private static Point PlaceOf(PlacePart mark) => new(mark.OffsetMm, -mark.StationMm);

    private static string Number(double millimetres) => FormattableString.Invariant($"{JsonText.Mm(millimetres)}");
}
