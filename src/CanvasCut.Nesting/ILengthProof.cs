namespace CanvasCut.Nesting;

/// <summary>A way to show, by trying all there is, whether a layout can be as short as a length.</summary>
public interface ILengthProof
{
    /// <summary>Tries every layout that could matter, up to a number of steps.</summary>
    /// <param name="task">What is to be placed.</param>
    /// <param name="lengthMm">The length.</param>
    /// <returns>What is certain; the same every time.</returns>
    LengthAnswer Try(NestingTask task, double lengthMm);
}

/// <summary>Whether a layout can be as short as a length.</summary>
public enum LengthAnswer
{
    /// <summary>It would take too many steps to tell, or the task is not of a kind that is told.</summary>
    Unknown,

    /// <summary>There is a layout as short as that, or there would be with a hair more room.</summary>
    Possible,

    /// <summary>There is none.</summary>
    Impossible,
}
