using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Reports broken rules at the fields they are about.</summary>
internal sealed class RuleLog(JobValues values, ProblemLog log)
{
    public void When(bool isBroken, string code, string path, string message)
    {
        if (isBroken)
        {
            log.Report(code, values.PlaceOf(path), message + DefaultNote(path));
        }
    }

    public void Unless(bool isKept, string code, string path, string message) => When(!isKept, code, path, message);

    /// <summary>Tells a user why a field is complained of that is not in the file.</summary>
    private string DefaultNote(string path) =>
        !values.IsWritten(path) && KnownFields.At(path)?.Default is { } text ? Say.Of($" It was left out and takes {text}; write your own.") : string.Empty;

    /// <summary>A length for a message; the message is not used when the length is not known.</summary>
    public static string In(Length? length) => length is { } known ? LengthText.Of(known, PrintUnits.Both) : string.Empty;
}
