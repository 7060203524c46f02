using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>A grade as read: its kind, where it stands, and the values of its fields.</summary>
internal sealed record MaterialEntry(string Kind, string Id, Place Place, IReadOnlyDictionary<string, object> Values)
{
    public T Value<T>(string field) => (T)Values[field];

    public T? Maybe<T>(string field)
        where T : struct => Values.GetValueOrDefault(field) as T?;

    public string Text(string field) => (string)Values[field];

    /// <summary>The units in which it can be priced.</summary>
    public string[] Units =>
        Kind == "thread" && Values.ContainsKey("spool") ? ["spool"]
        : Values.ContainsKey("roll") ? Kind == "zipper" ? ["roll", "piece"] : ["roll"]
        : Kind is "needle" or "notion" ? [Value<int>("pack") > 1 ? "pack" : "piece"]
        : Kind == "zipper" ? ["m", "yd", "piece"] : ["m", "yd"];
}

/// <summary>The grades there are: those of the program, changed and added to by the user's own file.</summary>
internal sealed class MaterialLibrary
{
    private readonly Dictionary<string, MaterialEntry> _entries;

    private MaterialLibrary(Dictionary<string, MaterialEntry> entries) => _entries = entries;

    /// <summary>The program's own grades.</summary>
    public static MaterialLibrary BuiltIn { get; } = ReadBuiltIn();

    /// <summary>Every grade's id.</summary>
    public IEnumerable<string> Ids => _entries.Keys;

    public MaterialEntry? Find(string id) => _entries.GetValueOrDefault(id);

    /// <summary>The ids of one kind.</summary>
    public IEnumerable<string> IdsOf(string kind) => _entries.Values.Where(entry => entry.Kind == kind).Select(entry => entry.Id);

    /// <summary>The grades with those of a file, which may change single figures of known ones.</summary>
    public MaterialLibrary With(NamedText file, ProblemLog log)
    {
        var entries = new Dictionary<string, MaterialEntry>(_entries, StringComparer.Ordinal);
        new MaterialFileReader(file.Name, log).Read(file.Text, entries);
        return new(entries);
    }

    private static MaterialLibrary ReadBuiltIn()
    {
        const string Resource = "materials.toml";
        using var stream = typeof(MaterialLibrary).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not embedded.");
        using var reader = new StreamReader(stream);
        var log = new ProblemLog();
        var library = new MaterialLibrary(new(StringComparer.Ordinal)).With(new(Resource, reader.ReadToEnd()), log);
        return log.IsEmpty ? library : throw new InvalidOperationException(string.Join('\n', log.InOrder()));
    }
}
