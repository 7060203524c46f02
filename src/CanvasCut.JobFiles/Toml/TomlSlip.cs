using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>A line that is no TOML: which of the usual slips it is, and what was meant.</summary>
internal static partial class TomlSlip
{
    private const string CurlyQuotes = "“”„‟«»‹›‘’‚‛";

    /// <summary>What is wrong, and the line as it would be right; null where that is not plain.</summary>
    public static (string Message, string? Meant) Of(string line)
    {
        var found = Heading().Match(line) is { Success: true } heading ? OfHeading(heading)
            : Pair().Match(line) is { Success: true } pair ? OfValue(pair)
            : Unjoined().Match(line) is { Success: true } unjoined ? OfUnjoined(unjoined)
            : null;
        return found is { } slip && (slip.Meant is null || !TomlSyntax.Of(slip.Meant).HasErrors) ? slip : (Foreign(line), null);
    }

    /// <summary>Where in the line, or in its first line, the parser stumbles; counted from 1.</summary>
    public static int ColumnOf(string line) =>
        TomlSyntax.Of(line).Diagnostics.MinBy(message => message.Span.Start.Offset) is { Span.Start: { Line: 0 } start } ? start.Column + 1
        : Pair().Match(line.Split('\n')[0]) is { Success: true } pair ? pair.Groups["value"].Index + 1
        : 1;

    /// <summary>Whether a bracket of a value, or a text over several lines, is still open at the end.</summary>
    public static bool IsOpen(string text)
    {
        var value = text[(text.IndexOf('=', StringComparison.Ordinal) + 1)..];
        if (value.Length == text.Length)
        {
            return false;
        }

        var bare = Quoted().Replace(value, string.Empty);
        return bare.Contains("\"\"\"", StringComparison.Ordinal) || bare.Contains("'''", StringComparison.Ordinal)
            || bare.Count(sign => sign is '[' or '{') > bare.Count(sign => sign is ']' or '}');
    }

    /// <summary>Whether a line looks like a heading or a field, and so cannot belong to a list that began above.</summary>
    public static bool Begins(string line) => HeadingOrField().IsMatch(line);

    /// <summary>Whether a line looks like a table's heading.</summary>
    public static bool IsHeading(string line) => HeadingStart().IsMatch(line);

    private static (string Message, string? Meant)? OfHeading(Match heading)
    {
        var isList = heading.Groups["open"].Length > 1 || heading.Groups["close"].Length > 1;
        var right = isList ? $"[[{heading.Groups["name"].Value}]]" : $"[{heading.Groups["name"].Value}]";
        return (Say.Of($"This is not TOML: the brackets round the table's name do not match; write {right}."), right);
    }

    private static (string Message, string? Meant)? OfUnjoined(Match line)
    {
        var right = $"{line.Groups["name"].Value} = {line.Groups["value"].Value.Trim()}";
        return (Say.Of($"This is not TOML: between a field and its value stands an equals sign; write {right}."), right);
    }

    private static (string Message, string? Meant)? OfValue(Match pair)
    {
        var (head, value) = (pair.Groups["head"].Value, pair.Groups["value"].Value);
        var found = Day(value) ?? Curly(value) ?? FeetAndInches(value) ?? NotClosed(value) ?? Comma(value) ?? Flag(value) ?? Items(value) ?? Bare(value);
        return found is { } slip ? (slip.Message, slip.Right is { } right ? head + right : null) : null;
    }

    private static (string Message, string? Right)? Day(string value) =>
        BareDate().IsMatch(value) ? (Say.Of("This is not TOML: there is no such day; a date is year, month and day, such as 2027-04-01."), null) : null;

    private static (string Message, string? Right)? Curly(string value)
    {
        var isQuoted = IsCurly(value[0]) || value[0] is '[' or '{' or '"';
        var right = string.Concat(value.Select(sign => IsCurly(sign) ? '"' : sign));
        return !isQuoted || right == value || TomlSyntax.Of($"a = {right}").HasErrors ? null
            : (Say.Of($"This is not TOML: curly quotes are not its quotes; write straight ones, {right}."), right);
    }

    private static bool IsCurly(char sign) => CurlyQuotes.Contains(sign, StringComparison.Ordinal);

    private static (string Message, string? Right)? FeetAndInches(string value)
    {
        string[] meant = value is ['"' or '\'', .. var inner, _] ? [inner, value] : [value];
        return meant.FirstOrDefault(text => text.AsSpan().IndexOfAny('\'', '"') >= 0 && LengthText.Parse(text).IsLength) is { } signs
            && InQuotes(LengthForm.Of(signs).Write(LengthText.Parse(signs).Value!.Value)) is { } right
            ? (Say.Of($"This is not TOML: the signs of feet and inches are taken for quotes; write {right}."), right)
            : null;
    }

