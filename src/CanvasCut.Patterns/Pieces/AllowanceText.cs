using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Says in words which allowances a cut line includes.</summary>
internal static class AllowanceText
{
    /// <summary>For a piece with an allowance a side.</summary>
    public static string Of(Sides<Length> allowances, PrintUnits units)
    {
        Side[] sides = [Side.Forward, Side.Aft, Side.Port, Side.Starboard];
        var groups = sides.GroupBy(side => Math.Round(allowances[side].Millimeters, 6)).ToList();
        var words = groups.Count == 1
            ? Say.Of($"{LengthText.Of(allowances.Forward, units)} on every edge")
            : string.Join("; ", groups.Select(group => $"{string.Join(Say.Of(" and "), group.Select(Words.Of))} {LengthText.Of(allowances[group.First()], units)}"));
        return Included(words);
    }

    /// <summary>For allowances told in words.</summary>
    public static string Included(string words) => Say.Of($"Cut line includes: {words}.");
}
