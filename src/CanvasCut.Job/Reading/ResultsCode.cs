namespace CanvasCut.Job;

/// <summary>The codes of what can be wrong with an old results.json; docs/refit.md explains each. A code never changes its meaning.</summary>
public static class ResultsCode
{
    /// <summary>The file is missing or cannot be read.</summary>
    public const string Missing = "CC180";

    /// <summary>The file is none of ours.</summary>
    public const string NotOurs = "CC181";

    /// <summary>The file was written by a version that did not keep the sewn half, or in a form this one does not read.</summary>
    public const string OtherVersion = "CC182";

    /// <summary>The file is ours, but something is missing in it, cannot be, or contradicts something else.</summary>
    public const string Damaged = "CC183";

    /// <summary>An edge of what is sewn is not held by a zipper.</summary>
    public const string NoZippers = "CC184";

    /// <summary>The file tells of several carriers.</summary>
    public const string SeveralCarriers = "CC185";
}
