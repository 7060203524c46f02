using System.Text;
using System.Text.RegularExpressions;
using CanvasCut.Checks;
using CanvasCut.Job;
using CanvasCut.Tests.JobFiles;
using CanvasCut.Tests.Takeoff;

namespace CanvasCut.Tests.Job;

public sealed partial class RefitOutcomeTests
{
    private const string Folder = "patterns/refit-larger-panel";

    private static readonly string OldJob = Repository.Read($"{Folder}/old-job.toml");
    private static readonly string NewJob = Repository.Read($"{Folder}/new-job.toml");

    private static readonly Lazy<JobRun> Made = new(() => Outcome(OldJob));

    /// <summary>What is sewn, as make writes it and refit reads it again.</summary>
    internal static OldResults Old(JobRun outcome)
    {
        var results = OldResults.Read(Encoding.UTF8.GetBytes(ResultsJson.OfChecks(outcome)), "results.json");
        Assert.True(results.IsValid, string.Join('\n', results.Problems));
        return results.Value;
    }

    /// <summary>The same panel again, the borders asked for with the room that was kept: all is drawn as it was, byte for byte.</summary>
    [Theory]
    [InlineData("two-bow-small-top")]
    [InlineData("three-bow-middle-tube")]
    [InlineData("inch-wide-panel")]
    public void The_same_panel_leaves_every_piece_as_it_is(string example)
    {
        var old = ExampleTests.OutcomeOf(example);

        var refit = RefitOutcome.Of(Old(old), old.Content.Patterns.Job);

        Assert.All(refit.Pieces, piece => Assert.Equal(RefitFate.Stays, piece.Fate));
        Assert.Equal(
            old.Content.Patterns.Pieces.Select(piece => piece.Title.Name).Order(StringComparer.Ordinal),
            refit.Pieces.Select(piece => piece.Name).Order(StringComparer.Ordinal));
        var made = refit.Made!.Content.Patterns;
        Assert.Equal(Lines(ResultsJson.OfChecks(old)), Lines(ResultsJson.OfChecks(refit.Made)));
        Assert.Equal(old.Content.Patterns.CarrierPieces.Select(piece => piece.Key.Id), made.CarrierPieces.Select(piece => piece.Key.Id));
    }

    /// <summary>The drawing of the carrier is the same file, to the byte but for the job's name and "piece 1 of 7" in its label.</summary>
    [Fact]
    public void The_same_panel_gives_the_same_drawings()
    {
        var old = Outcome(OldJob);

        var before = Drawings(old);
        var now = Drawings(RefitOutcome.Of(Old(old), Sample.Job(OldJob.Replace("border = \"15 mm\"", "border = \"25 mm\"", StringComparison.Ordinal).Replace("keep_room = \"10 mm\"\n", string.Empty, StringComparison.Ordinal))).Made!);

        Assert.Equal(["pieces/carrier.svg"], now.Keys.Where(name => name.Contains("carrier", StringComparison.Ordinal)));
        Assert.Equal(before["pieces/carrier.svg"], now["pieces/carrier.svg"]);
        Assert.DoesNotContain(now.Keys, name => name.Contains("pocket", StringComparison.Ordinal));
    }

    /// <summary>Worked by hand in the example's README: borders of 17 and 18, the carrier alone anew.</summary>
    [Fact]
    public void A_larger_panel_fits_where_room_was_kept()
    {
        var refit = RefitOutcome.Of(Old(Made.Value), Sample.Job(NewJob));

        Assert.Equal(["Carrier"], refit.Pieces.Where(piece => piece.Fate == RefitFate.Anew).Select(piece => piece.Name));
        Assert.All(refit.Pieces.Where(piece => piece.Name != "Carrier"), piece => Assert.Equal(RefitFate.Stays, piece.Fate));
        var mounted = refit.Made!.Content.Patterns.Mounted;
        Assert.Equal(17, mounted.PanelBox.Left - mounted.CarrierBox.Left, 6);
        Assert.Equal(18, mounted.CarrierBox.Top - mounted.PanelBox.Top, 6);
        Assert.Equal(40, mounted.Fastened.Pockets[0].Covers.Millimeters, 6);
        var range = Assert.Single(refit.Ranges);
        Assert.Equal(("890 mm (35 1/16 in) to 1060 mm (41 11/16 in)", "370 mm (14 5/8 in) to 540 mm (21 1/4 in)"), (range.Length, range.Width));
    }

    /// <summary>Every usual check is made on the new carrier, and what is sewn is found right by those on pockets and strips.</summary>
    [Fact]
    public void The_new_carrier_is_checked_as_any_other()
    {
        var made = RefitOutcome.Of(Old(Made.Value), Sample.Job(NewJob)).Made!;

        Assert.False(made.HasFailed);
        Assert.Equal(
            Made.Value.Content.Checks.Select(check => check.Code).Distinct().Where(code => code != CheckCodes.KeepRoom),
            made.Content.Checks.Select(check => check.Code).Distinct());
    }

