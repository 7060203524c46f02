using System.Diagnostics;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Cli;

/// <summary>
/// A line on the terminal that tells how a layout gets on, once it takes longer than a second; it is wiped out at the end.
/// Nothing is written where no person reads the complaints.
/// </summary>
internal sealed class LayoutLine : IDisposable
{
    private const string BackToStart = "\r";
    private const string WipeToEnd = "\u001b[K";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(0.25);

    private readonly Faces _faces;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly Lock _gate = new();
    private readonly Timer? _timer;
    private PlanProgress? _latest;
    private bool _isShown;
    private bool _isOver;

    public LayoutLine(Faces faces)
        : this(faces, Patience)
    {
    }

    internal LayoutLine(Faces faces, TimeSpan patience)
    {
        _faces = faces;
        _timer = faces.IsLive ? new Timer(_ => Show(), null, patience, Beat) : null;
    }

    /// <summary>Told of every shorter layout, from any thread.</summary>
    public void Tell(PlanProgress progress)
    {
        lock (_gate)
        {
            _latest = progress;
        }
    }

    /// <summary>Wipes the line out.</summary>
    public void Dispose()
    {
        _timer?.Dispose();
        lock (_gate)
        {
            _isOver = true;
            if (_isShown)
            {
                Send(BackToStart + WipeToEnd);
            }
        }
    }

    private void Show()
    {
        lock (_gate)
        {
            if (!_isOver)
            {
                _isShown = true;
                Send(BackToStart + TextOf(_latest, _clock.Elapsed) + WipeToEnd);
            }
        }
    }

    private void Send(string text)
    {
        var to = Faces.Plain(_faces.Errors);
        to.Write(text);
        to.Flush();
    }

    internal static string TextOf(PlanProgress? progress, TimeSpan elapsed)
    {
        var time = FormattableString.Invariant($"{elapsed.TotalSeconds:0} s");
        return progress is null
            ? Say.Of($"Laying the pieces out, {time}")
            : Say.Of($"Laying the pieces out: {Text(progress.Best)} found, not below {Text(progress.Bound)}, {time}");
    }

    private static string Text(Length length) => LengthText.Millimetres(Length.FromMillimeters(Math.Round(length.Millimeters)));
}
