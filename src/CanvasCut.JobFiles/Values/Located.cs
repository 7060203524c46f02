using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>A written value: what it is for, where it stands, and where to complain about it.</summary>
internal sealed record Located(Field Field, Place Place, TomlNode Node, ProblemLog Log)
{
    /// <summary>The value of an item of a list, named after its number.</summary>
    public Located Item(int index, TomlNode node) => this with
    {
        Node = node,
        Place = Place with { Line = node.Place.Line, Column = node.Place.Column, Field = $"{Place.Field}[{index + 1}]" },
    };

    /// <summary>Reports what is wrong with it; there is no value then.</summary>
    public object? Report(string code, string message)
    {
        Log.Report(code, Place, message);
        return null;
    }
}
