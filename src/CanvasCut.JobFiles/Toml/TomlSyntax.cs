using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace CanvasCut.JobFiles;

/// <summary>Tomlyn's parser, as it is used here.</summary>
internal static class TomlSyntax
{
    /// <summary>The syntax tree of a text, wrong parts and all.</summary>
    /// <param name="text">Without halves of character pairs.</param>
    /// <param name="validate">Whether names that are defined twice count as errors too.</param>
    /// <remarks>The line end is added because the parser throws at a backslash that is a text's last character.</remarks>
    public static DocumentSyntax Of(string text, bool validate = false) => SyntaxParser.Parse(text + "\n", validate: validate);
}
