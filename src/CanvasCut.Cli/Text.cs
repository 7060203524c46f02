using CanvasCut.Language;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace CanvasCut.Cli;

/// <summary>What stands in a cell of a table, with control characters shown.</summary>
/// <remarks>It has the name of the library's own, which sends them to the terminal, so that none of these is made by mistake.</remarks>
internal sealed class Text(string text, Style? style = null) : IRenderable
{
    private readonly IRenderable _shown = new Spectre.Console.Text(VisibleText.OfLines(text), style);

    /// <inheritdoc/>
    public Measurement Measure(RenderOptions options, int maxWidth) => _shown.Measure(options, maxWidth);

    /// <inheritdoc/>
    public IEnumerable<Segment> Render(RenderOptions options, int maxWidth) => _shown.Render(options, maxWidth);
}
