using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CanvasCut.JobFiles;
using CanvasCut.Tests.Measuring;

namespace CanvasCut.Tests.Cli;

/// <summary>
/// Files that were changed by chance, through the commands that read them: each run ends with a documented code and plain lines, and
/// never by the last line of defence. The budget is fixed and so is the seed; CANVASCUT_ATTACK=20000 does more, from another seed each time.
/// </summary>
public sealed partial class AttackTests
{
    private static readonly (string Name, string Text, Func<string, string[]> Command)[] Targets =
    [
        ("job.toml", Accepting(JobFiles.Sample.Everything), path => ["check", path]),
        ("job.toml", Repository.Read("patterns/two-bow-small-top/job.toml"), path => ["check", path, "--json"]),
        ("job.toml", JobFiles.Sample.Least, path => ["order", path, "--csv"]),
        ("prices.toml", Repository.Read("patterns/priced-own-materials/prices.toml"), path => ["order", Repository.PathOf("patterns/two-bow-small-top/job.toml"), "--prices", path, "--json"]),
        ("materials.toml", Repository.Read("patterns/priced-own-materials/materials.toml"), path => ["check", Repository.PathOf("patterns/two-bow-small-top/job.toml"), "--materials", path]),
        ("measures.toml", Repository.Read("patterns/measured-top/measures.toml"), path => ["measure", path]),
        ("days.csv", "time,air_c,humidity_percent,rain_mm\n2026-05-01T00:00,18,60,0\n2026-05-01T01:00,18,61,0\n", path => ["bonding", "--forecast", path]),
        ("results.json", Repository.Read("patterns/three-bow-middle-tube/expected/results.json"), path => ["refit", path, Repository.PathOf("patterns/two-bow-small-top/job.toml")]),
    ];

    private static readonly string[] Values =
    [
        "-0 mm", "0 mm", "0.01 mm", "0.000001 mm", "1 mm", "85 mm", "1 m", "6 m", "9999999 mm", "1e300", "-1", "0", "nan", "\u001b[31m", "½ in", "0 C", "0 %", "100 %", "999999999999999999999",
        "1 kn", "0.0001", "2100-12-31", "\\ud800", "x", "", "true", "[]", "{}", "mm",
    ];

    [Fact]
    public void Whatever_chance_makes_of_a_file_the_end_is_a_plain_one()
    {
        var (rounds, seed) = Environment.GetEnvironmentVariable("CANVASCUT_ATTACK") is { Length: > 0 } asked
            ? (int.Parse(asked, CultureInfo.InvariantCulture), (ulong)Environment.TickCount64)
            : (64, 20260301UL);
        using var folder = new TemporaryFolder();
        for (var round = 0; round < rounds; round++)
        {
            var dice = new SimulationDice(seed + (ulong)round);
            var (name, text, command) = Targets[round % Targets.Length];
            var changed = Enumerable.Range(0, 1 + dice.Below(4)).Aggregate(text, (before, _) => Changed(before, dice));
            File.WriteAllText(folder.PathOf(name), changed, new UTF8Encoding(false));

            var (code, output, errors) = InProcess.Run(command(folder.PathOf(name)));

            var how = $"seed {seed + (ulong)round}, {string.Join(' ', command(name))}\n{errors}\n{changed}";
            Assert.True(code is >= 0 and <= 3, how);
            Assert.True(code < 2 == (errors.Length == 0), how);
            Assert.DoesNotContain(output + errors, letter => char.IsControl(letter) && letter is not ('\n' or '\r' or '\t'));
        }
    }

    /// <summary>Without a complaint of what is unusual, which would hide what comes after.</summary>
    private static string Accepting(string text) => text.Replace(
        "accept_unusual = [\"pocket.leg\", \"top.bow[2].diameter\"]",
        $"accept_unusual = [{string.Join(", ", JobFields.All.Select(field => $"\"{field.Name.Replace("[]", "[2]", StringComparison.Ordinal)}\""))}]",
        StringComparison.Ordinal);

    /// <summary>Mostly another value in the place of one; now and then letters anywhere, or a line twice or missing.</summary>
    private static string Changed(string text, SimulationDice dice)
    {
        var places = Value().Matches(text);
        if (dice.Below(4) > 0 && places.Count > 0)
        {
            var place = places[dice.Below(places.Count)].Groups["value"];
            return text[..place.Index] + Values[dice.Below(Values.Length)] + text[(place.Index + place.Length)..];
        }

        var at = dice.Below(text.Length + 1);
        return dice.Below(3) switch
        {
            0 => text[..at] + Values[dice.Below(Values.Length)] + text[at..],
            1 => text[..at] + text[Math.Min(text.Length, at + dice.Below(40))..],
            _ => text[..at],
        };
    }

    /// <summary>What stands in quotes or is a number, behind an equals sign, a colon or a comma.</summary>
    [GeneratedRegex("(?<=[=:,] *\"?)(?<value>[-0-9A-Za-z./ ]+)(?=\"?[,\n\\]])")]
    private static partial Regex Value();
}
