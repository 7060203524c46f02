using System.Globalization;

namespace CanvasCut.Language;

/// <summary>The time in which a language is spoken; the one before it is spoken again afterwards.</summary>
public sealed class Speech : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentUICulture;

    internal Speech(CultureInfo now) => CultureInfo.CurrentUICulture = now;

    /// <summary>Speaks as before.</summary>
    public void Dispose() => CultureInfo.CurrentUICulture = _before;
}
