namespace CanvasCut.Design;

/// <summary>What a mounting is called: a carrier with its panel or panels, and all that holds it.</summary>
/// <param name="Text">The name in the job file; empty where the top carries one mounting that has no name.</param>
public readonly record struct MountingName(string Text)
{
    /// <summary>The name of a top's only mounting.</summary>
    public static MountingName Only { get; } = new(string.Empty);

    /// <summary>Whether it need not be told from others.</summary>
    public bool IsOnly => string.IsNullOrEmpty(Text);

    /// <inheritdoc/>
    public override string ToString() => Text ?? string.Empty;
}
