using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>The fields whose unusual values were said to be meant.</summary>
internal static class AcceptedFields
{
    private const string Name = "accept_unusual";

    /// <summary>Their names as in a job of one panel; what is accepted of one panel of a list is accepted of all.</summary>
    public static IEnumerable<string> Of(TomlTable root) => Items(root).Select(item => OwnTables.Shared(item.Name));

    /// <summary>Reports names that are no field's.</summary>
    public static void Check(TomlTable root, string fileName, ProblemLog log)
    {
        foreach (var (name, place, index) in Items(root))
        {
            if (KnownFields.At(OwnTables.Shared(name)) is null && !SideNames.Is(OwnTables.Shared(name)))
            {
                var near = NearestWord.To(name, KnownFields.All.Select(field => field.Name.Replace("[]", "[1]", StringComparison.Ordinal)));
                var hint = near is null ? string.Empty : Say.Of($"; did you mean \"{near}\"?");
                log.Report(ProblemCode.UnknownAccepted, new(fileName, place.Line, place.Column, $"{Name}[{index + 1}]"), Say.Of($"There is no field \"{name}\"{(hint.Length > 0 ? hint : ".")}"));
            }
        }
    }

    private static IEnumerable<(string Name, TextPlace Place, int Index)> Items(TomlTable root) =>
        root[Name] is TomlList list
            ? from item in list.Items.Index()
              where item.Item is TomlScalar { Value: string text } && text.Length > 0
              select ((string)((TomlScalar)item.Item).Value!, item.Item.Place, item.Index)
            : [];
}
