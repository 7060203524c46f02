using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Where rows of stitches lie.</summary>
public static class StitchRows
{
    /// <summary>From a fold to the first row: 1/8 in, US Army FM 10-16 (canvas hem), taken as 3 mm.</summary>
    public static readonly Length FromFold = Length.FromMillimeters(3);

    /// <summary>From one row to the next: 1/4 in; common practice, no source.</summary>
    public static readonly Length Spacing = Length.FromInches(0.25);

    /// <summary>The distance of a row from the fold.</summary>
    /// <param name="row">Counted from 0.</param>
    public static Length DistanceFromFold(int row) => FromFold + (Spacing * row);
}
