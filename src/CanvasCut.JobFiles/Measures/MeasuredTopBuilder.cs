using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Builds the measured top of values in which nothing is wrong.</summary>
internal sealed class MeasuredTopBuilder(JobValues values, TomlTable root)
{
    /// <summary>The tube of most tops, as in the job file; what is off by it here is half a millimetre or two of height.</summary>
    private static readonly Length UsualTube = Length.FromInches(1);

    public MeasuredTop Build()
    {
        List<string> bows = [.. values.Tables(MeasureFields.Bow)];
        return new(
            values.Text("name")!,
            values.Length("tape")!.Value,
            [.. bows.Select(BowOf)],
            [.. bows.SelectMany(OfBow), .. OfWhole(bows.Count - 1)]);
    }

    private MeasuredBow BowOf(string bow, int index)
    {
        var name = values.Text($"{bow}.name") ?? Say.Of($"bow {index + 1}");
        var (diameter, sag, written) = (Written($"{bow}.diameter"), Written($"{bow}.sag_aft"), Written($"{bow}.height"));
        var (tube, crown) = ((diameter?.Value ?? UsualTube) / 2, Crown(bow));
        if (written is not { Value: var height })
        {
            return new(name, Length.Zero, new(null, crown, diameter, sag));
        }

        if (values.Quantity<int>("format") == MeasureFields.Format)
        {
            return new(name, height + tube - (crown ?? Length.Zero), new(written, height + tube, diameter, sag));
        }

        var middle = crown is { } known ? new WrittenLength(height + known - tube, written.Form) : null;
        return new(name, height, new(middle, height + crown, diameter, sag));
    }

    private WrittenLength? Written(string path) => values.Length(path) is { } length ? new(length, Form(path) ?? LengthForm.Millimetres) : null;

    private Length? Crown(string bow) => (Mean($"{bow}.crown"), Mean($"{bow}.girth"), Mean($"{bow}.chord")) switch
    {
        ({ } crown, _, _) => crown,
        (null, { } girth, { } chord) => girth > chord ? Length.FromMillimeters(CircularArc.FromGirthAndChord(girth.Millimeters, chord.Millimeters).RiseMm) : Length.Zero,
        _ => null,
    };

    private Length? Mean(string path) => values.Lengths(path) is { Length: > 0 } lengths ? Length.FromMillimeters(lengths.Average(length => length.Millimeters)) : null;

    private IEnumerable<TopMeasure> OfBow(string bow, int index) => MeasureFields.Kinds.SelectMany(kind => Measure(kind.Kind, index, $"{bow}.{kind.Name}"));

    private IEnumerable<TopMeasure> OfWhole(int last) => MeasureFields.Whole.SelectMany(whole => Measure(whole.Kind, whole.IsAtLast ? last : 0, whole.Path));

    private IEnumerable<TopMeasure> Measure(MeasureKind kind, int bow, string path) =>
        values.Lengths(path) is { } readings ? [new(kind, bow, readings, Form(path))] : [];

    private LengthForm? Form(string path)
    {
        var node = FieldPath.Find(root, path).Node;
        return (node is TomlList { Items: [var first, ..] } ? first : node) is TomlScalar { Value: string text } ? LengthForm.Of(text) : null;
    }
}
