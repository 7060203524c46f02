using System.Text.RegularExpressions;
using CanvasCut.Checks;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.Language;

/// <summary>
/// Finds words that went round the tables: with <see cref="CanvasCut.Language.Languages.Accented"/> spoken, every vowel of a table's text
/// has an accent, so a plain vowel is the user's own word, a name that no language changes, or a fault.
/// </summary>
internal static partial class UnspokenWords
{
    /// <summary>Units, papers, money and names of things that are called so in every language.</summary>
    private const string Names =
        "in min yd deg psi Pa kPa EUR A0 A1 A2 A3 A4 Letter Tabloid Arch ANSI AC1009 CanvasCut CANVASCUT_LANGUAGE canvascut pieces true false docs days";

    private static readonly char[] Joints = ['.', '-', '/', '_', '[', ']'];

    /// <summary>What the job's own text and every job's fields hold.</summary>
    private static readonly HashSet<string> OfAllJobs = new(
        [
            .. Words(Names),
            .. JobFields.All.SelectMany(field => Words(field.Name)),
            .. Words(Repository.Read("src/CanvasCut.JobFiles/Supplies/materials.toml").Split('\n').Where(line => line.StartsWith('['))),
            .. (Repository.Read("docs/job-file.md") + Repository.Read("docs/ordering.md")).Split('`').Where((_, index) => index % 2 == 1).SelectMany(Words),
            .. CheckCodes.All.SelectMany(Words),
        ],
        StringComparer.Ordinal);

    /// <summary>What a result may hold of the job files' words: what can be written as a value, never the name of a field by itself.</summary>
    private static readonly HashSet<string> OfValues = new(
        [
            .. Words(Names),
            .. JobFields.All.Where(field => !field.Name.Contains('.', StringComparison.Ordinal)).Select(field => field.Name),
            .. JobFields.All.SelectMany(field => field.Words),
            .. JobFields.All.SelectMany(field => Words(field.Default?.Text ?? string.Empty)),
            .. Words(Repository.Read("src/CanvasCut.JobFiles/Supplies/materials.toml").Split('\n').Where(line => line.StartsWith('['))),
        ],
        StringComparer.Ordinal);

    /// <summary>The words with a plain vowel that are neither names nor written by the user, each once.</summary>
    /// <param name="text">What was printed.</param>
    /// <param name="jobs">The job file and what else the user wrote.</param>
    public static IEnumerable<string> In(string text, params string[] jobs) =>
        In(text, OfAllJobs, jobs.SelectMany(job => job.Split('\n')).Where(line => !line.StartsWith('#')).SelectMany(Words));

    /// <summary>The same for a file of the results, where fields are told by their whole names and only what is in quotes is the user's.</summary>
    /// <param name="text">What was printed.</param>
    /// <param name="jobs">The job file and what else the user wrote.</param>
    public static IEnumerable<string> InResults(string text, params string[] jobs) =>
        In(text, OfValues, jobs.SelectMany(job => Quoted().Matches(job)).SelectMany(match => Words(match.Value)));

    private static IEnumerable<string> In(string text, HashSet<string> ofJobs, IEnumerable<string> written)
    {
        var own = written.ToHashSet(StringComparer.Ordinal);
        bool IsKnown(string word) => !PlainVowel().IsMatch(word) || Accented().IsMatch(word) || IsFileOrId().IsMatch(word) || ofJobs.Contains(word) || own.Contains(word);
        return Word().Matches(text)
            .Select(match => match.Value.Trim(Joints))
            .Where(word => !IsKnown(word) && word.Split(Joints).Any(part => part.Length > 1 && !IsKnown(part)))
            .Distinct()
            .Order(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Words(IEnumerable<string> lines) => lines.SelectMany(Words);

    /// <summary>The words of a text; of one with points, strokes or hyphens the parts too.</summary>
    private static IEnumerable<string> Words(string text) => Word().Matches(text)
        .Select(match => match.Value.Trim(Joints))
        .SelectMany(word => word.Split(Joints).Append(word))
        .Where(word => word.Length > 1);

    [GeneratedRegex(@"[\p{L}][\p{L}\p{N}_.\-/\[\]]*")]
    private static partial Regex Word();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Quoted();

    [GeneratedRegex("[aeiouyAEIOUY]")]
    private static partial Regex PlainVowel();

    /// <summary>A word of the tables; in a page's text the user's next word may stand right beside it.</summary>
    [GeneratedRegex("[áéíóúýÁÉÍÓÚÝ]")]
    private static partial Regex Accented();

    /// <summary>The name of a page of the templates, or of a file or of an option, or an id: small letters and digits with hyphens or a point between.</summary>
    [GeneratedRegex(@"^([A-Z]\d+|[a-z0-9]+([-._/][a-z0-9\[\]]+)+)$")]
    private static partial Regex IsFileOrId();
}
