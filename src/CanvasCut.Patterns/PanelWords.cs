using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>Says of which panel something is told, where a carrier has several.</summary>
public static class PanelWords
{
    /// <summary>A text with the panel's name before it; the text alone where the carrier has one panel.</summary>
    /// <param name="job">The job, of one panel of a row (<see cref="CarrierJob.OfPanel"/>) or of a carrier.</param>
    /// <param name="text">What is told.</param>
    public static string Of(CarrierJob job, string text)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Of(job.PanelName, text);
    }

    /// <summary>The same by the panel's name.</summary>
    public static string Of(MountingName panel, string text) => panel.IsOnly ? text : Say.Of($"panel \"{panel}\": {text}");
}
