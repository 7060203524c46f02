using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Writes what is due when as a calendar after RFC 5545 (iCalendar).</summary>
/// <remarks>
/// One all-day event for each thing due, listed one by one: a rule that repeats by months would skip months without that
/// day. No clock is read: the stamp is the day of fitting, and an event's UID comes of the job's name, the task and its
/// turn, so that a calendar takes a later file as a change of the first.
/// </remarks>
public static class CareCalendarFile
{
    private const string LineEnd = "\r\n";

    /// <summary>RFC 5545, 3.1: a line should not be longer, its end not counted.</summary>
    private const int MostOctets = 75;

    /// <summary>The file's text.</summary>
    /// <param name="jobName">The job's name.</param>
    /// <param name="fitted">The day of fitting.</param>
    /// <param name="plan">What is due; its visits have dates.</param>
    public static string Of(string jobName, DateOnly fitted, CarePlan plan)
    {
        IEnumerable<string> lines =
        [
            "BEGIN:VCALENDAR",
            "VERSION:2.0",
            "PRODID:-//CanvasCut//care calendar//EN",
            "CALSCALE:GREGORIAN",
            .. plan.Visits.SelectMany(visit => visit.Tasks.SelectMany(task => Event(jobName, Day(fitted), visit, task))),
            "END:VCALENDAR",
        ];
        return string.Concat(lines.SelectMany(Folded).Select(line => line + LineEnd));
    }

    private static IEnumerable<string> Event(string jobName, string fitted, CareVisit visit, CareTask task) =>
    [
        "BEGIN:VEVENT",
        $"UID:{Uid(jobName, visit, task)}",
        $"DTSTAMP:{fitted}T000000Z",
        $"DTSTART;VALUE=DATE:{Day(visit.Date ?? throw new InvalidOperationException("A calendar needs dates."))}",
        $"SUMMARY:{Escaped($"{task.Name} ({jobName})")}",
        $"DESCRIPTION:{Escaped(task.Do)}",
        "TRANSP:TRANSPARENT",
        "END:VEVENT",
    ];

    private static string Uid(string jobName, CareVisit visit, CareTask task)
    {
        var name = FormattableString.Invariant($"{jobName}\n{task.Id}\n{visit.Months}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(name)))[..32];
    }

    private static string Day(DateOnly date) => date.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    /// <summary>RFC 5545, 3.3.11: backslash, semicolon, comma and line break are written with a backslash.</summary>
    private static string Escaped(string text) => text
        .Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace(";", "\\;", StringComparison.Ordinal)
        .Replace(",", "\\,", StringComparison.Ordinal)
        .ReplaceLineEndings("\\n");

    /// <summary>A long line as several, each after the first begun with a space; no character is torn.</summary>
    private static IEnumerable<string> Folded(string line)
    {
        var part = new StringBuilder();
        var octets = 0;
        foreach (var character in line.EnumerateRunes())
        {
            if (octets + character.Utf8SequenceLength > MostOctets)
            {
                yield return part.ToString();
                part.Clear().Append(' ');
                octets = 1;
            }

            part.Append(character);
            octets += character.Utf8SequenceLength;
        }

        yield return part.ToString();
    }
}
