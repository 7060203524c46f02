using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The grades that a job chooses, the defaults that follow from them, and the prices.</summary>
internal sealed class SupplyChoice
{
    private const string FromMaterials = "materials";

    /// <summary>Each field that names a grade, its kind, and the fields that take their default from the grade.</summary>
    private static readonly (string Field, string Kind, (string Field, string Figure)[] Follow)[] Choices =
    [
        ("cloth.grade", "cloth", [("cloth.name", "name"), ("cloth.roll_width", "roll_width"), ("cloth.widths", "roll_width")]),
        ("zipper.grade", "zipper", [("zipper.chain", "chain"), ("zipper.overall_width", "overall_width")]),
        ("sewing.thread_grade", "thread", [("sewing.thread", "name")]),
        ("tapes.basting", "tape", []),
        ("tapes.binding", "tape", []),
        ("tapes.foam", "tape", []),
        ("tapes.webbing", "tape", []),
        ("tapes.hook_and_loop", "tape", []),
        ("tapes.lacing", "tape", []),
    ];

    private readonly TomlTable _root;
    private readonly MaterialLibrary _library;
    private readonly PriceList? _prices;

    private SupplyChoice(TomlTable root, MaterialLibrary library, PriceList? prices) => (_root, _library, _prices) = (root, library, prices);

    /// <summary>Reads the files that a job names or that are named instead, and looks up its grades.</summary>
    /// <param name="root">The job.</param>
    /// <param name="fileName">What messages call it.</param>
    /// <param name="side">The files.</param>
    /// <param name="logs">For the job's problems, and for those of the other files.</param>
    public static SupplyChoice Read(TomlTable root, string fileName, SideFiles side, (ProblemLog Job, ProblemLog Materials, ProblemLog Prices) logs)
    {
        var materials = side.Materials ?? Named(root, "materials", fileName, side, logs.Job);
        var library = materials is null ? MaterialLibrary.BuiltIn : MaterialLibrary.BuiltIn.With(materials, logs.Materials);
        var prices = side.Prices ?? Named(root, "prices", fileName, side, logs.Job);
        var choice = new SupplyChoice(root, library, prices is null ? null : new PriceFile(library, prices.Name, logs.Prices).Read(prices.Text));
        choice.Check(fileName, logs.Job);
        return choice;
    }

    /// <summary>The same files for another view of the job, whose grades are looked up anew.</summary>
    public SupplyChoice For(TomlTable root, string fileName, ProblemLog log)
    {
        var choice = new SupplyChoice(root, _library, _prices);
        choice.Check(fileName, log);
        return choice;
    }

    /// <summary>The default of a field that follows a grade; null when the field's own default holds.</summary>
    public (string Text, string Source)? DefaultOf(string path)
    {
        var choice = Choices.FirstOrDefault(each => each.Follow.Any(follow => follow.Field == path));
        if (choice.Field is null || EntryOf(choice.Field) is not { } entry || entry == MaterialLibrary.BuiltIn.Find(DefaultId(choice.Field)))
        {
            return null;
        }

        var text = entry.Values.GetValueOrDefault(choice.Follow.First(follow => follow.Field == path).Figure) switch
        {
            Length length => LengthText.Exact(length),
            string name => Say.Of(name),
            _ => null,
        };
        return text is null ? null : (text, $"{FromMaterials}: {entry.Id}, {Say.Of(entry.Text("confidence"))}");
    }

    public JobSupplies Build() => SupplyBuilder.Build(field => EntryOf(field)!, id => _library.Find(id)!);

    public PriceList? Prices => _prices;

    private void Check(string fileName, ProblemLog log)
    {
        foreach (var (field, kind, _) in Choices)
        {
            var (id, node) = (IdOf(field), FieldPath.Find(_root, field).Node);
            if (id is null || node is null)
            {
                continue;
            }

            var place = new Place(fileName, node.Place.Line, node.Place.Column, field);
            if (_library.Find(id) is not { } entry || entry.Kind != kind)
            {
                log.Report(ProblemCode.Grade, place, GradeText.Unknown(kind, id, _library.IdsOf(kind)));
            }
            else if (kind == "tape" && entry.Values.GetValueOrDefault("use") is string use && use != UseOf(field))
            {
                log.Report(ProblemCode.Grade, place, Say.Of($"\"{id}\" is {use} tape; name one for {UseOf(field)}."));
            }
        }
    }

    private static string UseOf(string field) => field.Split('.')[1].Replace('_', '-');

    private MaterialEntry? EntryOf(string field) => IdOf(field) is { } id ? _library.Find(id) : null;

    private string? IdOf(string field) => FieldPath.Find(_root, field).Node switch
    {
        null => DefaultId(field),
        TomlScalar { Value: string text } when !string.IsNullOrWhiteSpace(text) => text.Trim(),
        _ => null,
    };

    private static string DefaultId(string field) => KnownFields.At(field)!.Default!;

    private static NamedText? Named(TomlTable root, string field, string fileName, SideFiles side, ProblemLog log)
    {
        if (root[field] is not TomlScalar { Value: string name } node || string.IsNullOrWhiteSpace(name))
        {
            return null;
        }

        var file = side.Beside(name.Trim());
        if (file is null)
        {
            log.Report(ProblemCode.SideFile, new(fileName, node.Place.Line, node.Place.Column, field), Say.Of($"\"{name}\" cannot be read; name a file of at most 100 kB, relative to the job file."));
        }

        return file;
    }
}