    /// <summary>The cloth, thread and work of a refit are the carrier's alone, and the work is still planned to its end.</summary>
    [Theory]
    [InlineData("bond-first")]
    [InlineData("sew-first")]
    public void Only_the_carrier_is_bought_and_sewn(string order)
    {
        var made = RefitOutcome.Of(Old(Made.Value), Sample.Job(NewJob + $"[work]\norder = \"{order}\"\n")).Made!;

        Assert.Equal(["carrier", "zipper-end-cap"], made.Content.Plan.Placed.Select(placed => placed.Piece.Key.Id).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(2, made.Content.Plan.Placed.Count(placed => placed.Piece.Key.Id == "zipper-end-cap"));
        Assert.True(made.Content.Plan.Used < Made.Value.Content.Plan.Used);
        Assert.Empty(new WorkAudit(made.Content.Patterns, made.Work).Faults());
        var steps = made.Work.Steps.Select(step => step.Step.Task.Id).ToList();
        Assert.Contains("look-over-top", steps);
        Assert.Contains("fit", steps);
        Assert.DoesNotContain(steps, step => step.EndsWith("-top", StringComparison.Ordinal) && step.StartsWith("sew-", StringComparison.Ordinal));
    }

    /// <summary>Results of a refit know what is sewn as well as those of a first job: the next panel may follow.</summary>
    [Fact]
    public void A_refit_can_be_refitted()
    {
        var second = RefitOutcome.Of(Old(Made.Value), Sample.Job(NewJob)).Made!;

        var third = RefitOutcome.Of(Old(second), Sample.Job(NewJob));

        Assert.All(third.Pieces, piece => Assert.Equal(RefitFate.Stays, piece.Fate));
        Assert.Contains(third.Pieces, piece => piece.Name == "Corner pocket, aft port");
    }

    [Fact]
    public void A_panel_that_is_too_large_gets_no_carrier_but_the_smallest_change()
    {
        var large = Sample.Job(NewJob.Replace("1056 mm", "1100 mm", StringComparison.Ordinal));

        var refit = RefitOutcome.Of(Old(Made.Value), large);

        Assert.Null(refit.Made);
        Assert.Equal("DOES NOT FIT the sewn half: athwart too large by 40 mm (1 9/16 in).", refit.Verdict);
        Assert.Contains(refit.Changes, change => change.Contains("carrier.border.port from 15 mm (9/16 in) to 0 mm (0 in)", StringComparison.Ordinal));
        Assert.Contains(refit.Changes, change => change.Contains("sew each 5 mm (3/16 in) further out", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_sewn_counts_and_the_new_jobs_wishes_do_not()
    {
        var wishing = Sample.Job(NewJob + "[zipper]\nsetback = \"40 mm\"\n[pocket]\nease = \"12.35 mm\"\n");

        var refit = RefitOutcome.Of(Old(Made.Value), wishing);

        Assert.Contains("zipper.setback: the new job says 40 mm (1 9/16 in), but 25.4 mm (1 in) is sewn and counts.", refit.Notes);
        Assert.DoesNotContain(refit.Notes, note => note.StartsWith("pocket.ease", StringComparison.Ordinal));
        Assert.Equal(25.4, refit.Made!.Content.Patterns.Mounted.Fastened.Zippers[0].Choice.Setback.Millimeters, 6);
    }

    /// <summary>Sewn with an ease of 15: a new job that says nothing of it would take 12.35, which is no wish; one that says 14 is told.</summary>
    [Theory]
    [InlineData("", false)]
    [InlineData("[pocket]\nease = \"14 mm\"\n", true)]
    public void An_ease_that_was_left_out_is_no_wish(string wish, bool isTold)
    {
        var sewn = Outcome(OldJob + "\n[pocket]\nease = \"15 mm\"\n");

        var refit = RefitOutcome.Of(Old(sewn), Sample.Job(NewJob + wish));

        Assert.Equal(isTold, refit.Notes.Any(note => note.StartsWith("pocket.ease: the new job says 14 mm", StringComparison.Ordinal)));
        Assert.Equal(isTold, refit.Notes.Any(note => note.StartsWith("pocket.ease", StringComparison.Ordinal)));
    }

    internal static JobRun Outcome(string text)
    {
        var outcome = JobRun.Of(text, "job.toml");
        Assert.True(outcome.IsValid, string.Join('\n', outcome.Problems));
        return outcome.Value;
    }

    private static Dictionary<string, string> Drawings(JobRun outcome) => ResultFiles.Of(outcome)
        .Where(file => file.Name.StartsWith("pieces/", StringComparison.Ordinal))
        .ToDictionary(file => file.Name, file => Label().Replace(Encoding.UTF8.GetString(file.Bytes.Span), string.Empty));

    [GeneratedRegex("Piece [0-9]+ of [0-9]+|Day sailer, [a-z]+ panel")]
    private static partial Regex Label();

    /// <summary>The lines of results.json from the sewn half to the marks and their diagonals: what a refit must not touch.</summary>
    private static string Lines(string json) => json[json.IndexOf("\"sewn\"", StringComparison.Ordinal)..json.IndexOf("\"care\"", StringComparison.Ordinal)];
}
