namespace CanvasCut.Nesting;

/// <summary>The searches that suit a task, one after another; the best layout of them.</summary>
/// <remarks>
/// Rectangles alone are laid as such. Of other tasks a small one is begun piece by piece, then all are pulled apart. Each search
/// uses two cores.
/// </remarks>
public sealed class ThoroughSearch : INestingSearch
{
    /// <summary>Up to so many pieces are laid piece by piece first.</summary>
    private const int FewPieces = 20;

    /// <summary>The part of the budget for that.</summary>
    private const double FirstPart = 0.2;

    /// <inheritdoc/>
    public NestingLayout? Find(NestingTask task, NestingControl control)
    {
        if (RectangleSearch.IsFor(task))
        {
            return new RectangleSearch().Find(task, control);
        }

        if (task.Items.Sum(item => item.Demand) > FewPieces)
        {
            return new SeparationSearch().Find(task, control);
        }

        var first = new ContactSearch().Find(task, control with { Budget = control.Budget.Part(FirstPart) });
        return first is null ? null : SeparationSearch.Shorten(first, control with { Budget = control.Budget.Part(1 - FirstPart) });
    }
}
