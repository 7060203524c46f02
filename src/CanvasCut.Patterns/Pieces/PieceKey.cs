using CanvasCut.Design;

namespace CanvasCut.Patterns;

/// <summary>What a piece of cloth is for.</summary>
public enum PieceKind
{
    /// <summary>What the panel is bonded to.</summary>
    Carrier,

    /// <summary>Holds a corner of the carrier.</summary>
    Pocket,

    /// <summary>Covers an edge from the weather.</summary>
    WeatherStrip,

    /// <summary>Lies under or against a flap, on the top.</summary>
    MountStrip,

    /// <summary>Lies between the top and a tube.</summary>
    ChafePatch,

    /// <summary>Closes the cut end of a zipper's tape.</summary>
    EndCap,

    /// <summary>Strengthens the cable's hole.</summary>
    ExitPatch,

    /// <summary>Holds an edge of the carrier in the place of a zipper.</summary>
    MountFlap,
}

/// <summary>Which piece it is: everything that tells it from the other pieces of a job.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Mounting">Whose it is; nothing where a top has one mounting only.</param>
/// <param name="Side">The edge it belongs to; null where it belongs to none.</param>
/// <param name="Corner">The corner it belongs to; null where it belongs to none.</param>
/// <param name="Bow">The bow it belongs to, counted from 1; null where it belongs to none.</param>
/// <param name="Width">Which width of it, counted from 1; null for the whole piece.</param>
public sealed record PieceKey(
    PieceKind Kind, MountingName Mounting = default, Side? Side = null, Corner? Corner = null, int? Bow = null, int? Width = null)
{
    /// <summary>Which panel of several on one carrier it belongs to; nothing where it belongs to all, or the carrier has one.</summary>
    public MountingName Panel { get; init; }

    /// <summary>The piece that this one is a width of; itself when it is whole.</summary>
    public PieceKey Whole => this with { Width = null };

    /// <summary>
    /// Fit for a file name: lower-case letters, digits and hyphens; unique in the job, the same in every language. It is made
    /// here and nowhere else, and nothing finds a piece by it.
    /// </summary>
    public string Id => string.Join('-', Parts());

    /// <inheritdoc/>
    public override string ToString() => Id;

    private IEnumerable<string> Parts()
    {
        // Names of panels and of mountings are unique together.
        var owner = Panel.IsOnly ? Mounting : Panel;
        if (!owner.IsOnly)
        {
            yield return owner.Text;
        }

        yield return Word;
        if (Side is { } side)
        {
            yield return Words.Id(side);
        }

        if (Corner is { } corner)
        {
            yield return corner.Id;
        }

        if (Bow is { } bow)
        {
            yield return FormattableString.Invariant($"bow-{bow}");
        }

        if (Width is { } width)
        {
            yield return FormattableString.Invariant($"width-{width}");
        }
    }

    /// <summary>What it is for, as its id says it.</summary>
    public string Word => Kind switch
    {
        PieceKind.Carrier => "carrier",
        PieceKind.Pocket => "pocket",
        PieceKind.WeatherStrip => "weather-strip",
        PieceKind.MountStrip => "mount-strip",
        PieceKind.ChafePatch => "chafe-patch",
        PieceKind.EndCap => "zipper-end-cap",
        PieceKind.ExitPatch => "cable-exit-patch",
        _ => "mount-flap",
    };
}
