using System.Collections.Immutable;
using System.Text.Json;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>What a results.json tells of the half that is sewn to the top.</summary>
public sealed class OldResults
{
    private const string FileName = "results.json";

    /// <summary>No results.json is so large.</summary>
    private const int MostBytes = 64 << 20;

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
        var file = Directory.Exists(path) ? Path.Combine(path, FileName) : path;
        var log = new ProblemLog();
        return BytesOf(file, log) is { } bytes ? Read(bytes, file) : log.Finish<OldResults>(() => throw new InvalidOperationException("There is a problem."));
    }

    /// <summary>Reads a file's bytes.</summary>
    public static Checked<OldResults> Read(byte[] bytes, string fileName)
    {
        var log = new ProblemLog();
        var results = Read(bytes, fileName, log);
        return log.Finish(() => results ?? throw new InvalidOperationException("Nothing was read although nothing was reported."));
    }

    private static OldResults? Read(byte[] bytes, string fileName, ProblemLog log)
    {
        if (JsonOf(bytes, fileName, log) is not { } json)
        {
            return null;
        }

        void Report(string field, string message) => log.Report(ResultsCode.Damaged, PlaceOf(field), Say.Of($"{message} The file was changed or damaged; make the old job again."));
        Place PlaceOf(string field) => json.PlaceOf(field) is var (line, column) ? new(fileName, line, column, field) : default;
        if (FormProblem(json.Root) is { } problem)
        {
            log.Report(problem.Code, PlaceOf(problem.Field), problem.Message);
            return null;
        }

        var sewn = new SewnReader(json, Report).Read();
        var pieces = PiecesOf(json.Root, "pieces", Report).AddRange(PiecesOf(json.Root, "kept_pieces", Report));
        if (log.IsEmpty)
        {
            CheckMarks(json.Root, sewn, Report);
        }

        return new(json.Root.GetProperty("job").GetString()!, sewn, pieces);
    }

    private static byte[]? BytesOf(string file, ProblemLog log)
    {
        void Report(string message) => log.Report(ResultsCode.Missing, new(file, 1, 1, string.Empty), message);
        try
        {
            if (BoundedFile.Read(file, MostBytes) is { } bytes)
            {
                return bytes;
            }

            Report(Say.Of("is larger than a results.json can be; name the one that make wrote."));
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            Report(Say.Of("is not there; name the results.json that make wrote for the job that is sewn, or its folder."));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Report(Say.Of($"cannot be read: {exception.Message}"));
        }

        return null;
    }

    private static PlacedJson? JsonOf(byte[] bytes, string fileName, ProblemLog log)
    {
        try
        {
            return PlacedJson.Of(bytes);
        }
        catch (JsonException exception)
        {
            var isOurs = System.Text.Encoding.UTF8.GetString(bytes).Contains("\"canvascut-results-", StringComparison.Ordinal);
            log.Report(
                isOurs ? ResultsCode.Damaged : ResultsCode.NotOurs,
                new(fileName, (int)(exception.LineNumber ?? 0) + 1, (int)(exception.BytePositionInLine ?? 0) + 1, string.Empty),
                isOurs
                    ? Say.Of("The text breaks off or is broken here, so the file is damaged; copy it again, or make the old job again.")
                    : Say.Of("is no JSON, so no results.json of this program; name the one that make wrote."));
            return null;
        }
    }

    private static (string Code, string Field, string Message)? FormProblem(JsonElement root)
    {
        var format = TextIn(root, "format");
        if (format is null || !format.StartsWith("canvascut-results-", StringComparison.Ordinal))
        {
            return (ResultsCode.NotOurs, "format", Say.Of($"should be \"{ResultsJson.Format}\", so this is no results.json of this program; name the one that make wrote."));
        }

        if (format != ResultsJson.Format)
        {
            return (ResultsCode.OtherVersion, "format", Say.Of($"is \"{format}\", and this version reads \"{ResultsJson.Format}\"; make the old job again with this version."));
        }

        if (root.TryGetProperty("mounts", out var mounts) && mounts is { ValueKind: JsonValueKind.Array } && mounts.GetArrayLength() == 0)
        {
            return (ResultsCode.NoZippers, "mounts", Say.Of("tells of zippers at the sides too, and only tops with zippers at the forward and the aft edge alone are refitted; mark the new carrier's fastenings from those on the top."));
        }

        if (root.TryGetProperty("mounts", out _))
        {
            return (ResultsCode.NoZippers, "mounts", Say.Of("holds an edge by something else than a zipper, and only tops with zippers at both edges are refitted; mark the new carrier's fastenings from those on the top."));
        }

        if (!root.TryGetProperty("sewn", out _))
        {
            return (ResultsCode.OtherVersion, "sewn", Say.Of("is missing: an earlier version wrote this file and did not keep what is sewn; make the old job again with this version."));
        }

        return TextIn(root, "job") is not { } job || job.Any(char.IsControl) ? (ResultsCode.Damaged, "job", Say.Of("should be the job's name. The file was changed or damaged; make the old job again.")) : null;
    }

    private static string? TextIn(JsonElement root, string name) =>
        root.ValueKind == JsonValueKind.Object && root.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static ImmutableArray<DrawnPiece> PiecesOf(JsonElement root, string name, Action<string, string> report)
    {
        if (!root.TryGetProperty(name, out var list) || list.ValueKind != JsonValueKind.Array)
        {
            report(name, Say.Of("should be a list of pieces."));
            return [];
        }

        var pieces = ImmutableArray.CreateBuilder<DrawnPiece>();
        foreach (var (i, piece) in list.EnumerateArray().Index())
        {
            try
            {
                pieces.Add(DrawnPiece.Of(piece));
            }
            catch (Exception exception) when (exception is InvalidOperationException or KeyNotFoundException or FormatException or IndexOutOfRangeException)
            {
                report(FormattableString.Invariant($"{name}[{i + 1}]"), Say.Of("should be a piece with id, name, finished_mm, cut_mm and lines."));
            }
        }

        return pieces.ToImmutable();
    }

    /// <summary>
    /// The marks say the same as the sewn half: where they do not, one of the two was changed. They stand in the same order, and
    /// their names do not count, for they may have been written in another language.
    /// </summary>
    private static void CheckMarks(JsonElement root, SewnHalf sewn, Action<string, string> report)
    {
        var written = root.TryGetProperty("marks", out var marks) && marks.ValueKind == JsonValueKind.Array ? marks.EnumerateArray().ToList() : [];
        foreach (var (index, mark) in TopMarks.Of(sewn.WithOldPanel()).Index().Where(each => !each.Item.IsOfPanel))
        {
            if (index >= written.Count || PlaceIn(written[index]) is not { } place || place.DistanceMm(Plan.Of(mark.Place)) > SameMarkMm)
            {
                var field = index >= written.Count ? "marks" : FormattableString.Invariant($"marks[{index + 1}]");
                report(field, Say.Of($"should have \"{mark.Name}\" at station {Number(mark.Place.Station.Millimeters)} and offset {Number(mark.Place.Offset.Millimeters)} mm, as sewn tells."));
                return;
            }
        }
    }

    private static Point? PlaceIn(JsonElement mark) =>
        mark.ValueKind == JsonValueKind.Object && mark.TryGetProperty("station_mm", out var station) && mark.TryGetProperty("offset_mm", out var offset)
        && station.ValueKind == JsonValueKind.Number && offset.ValueKind == JsonValueKind.Number
            ? new Point(offset.GetDouble(), -station.GetDouble())
            : null;

    private static string Number(double millimetres) => FormattableString.Invariant($"{JsonText.Mm(millimetres)}");
}
