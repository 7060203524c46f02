using CanvasCut.Language;

namespace CanvasCut.Checks;

/// <summary>Where limits come from that are no field of the job and stand in no publication.</summary>
internal static class LimitSource
{
    /// <summary>What the trade does, without a source.</summary>
    public static string Practice => Say.Of("common practice, no source");

    /// <summary>What this program takes, for want of any.</summary>
    public static string Chosen => Say.Of("chosen for this program");
}
