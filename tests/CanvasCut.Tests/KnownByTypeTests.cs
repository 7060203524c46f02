using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace CanvasCut.Tests;

/// <summary>
/// A thing is known by what it is: no code takes an id or a printed text apart or compares it. Read from the code by the C#
/// compiler's own parser; docs/decisions/0012-things-known-by-type.md tells why.
/// </summary>
public sealed class KnownByTypeTests
{
    /// <summary>What makes a text that is printed or names a file, wherever it stands.</summary>
    private static readonly HashSet<string> PrintedMembers = ["Subject", "WholeName", "KindName", "Name", "Title"];

    /// <summary>What takes texts apart or looks into them.</summary>
    private static readonly HashSet<string> TakingApart =
        ["StartsWith", "EndsWith", "Contains", "Split", "IndexOf", "LastIndexOf", "Substring", "Replace", "Equals", "Remove", "Trim", "SequenceEqual", "CompareTo", "ContainsKey", "TryGetValue"];

    /// <summary>The words of which ids are made; each stands in one file, so that no other can look for it.</summary>
    private static readonly (string Word, string File)[] IdWords =
    [
        ("mount-flap", "PieceKey.cs"), ("mount-strip", "PieceKey.cs"), ("chafe-patch", "PieceKey.cs"), ("zipper-end-cap", "PieceKey.cs"),
        ("cable-exit-patch", "PieceKey.cs"), ("weather-strip", "PieceKey.cs"), ("-width", "PieceKey.cs"), ("top-edge", "PartKey.cs"), ("carrier-edge", "PartKey.cs"),
    ];

    /// <summary>Where names are those the user, a shop or a standard gave, or those of files and languages: not ours to know by type. Ids and Say.Of are ours everywhere.</summary>
    private static readonly string[] GivenNames = ["CanvasCut.JobFiles", "CanvasCut.Cli", "CanvasCut.Readback", "CanvasCut.Drawing", "CanvasCut.Export", "CanvasCut.Language", "CanvasCut.Job", "CanvasCut.Design", "CanvasCut.Measuring", "CanvasCut.Electrics"];

    public static TheoryData<string> Projects { get; } = [.. Directory.EnumerateDirectories(Repository.PathOf("src"), "CanvasCut.*").Select(folder => Path.GetFileName(folder))];

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_id_and_no_printed_text_is_compared_or_taken_apart(string project) => Assert.Equal(
        [],
        Sources(project).SelectMany(file => Offences(CSharpSyntaxTree.ParseText(File.ReadAllText(file)).GetRoot(), !GivenNames.Contains(project))
            .Select(found => $"{Path.GetFileName(file)}: {found}")));

    [Theory]
    [MemberData(nameof(Projects))]
    public void The_words_of_ids_stand_in_one_place(string project) => Assert.Equal(
        [],
        from file in Sources(project)
        from text in CSharpSyntaxTree.ParseText(File.ReadAllText(file)).GetRoot().DescendantTokens().Where(IsText)
        from known in IdWords
        where Path.GetFileName(file) != known.File && (text.ValueText == known.Word || text.ValueText.Contains($"{known.Word}-", StringComparison.Ordinal))
        select $"{Path.GetFileName(file)}: {text.ValueText}");

    /// <summary>The rule finds what it forbids, and leaves alone what is allowed.</summary>
    [Theory]
    [InlineData("piece.Key.Id == \"carrier\"", true)]
    [InlineData("piece.Key.Id.StartsWith(\"pocket\", StringComparison.Ordinal)", true)]
    [InlineData("ids.Contains(piece.Key.Whole.Id)", true)]
    [InlineData("line.Text == Say.Of(\"centreline\")", true)]
    [InlineData("Say.Of(\"a, b\").Split(',')", true)]
    [InlineData("check.Subject != \"cells\"", true)]
    [InlineData("piece.Title.Name.Split(',')[0]", true)]
    [InlineData("part.ToString() == \"carrier, hemmed\"", true)]
    [InlineData("piece.Title.Name is \"Carrier\"", true)]
    [InlineData("piece.Key == other.Key", false)]
    [InlineData("Words.Of(side)", false)]
    [InlineData("names.Add(piece.Title.Name)", false)]
    [InlineData("text.Length == 0", false)]
    public void The_rule_tells_one_from_the_other(string code, bool isOffence) =>
        Assert.Equal(isOffence, Offences(SyntaxFactory.ParseExpression(code), withNames: true).Any());

    private static IEnumerable<string> Sources(string project) => Directory
        .EnumerateFiles(Repository.PathOf($"src/{project}"), "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));

    private static bool IsText(SyntaxToken token) => token.IsKind(SyntaxKind.StringLiteralToken) || token.IsKind(SyntaxKind.InterpolatedStringTextToken);

    private static IEnumerable<string> Offences(SyntaxNode root, bool withNames) => root.DescendantNodesAndSelf().Where(node => node switch
    {
        BinaryExpressionSyntax compared when compared.IsKind(SyntaxKind.EqualsExpression) || compared.IsKind(SyntaxKind.NotEqualsExpression) =>
            IsPrinted(compared.Left, withNames) || IsPrinted(compared.Right, withNames),
        IsPatternExpressionSyntax { Pattern: ConstantPatternSyntax { Expression: LiteralExpressionSyntax { Token.Value: string } } } matched => IsPrinted(matched.Expression, withNames),
        InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax called } call when TakingApart.Contains(called.Name.Identifier.ValueText) =>
            IsPrinted(called.Expression, withNames) || (called.Name.Identifier.ValueText != "Replace" && call.ArgumentList.Arguments.Any(argument => IsPrinted(argument.Expression, withNames))),
        _ => false,
    }).Select(node => node.ToString());

    private static bool IsPrinted(ExpressionSyntax text, bool withNames) => text switch
    {
        InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax called } => called.ToString() is "Say.Of" or "Say.Within" or "Words.Of" || called.Name.Identifier.ValueText == "ToString" && withNames,
        MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Id" } id => IsKey(id.Expression),
        MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Text" } written => withNames && written.Expression.ToString() is "line" or "row" or "tick",
        // What the user calls the cloth may say of what it is.
        MemberAccessExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Cloth" } } => false,
        MemberAccessExpressionSyntax member => withNames && PrintedMembers.Contains(member.Name.Identifier.ValueText),
        ConditionalAccessExpressionSyntax chained => IsPrinted(chained.WhenNotNull, withNames),
        ParenthesizedExpressionSyntax inner => IsPrinted(inner.Expression, withNames),
        _ => false,
    };

    /// <summary>Whether it is a key of a piece or of a part by its name.</summary>
    private static bool IsKey(ExpressionSyntax owner) => owner switch
    {
        MemberAccessExpressionSyntax member => member.Name.Identifier.ValueText is "Key" or "Whole",
        IdentifierNameSyntax name => name.Identifier.ValueText is "key" or "whole" or "part",
        _ => false,
    };
}
