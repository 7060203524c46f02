using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>The text of a results file, read by the types that write it.</summary>
internal sealed class ResultsText
{
    /// <summary>How the format of every results file of this program begins.</summary>
    private const string Ours = "canvascut-results-";

    private readonly byte[] _bytes;
    private readonly string _fileName;
    private readonly Lazy<JsonPlaces> _places;

    /// <param name="bytes">What is in the file.</param>
    /// <param name="fileName">What it is called in problems.</param>
    public ResultsText(byte[] bytes, string fileName)
    {
        _bytes = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes;
        _fileName = fileName;
        _places = new(() => JsonPlaces.Of(_bytes));
    }

    /// <summary>Where a field stands, or would.</summary>
    public Place PlaceOf(string field) => _places.Value.Of(field) is var (line, column) ? new(_fileName, line, column, field) : default;

    /// <summary>Whether a field is there.</summary>
    public bool Has(string field) => _places.Value.Has(field);

    /// <summary>What it tells, or null and one problem; never throws, whatever the bytes.</summary>
    public WrittenResults? Read(ProblemLog log)
    {
        var results = InItsFormat(log);
        var bent = results?.Printed().Where(each => each.Text.Any(char.IsControl)).Select(each => each.Field).FirstOrDefault();
        return bent is null ? results : Refuse<WrittenResults>(log, ResultsCode.Damaged, bent, Damaged(Say.Of("must be on one line, without control characters.")));
    }

    private WrittenResults? InItsFormat(ProblemLog log) => FormatIn(log) switch
    {
        null => null,
        ResultsJson.Format => Written(ResultsContext.Default.ResultsDocument, log) is { } results ? WrittenResults.Of(results) : null,
        ResultsJson.EarlierFormat => Has("sewn") || Has("mounts") ? Written(ResultsContext.Default.EarlierResults, log) is { } earlier ? WrittenResults.Of(earlier) : null : Old(log),
        var other => Refuse<WrittenResults>(log, ResultsCode.OtherVersion, "format", Say.Of($"is \"{other}\", and this version reads \"{ResultsJson.EarlierFormat}\" and \"{ResultsJson.Format}\"; make the old job again with this version.")),
    };

    /// <summary>The files it names as written with it; none when it is none of ours.</summary>
    public IReadOnlyList<string> Files()
    {
        try
        {
            return JsonSerializer.Deserialize(_bytes, ResultsContext.Default.ResultsFiles) is { } results && results.Format.StartsWith(Ours, StringComparison.Ordinal) ? results.Files : [];
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException)
        {
            return [];
        }
    }

    private WrittenResults? Old(ProblemLog log) =>
        Refuse<WrittenResults>(log, ResultsCode.OtherVersion, "sewn", Say.Of("is missing: an earlier version wrote this file and did not keep what is sewn; make the old job again with this version."));

    private string? FormatIn(ProblemLog log)
    {
        string? format = null;
        try
        {
            format = JsonSerializer.Deserialize(_bytes, ResultsContext.Default.ResultsHead)?.Format;
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException)
        {
            var (isOurs, at) = (Encoding.UTF8.GetString(_bytes).Contains($"\"{Ours}", StringComparison.Ordinal), Break());
            if (at is { } place)
            {
                return isOurs
                    ? Refuse<string>(log, ResultsCode.Damaged, place, Say.Of("The text breaks off or is broken here, so the file is damaged; copy it again, or make the old job again."))
                    : Refuse<string>(log, ResultsCode.NotOurs, place, Say.Of("is no JSON, so no results.json of this program; name the one that make wrote."));
            }

            if (isOurs)
            {
                return Complain<string>(ResultsContext.Default.ResultsHead, exception, log);
            }
        }

        return format?.StartsWith(Ours, StringComparison.Ordinal) == true
            ? format
            : Refuse<string>(log, ResultsCode.NotOurs, "format", Say.Of($"should be \"{ResultsJson.Format}\", so this is no results.json of this program; name the one that make wrote."));
    }

    private T? Written<T>(JsonTypeInfo<T> form, ProblemLog log)
        where T : class
    {
        try
        {
            var read = JsonSerializer.Deserialize(_bytes, form);
            return _places.Value.NullItem is { } item ? Complain<T>(form, item, log) : read ?? Complain<T>(form, string.Empty, log);
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException)
        {
            return Complain<T>(form, exception, log);
        }
    }

    private T? Complain<T>(JsonTypeInfo form, Exception exception, ProblemLog log)
        where T : class => Complain<T>(form, JsonForm.FieldOf((exception as JsonException)?.Path ?? string.Empty), log);

    private T? Complain<T>(JsonTypeInfo form, string at, ProblemLog log)
        where T : class
    {
        var (field, message) = JsonForm.Complaint(form, at, _places.Value);
        return Refuse<T>(log, ResultsCode.Damaged, field, Damaged(message));
    }

    /// <summary>The message of a file that is ours and cannot be so.</summary>
    public static string Damaged(string message) => Say.Of($"{message} The file was changed or damaged; make the old job again.");

    /// <summary>Where the text stops being JSON; null when it is JSON to its end.</summary>
    private Place? Break()
    {
        try
        {
            var reader = new Utf8JsonReader(_bytes);
            while (reader.Read())
            {
                // To the end, or to the break.
            }

            return null;
        }
        catch (JsonException exception)
        {
            return new(_fileName, (int)(exception.LineNumber ?? 0) + 1, (int)(exception.BytePositionInLine ?? 0) + 1, string.Empty);
        }
    }

    private T? Refuse<T>(ProblemLog log, string code, string field, string message)
        where T : class => Refuse<T>(log, code, PlaceOf(field), message);

    private static T? Refuse<T>(ProblemLog log, string code, Place place, string message)
        where T : class
    {
        log.Report(code, place, message);
        return null;
    }
}
