using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace CanvasCut.Language;

/// <summary>A text with gaps and what fills them, kept apart until the language is known; the compiler makes it of <c>$"…"</c>.</summary>
/// <param name="literalLength">How many letters stand outside the gaps.</param>
/// <param name="formattedCount">How many gaps there are.</param>
[InterpolatedStringHandler]
public readonly ref struct Sentence(int literalLength, int formattedCount)
{
    private readonly StringBuilder _key = new(literalLength + (4 * formattedCount));
    private readonly List<object?> _gaps = new(formattedCount);

    /// <summary>What stands between two gaps.</summary>
    public void AppendLiteral(string text) => _key.Append(text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));

    /// <summary>A gap.</summary>
    public void AppendFormatted(object? value) => AppendFormatted(value, null);

    /// <summary>A gap that is filled in a form of its own, as in 0.##.</summary>
    public void AppendFormatted(object? value, string? format)
    {
        _key.Append('{').Append(_gaps.Count);
        if (format is not null)
        {
            _key.Append(':').Append(format);
        }

        _key.Append('}');
        _gaps.Add(value);
    }

    internal string In(Table table) => string.Format(CultureInfo.InvariantCulture, table.Find(_key.ToString()), [.. _gaps]);
}