    private static (string Message, string? Right)? NotClosed(string value)
    {
        var isOpen = value is ['"' or '\'', ..] && value.Count(sign => sign == value[0]) == 1;
        var right = isOpen ? InQuotes(value[1..].Trim()) : null;
        return !isOpen ? null
            : right is null ? (Say.Of("This is not TOML: the quote that closes the text is missing."), null)
            : (Say.Of($"This is not TOML: the quote that closes the text is missing; write {right}."), right);
    }

    private static (string Message, string? Right)? Comma(string value)
    {
        if (DecimalComma().Match(value) is not { Success: true } match)
        {
            return null;
        }

        var (point, none) = (AsValue(value.Replace(',', '.')), AsValue(value.Replace(",", string.Empty, StringComparison.Ordinal)));
        return match.Groups["decimals"].Length == 3 && match.Groups["whole"].Value.TrimStart('-', '+') != "0"
            ? (Say.Of($"This is not TOML: a comma may part thousands or decimals; write {none}, or {point}."), null)
            : (Say.Of($"This is not TOML: decimals have a point; write {point}."), point);
    }

    private static (string Message, string? Right)? Flag(string value)
    {
        var right = value.ToLower(CultureInfo.InvariantCulture);
        return right is "true" or "false" ? (Say.Of($"This is not TOML: write {right} in small letters."), right) : null;
    }

    private static (string Message, string? Right)? Items(string value)
    {
        var right = value is ['[' or '{', ..] ? BareItem().Replace(value, "\"${item}\"") : value;
        return right == value || TomlSyntax.Of($"a = {right}").HasErrors ? null : (Say.Of($"This is not TOML: every length and text needs quotes; write {right}."), right);
    }

    private static (string Message, string? Right)? Bare(string value) => BareText().IsMatch(value) && InQuotes(value) is { } right
        ? (char.IsLetter(value[0]) ? Say.Of($"This is not TOML: a name or word needs quotes round it; write {right}.") : Say.Of($"This is not TOML: the value needs quotes round it; write {right}."), right)
        : null;

    private static string Foreign(string line)
    {
        var reason = TomlSyntax.Of(line).Diagnostics.MinBy(message => message.Span.Start.Offset)!.Message;
        return Say.Of($"This is not TOML: {reason.ReplaceLineEndings(" ").Replace("␤", Say.Of("the end of the line"), StringComparison.Ordinal).TrimEnd('.', ' ')}.");
    }

    private static string AsValue(string text) => text.Any(sign => char.IsLetter(sign) || sign is '%' or ' ') ? $"\"{text}\"" : text;

    private static string? InQuotes(string text) => text.AsSpan().IndexOfAny('"', '\\') >= 0 || text.Any(char.IsControl) ? null : $"\"{text}\"";

    [GeneratedRegex(@"^\s*(?<open>\[{1,2})\s*(?<name>[A-Za-z0-9_.-]+)\s*(?<close>\]{0,3})\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Heading();

    /// <summary>What stands after the equals sign, without a note behind it.</summary>
    [GeneratedRegex(@"^(?<head>\s*[A-Za-z0-9_.-]+\s*=\s*)(?<value>[^\s#\n][^#\n]*?)\s*(#[^\n]*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Pair();

    [GeneratedRegex(@"^\s*(?<name>[A-Za-z0-9_.-]+)\s*[: ]\s*(?<value>""[^""]*""|\[.*\]|[0-9.]+|true|false)\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Unjoined();

    [GeneratedRegex(@"^\s*(\[+\s*[A-Za-z_]|[A-Za-z0-9_.-]+\s*=)", RegexOptions.CultureInvariant)]
    private static partial Regex HeadingOrField();

    [GeneratedRegex(@"^\s*\[+\s*[A-Za-z_]", RegexOptions.CultureInvariant)]
    private static partial Regex HeadingStart();

    /// <summary>Texts and notes, in which brackets do not count.</summary>
    [GeneratedRegex("\"\"\".*?\"\"\"|'''.*?'''|\"(?!\"\")[^\"\n]*\"|'(?!'')[^'\n]*'|#[^\n]*", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}$", RegexOptions.CultureInvariant)]
    private static partial Regex BareDate();

    [GeneratedRegex(@"^""?(?<whole>[-+]?[0-9]+),(?<decimals>[0-9]+)(\s*[A-Za-z/%°]+)?""?$", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    /// <summary>A number with its unit, in a list or a table, without quotes.</summary>
    [GeneratedRegex(@"(?<=[\[,=]\s*)(?<item>[-+]?[0-9][^,\]}""'=]*[A-Za-z%])(?=\s*[,\]}])", RegexOptions.CultureInvariant)]
    private static partial Regex BareItem();

    [GeneratedRegex(@"^[-+]?[\p{L}0-9.][^""\[\]{}=]*$", RegexOptions.CultureInvariant)]
    private static partial Regex BareText();
}
