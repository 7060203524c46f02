namespace CanvasCut.Design;

/// <summary>The finest part of an inch that is printed.</summary>
public enum InchFraction
{
    /// <summary>1/16 in, for what is measured and cut.</summary>
    Sixteenth,

    /// <summary>1/32 in, where parts mate.</summary>
    ThirtySecond,

    /// <summary>1/64 in, the finest mark on a rule.</summary>
    SixtyFourth,
}
