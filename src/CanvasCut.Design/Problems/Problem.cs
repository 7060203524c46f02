namespace CanvasCut.Design;

/// <summary>Where in a job file something stands.</summary>
/// <param name="File">The file's name as the user gave it.</param>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="Column">The column, counted from 1.</param>
/// <param name="Field">The field's full name, as in <c>top.bow[2].station</c>; empty for the whole file.</param>
public readonly record struct Place(string File, int Line, int Column, string Field);

/// <summary>One thing that is wrong with a job file.</summary>
/// <param name="Code">Stable, listed in docs/problems.md.</param>
/// <param name="Place">Where it is.</param>
/// <param name="Message">What is wrong and what would be right.</param>
public sealed record Problem(string Code, Place Place, string Message)
{
    /// <summary>In the form that editors turn into a link.</summary>
    public override string ToString()
    {
        var field = Place.Field.Length > 0 ? $"{Place.Field}: " : string.Empty;
        return $"{Place.File}({Place.Line},{Place.Column}): {Code}: {field}{Message}";
    }
}
