using System.Text;
using System.Text.RegularExpressions;
using CanvasCut.Job;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;
using Ical.Net;

namespace CanvasCut.Tests.Job;

/// <summary>care.ics against RFC 5545, by its own rules and by Ical.Net, a reader that is not ours.</summary>
public sealed partial class CareCalendarFileTests
{
    private const string HardName = "Ketch; \"Marigold\", after\\top: a very long name with ½ and µ and é so that every line of it must be folded 🙂🙂🙂🙂🙂🙂🙂🙂🙂🙂🙂🙂";
    private static readonly DateOnly Fitted = new(2027, 8, 31);

    private static CarePlan Plan { get; } = CarePlan.Of(SampleJobs.Plain with { Care = new(Fitted, null, HasHookAndLoop: true) });

    /// <summary>3.1: lines end with CR LF, are no longer than 75 octets, and go on after a space; no other control characters.</summary>
    [Fact]
    public void Lines_are_folded_as_the_rfc_says()
    {
        var text = CareCalendarFile.Of(HardName, Fitted, Plan);
        var lines = text.Split("\r\n");

        Assert.Equal(string.Empty, lines[^1]);
        Assert.All(lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.DoesNotContain(text.Replace("\r\n", string.Empty, StringComparison.Ordinal), char.IsControl);
        Assert.Contains(lines, line => line.StartsWith(' '));
        Assert.All(lines, line => Assert.Equal(line, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(line))));
    }

    /// <summary>3.6 and 3.6.1: VERSION and PRODID once; in each event UID, DTSTAMP and DTSTART once, the stamp in UTC (3.8.7.2).</summary>
    [Fact]
    public void Each_event_has_what_it_must_have_once()
    {
        var lines = CareCalendarFile.Of(HardName, Fitted, Plan).Replace("\r\n ", string.Empty, StringComparison.Ordinal).Split("\r\n")[..^1];

        Assert.Equal(("BEGIN:VCALENDAR", "END:VCALENDAR"), (lines[0], lines[^1]));
        Assert.Single(lines, line => line == "VERSION:2.0");
        Assert.Single(lines, line => line.StartsWith("PRODID:", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.Matches(ContentLine(), line));
        var events = string.Join('\n', lines).Split("BEGIN:VEVENT\n")[1..];
        Assert.Equal(Plan.Visits.Sum(visit => visit.Tasks.Length), events.Length);
        foreach (var needed in new[] { "^UID:[0-9a-f]{32}$", "^DTSTAMP:[0-9]{8}T[0-9]{6}Z$", "^DTSTART;VALUE=DATE:[0-9]{8}$", "^SUMMARY:", "^END:VEVENT$" })
        {
            Assert.All(events, each => Assert.Single(Regex.Matches(each, needed, RegexOptions.Multiline)));
        }

        Assert.Equal(events.Length, events.Select(each => each.Split('\n')[0]).Distinct().Count());
    }

    /// <summary>3.3.11: read back by Ical.Net the words are the words again.</summary>
    [Fact]
    public void Another_reader_finds_every_task_on_its_day()
    {
        var calendar = Calendar.Load(CareCalendarFile.Of(HardName, Fitted, Plan))!;

        Assert.Equal(
            Plan.Visits.SelectMany(visit => visit.Tasks.Select(task => (visit.Date!.Value, $"{task.Name} ({HardName})", task.Do))).Order(),
            calendar.Events.Select(each => (DateOnly.FromDateTime(each.Start!.Value), each.Summary!, each.Description!)).Order());
        Assert.All(calendar.Events, each => Assert.True(each.IsAllDay));
    }

    /// <summary>The same task keeps its UID when the day of fitting is moved, so that a calendar changes it and does not add it.</summary>
    [Fact]
    public void A_later_day_of_fitting_keeps_the_uids()
    {
        var later = CarePlan.Of(SampleJobs.Plain with { Care = new(Fitted.AddDays(40), null, HasHookAndLoop: true) });

        Assert.Equal(Uids(CareCalendarFile.Of("Job", Fitted, Plan)), Uids(CareCalendarFile.Of("Job", Fitted.AddDays(40), later)));
        Assert.NotEqual(Uids(CareCalendarFile.Of("Job", Fitted, Plan)), Uids(CareCalendarFile.Of("Other job", Fitted, Plan)));
    }

    /// <summary>Only a job with a day of fitting has the file, and the form and the card take one page each.</summary>
    [Theory]
    [InlineData("", false)]
    [InlineData("[care]\nfitted = 2027-08-31\nhook_and_loop = true\n", true)]
    public void The_calendar_file_comes_with_the_day(string care, bool isThere)
    {
        var outcome = JobRun.Of(Repository.Read("patterns/three-bow-middle-tube/job.toml") + "\n" + care, "job.toml").Value!;
        var pages = CanvasCut.Sheets.CareSheets.Of(outcome.Content.Patterns, outcome.Context);

        Assert.Equal(isThere, ResultFiles.Of(outcome).Any(file => file.Name == "care.ics"));
        Assert.Equal(["Form for the first day", "Stow it", "Care calendar"], pages.Select(page => page.Figures.OfType<CanvasCut.Drawing.Lettering>().First().Text));
    }

    private static IEnumerable<string> Uids(string text) => UidLine().Matches(text).Select(match => match.Value);

    /// <summary>A name, parameters, a colon and a value (3.1, contentline).</summary>
    [GeneratedRegex("^[A-Z-]+(;[A-Z-]+=[A-Za-z0-9-]+)*:.+$")]
    private static partial Regex ContentLine();

    [GeneratedRegex("UID:[0-9a-f]+")]
    private static partial Regex UidLine();
}
