namespace CanvasCut.Nesting;

/// <summary>The search that suits a task best: rectangles alone are laid as such, all else is pulled apart.</summary>
public sealed class ThoroughSearch : INestingSearch
{
    /// <inheritdoc/>
    public NestingLayout? Find(NestingTask task, NestingControl control) =>
        RectangleSearch.IsFor(task) ? new RectangleSearch().Find(task, control) : new SeparationSearch().Find(task, control);
}
