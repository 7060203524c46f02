namespace CanvasCut.JobFiles;

/// <summary>Where defaults come from, in the words of docs/job-file.md.</summary>
internal static class Source
{
    public const string Practice = "common practice, no source";
    public const string Chosen = "chosen for this program";
    public const string RuleOfThumb = "rule of thumb, editable";
    public const string NoneAssumed = "none assumed";
}
