using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using CanvasCut.Language;

namespace CanvasCut.Tests.Language;

/// <summary>The tables of words against the code: nothing printed is missing, nothing in them is idle.</summary>
public sealed partial class WordTableTests
{
    private static readonly JsonSerializerOptions Plain = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static TheoryData<string> Codes { get; } = [.. Languages.Known];

    public static TheoryData<string> Foreign { get; } = [.. Languages.Known.Skip(1)];

    /// <summary>Where texts were added or left out, the table is made anew by approving; what was worded there stays.</summary>
    [Fact]
    public void The_English_table_has_every_text_of_the_code_and_no_other()
    {
        var table = Table(Languages.English);

        Golden.Matches(PathOf(Languages.English), Written(SpokenTexts.All.Select(key => KeyValuePair.Create(key, table.GetValueOrDefault(key, key)))));
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Every_language_has_what_English_has_and_no_other(string code)
    {
        var table = Table(code);

        Assert.Equal([], SpokenTexts.All.Where(key => !table.ContainsKey(key)));
        Assert.Equal([], table.Keys.Where(key => !SpokenTexts.All.Contains(key)));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_table_is_in_the_order_of_its_keys_with_a_text_each(string code)
    {
        var table = Table(code);

        Assert.Equal(Repository.Read(PathOf(code)), Written(table.OrderBy(entry => entry.Key, StringComparer.Ordinal)));
        Assert.All(table, entry => Assert.False(string.IsNullOrEmpty(entry.Value), entry.Key));
    }

    /// <summary>Each gap is filled once, in the same form, and the text can be filled at all.</summary>
    [Theory]
    [MemberData(nameof(Codes))]
    public void A_text_has_the_gaps_of_its_key(string code) => Assert.All(
        Table(code),
        entry =>
        {
            Assert.Equal(Gaps(entry.Key), Gaps(entry.Value));
            if (Gaps(entry.Key).Any())
            {
                Assert.NotEmpty(string.Format(System.Globalization.CultureInfo.InvariantCulture, entry.Value, [.. Enumerable.Repeat<object>("x", 20)]));
            }
        });

    /// <summary>Texts are put side by side: what begins or ends with a space, a sign or none must do so in every language.</summary>
    [Theory]
    [MemberData(nameof(Codes))]
    public void A_text_begins_and_ends_with_the_spaces_of_its_key(string code) => Assert.All(
        Table(code),
        entry =>
        {
            Assert.Equal(entry.Key.Length - entry.Key.TrimStart().Length, entry.Value.Length - entry.Value.TrimStart().Length);
            Assert.Equal(entry.Key.Length - entry.Key.TrimEnd().Length, entry.Value.Length - entry.Value.TrimEnd().Length);
        });

    internal static Dictionary<string, string> Table(string code) =>
        File.Exists(Repository.PathOf(PathOf(code))) ? JsonSerializer.Deserialize<Dictionary<string, string>>(Repository.Read(PathOf(code)))! : [];

    private static string PathOf(string code) => $"src/CanvasCut.Language/Tables/{code}.json";

    private static string Written(IEnumerable<KeyValuePair<string, string>> texts) => JsonSerializer.Serialize(new Dictionary<string, string>(texts), Plain) + "\n";

    private static IEnumerable<string> Gaps(string text) => Gap().Matches(text.Replace("{{", string.Empty, StringComparison.Ordinal)).Select(match => match.Value).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{[0-9]+(:[^}]*)?\}")]
    private static partial Regex Gap();
}
