using CanvasCut.Job;
using CanvasCut.Takeoff;

namespace CanvasCut.Cli;

/// <summary>Shows a line on the terminal while a run looks for its cut plan.</summary>
internal sealed class PlanWatch(Faces faces) : IRunWatch, IDisposable
{
    private LayoutLine? _line;

    /// <inheritdoc/>
    public void Begins(RunStage stage)
    {
        if (stage == RunStage.Plan)
        {
            _line = new(faces);
        }
    }

    /// <inheritdoc/>
    public void Ends(RunStage stage)
    {
        if (stage == RunStage.Plan)
        {
            _line?.Dispose();
        }
    }

    /// <inheritdoc/>
    public void Plans(PlanProgress progress) => _line?.Tell(progress);

    /// <inheritdoc/>
    public void Dispose() => _line?.Dispose();
}
