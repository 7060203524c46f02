using System.Globalization;

namespace CanvasCut.Tests;

/// <summary>A culture that writes numbers in no way a file may hold them.</summary>
internal static class ForeignCulture
{
    /// <summary>Runs an action in that culture.</summary>
    public static void In(Action action)
    {
        var before = CultureInfo.CurrentCulture;
        var foreign = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        foreign.NumberFormat = new() { NumberDecimalSeparator = ",", NumberGroupSeparator = ".", NegativeSign = "~" };
        CultureInfo.CurrentCulture = foreign;
        try
        {
            action();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
