namespace CanvasCut.Nesting;

/// <summary>A slower way to show that a length is too short, for tasks with few pieces.</summary>
public interface ILengthProof
{
    /// <summary>Whether it is certain that no layout is as short as this or shorter; the same answer every time.</summary>
    /// <param name="task">The task; every item fits across the strip.</param>
    /// <param name="lengthMm">The length; above zero.</param>
    /// <returns>False when there may be such a layout, or when the search for one had to be given up.</returns>
    bool RulesOut(NestingTask task, double lengthMm);
}
