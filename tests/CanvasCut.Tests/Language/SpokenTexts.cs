using CanvasCut.JobFiles;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Tomlyn;
using Tomlyn.Model;

namespace CanvasCut.Tests.Language;

/// <summary>Every text that the code puts into words, read from the code itself by the C# compiler's own parser.</summary>
internal static class SpokenTexts
{
    /// <summary>The keys of the tables, as the program makes them.</summary>
    public static SortedSet<string> All { get; } = new([.. InCode(), .. OfMaterials(), .. Starter.Notes], StringComparer.Ordinal);

    private static IEnumerable<string> InCode() => Directory
        .EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"))
        .SelectMany(path => CSharpSyntaxTree.ParseText(File.ReadAllText(path)).GetRoot().DescendantNodes())
        .OfType<InvocationExpressionSyntax>()
        .Where(call => call.Expression.ToString() is "Say.Of" or "Say.Later")
        .Select(call => KeyOf(call.ArgumentList.Arguments[0].Expression))
        .OfType<string>();

    /// <summary>What is told of the program's own grades.</summary>
    private static IEnumerable<string> OfMaterials() => TomlSerializer.Deserialize<TomlTable>(Repository.Read("src/CanvasCut.JobFiles/Supplies/materials.toml"))!
        .Values.OfType<TomlTable>()
        .SelectMany(kind => kind.Values.OfType<TomlTable>())
        .SelectMany(grade => new[] { "name", "source", "confidence" }.Select(field => grade[field]).OfType<string>());

    /// <summary>The text that a table has it under; null for what is not written out in the code.</summary>
    private static string? KeyOf(ExpressionSyntax text)
    {
        var gaps = 0;
        return PartsOf(text) is { } parts && parts.All(part => part is not null)
            ? string.Concat(parts.Select(part => part is InterpolationSyntax gap ? $"{{{gaps++}{gap.FormatClause}}}" : (string)part!))
            : null;
    }

    /// <summary>Texts and gaps one after the other; null stands for something else.</summary>
    private static IReadOnlyList<object?> PartsOf(ExpressionSyntax text) => text switch
    {
        LiteralExpressionSyntax { Token.Value: string words } => [words],
        BinaryExpressionSyntax sum when sum.IsKind(SyntaxKind.AddExpression) => [.. PartsOf(sum.Left), .. PartsOf(sum.Right)],
        InterpolatedStringExpressionSyntax gapped => [.. gapped.Contents.Select(part => part is InterpolatedStringTextSyntax words ? (object)Escaped(words) : part)],
        ParenthesizedExpressionSyntax inner => PartsOf(inner.Expression),
        _ => [null],
    };

    /// <summary>The letters between two gaps; doubled braces stay doubled, as a format has them.</summary>
    private static string Escaped(InterpolatedStringTextSyntax words) => words.TextToken.ValueText.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);
}
