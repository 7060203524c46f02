using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Values of fields that are required or have a default, once nothing is wrong any more.</summary>
internal sealed class GivenValues(JobValues values)
{
    /// <summary>All values, those without a default too.</summary>
    public JobValues Values { get; } = values;

    public Length Length(string path) => Values.Length(path) ?? throw Absent(path);

    public string Text(string path) => Values.Text(path) ?? throw Absent(path);

    public T Quantity<T>(string path)
        where T : struct => Values.Quantity<T>(path) ?? throw Absent(path);

    /// <summary>The member of an enumeration whose name is the word without its hyphen.</summary>
    public T Word<T>(string path)
        where T : struct, Enum => WordOf<T>(Text(path));

    public Hem Hem(string table) => new(Length($"{table}.turn_under"), Length($"{table}.width"));

    public Sides<Length> Sides(string table) => SidesOf(table, Length);

    public Sides<T> SideWords<T>(string table)
        where T : struct, Enum => SidesOf(table, Word<T>);

    public static T WordOf<T>(string word)
        where T : struct, Enum => Enum.Parse<T>(word.Replace("-", string.Empty, StringComparison.Ordinal), ignoreCase: true);

    private static Sides<T> SidesOf<T>(string table, Func<string, T> read) =>
        new(read($"{table}.forward"), read($"{table}.aft"), read($"{table}.port"), read($"{table}.starboard"));

    private static InvalidOperationException Absent(string path) => new(Say.Of($"{path} has no value although nothing was reported."));
}
