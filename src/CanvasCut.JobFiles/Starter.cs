using System.Collections.Immutable;
using System.Text.RegularExpressions;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>The job file that a new user fills in.</summary>
public static partial class Starter
{
    private const string Resource = "starter.toml";
    private const string Mark = "# ";

    private static readonly (string Text, bool IsNote)[] Parts = [.. Read()];

    /// <summary>TOML with a blank ("") for every required field and a note on how to measure it; the rest stands in comments.</summary>
    public static string Text => string.Join('\n', Parts.Select(part => part.IsNote ? Commented(Say.Of(part.Text)) : part.Text));

    /// <summary>The notes in English, those that follow each other without a break as one.</summary>
    public static ImmutableArray<string> Notes => [.. Parts.Where(part => part.IsNote).Select(part => part.Text)];

    private static string Commented(string note) => string.Join('\n', note.Split('\n').Select(line => Mark + line));

    private static IEnumerable<(string Text, bool IsNote)> Read()
    {
        using var stream = typeof(Starter).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not embedded.");
        using var reader = new StreamReader(stream);
        List<string> note = [];
        foreach (var line in reader.ReadToEnd().Split('\n'))
        {
            if (Note().IsMatch(line))
            {
                note.Add(line[Mark.Length..]);
                continue;
            }

            if (note.Count > 0)
            {
                yield return (string.Join('\n', note), true);
                note.Clear();
            }

            yield return (line, false);
        }
    }

    /// <summary>A line of words; a field that is commented out, or shown in an example, has "=" after its name, a table brackets.</summary>
    [GeneratedRegex(@"^# (?! |\[|[a-z_.]+ = )")]
    private static partial Regex Note();
}
