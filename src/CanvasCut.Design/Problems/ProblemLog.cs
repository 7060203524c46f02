using System.Collections.Immutable;

namespace CanvasCut.Design;

/// <summary>Collects problems while a file is read; reading goes on after each.</summary>
public sealed class ProblemLog
{
    private readonly List<Problem> _problems = [];
    private readonly List<Problem> _ofOtherFiles = [];

    /// <summary>Whether nothing has been reported.</summary>
    public bool IsEmpty => _problems.Count + _ofOtherFiles.Count == 0;

    /// <summary>Adds a problem.</summary>
    public void Report(string code, Place place, string message) => _problems.Add(new(code, place, message));

    /// <summary>Puts the problems of another file after those of this one.</summary>
    public void Append(ProblemLog other) => _ofOtherFiles.AddRange(other.InOrder());

    /// <summary>The problems in the order of the file, each once; those of other files after them.</summary>
    public ImmutableArray<Problem> InOrder() =>
    [
        .. _problems.Distinct()
            .OrderBy(problem => problem.Place.Line)
            .ThenBy(problem => problem.Place.Column)
            .Concat(_ofOtherFiles),
    ];

    /// <summary>Builds the value only if nothing was reported, so that a half-read job is never used.</summary>
    public Checked<T> Finish<T>(Func<T> build)
        where T : class => IsEmpty ? new(build(), []) : new(null, InOrder());
}
