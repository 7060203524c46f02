namespace CanvasCut.Nesting;

/// <summary>By which turns a piece may be placed.</summary>
public enum AllowedTurns
{
    /// <summary>As it is only.</summary>
    None,

    /// <summary>As it is, or turned by 180 degrees.</summary>
    Half,

    /// <summary>Turned by any number of quarters.</summary>
    Quarter,

    /// <summary>Turned by any multiple of <see cref="NestingItem.FreeStepDegrees"/> degrees.</summary>
    Free,
}
