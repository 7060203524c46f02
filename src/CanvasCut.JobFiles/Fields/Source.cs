using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Where defaults come from, in the words of docs/job-file.md.</summary>
internal static class Source
{
    public static readonly string Practice = Say.Later("common practice, no source");
    public static readonly string Chosen = Say.Later("chosen for this program");
    public static readonly string RuleOfThumb = Say.Later("rule of thumb, editable");
    public static readonly string NoneAssumed = Say.Later("none assumed");
}
