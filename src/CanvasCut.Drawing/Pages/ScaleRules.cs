using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>How the scale test is used, in words.</summary>
internal static class ScaleRules
{
    /// <summary>What to do before reading.</summary>
    public static IReadOnlyList<string> Before =>
    [
        Say.Of("1. Print this page at 100 % (\"actual size\") with the printer, the paper and the settings meant for the templates."),
        Say.Of("2. With a steel rule read the 100 mm square: x along the sheet's short side, y along its long side, to 0.1 mm. Finer: read a long scale, divide by its length, times 100."),
    ];

    /// <summary>What the readings mean.</summary>
    public static IReadOnlyList<string> After =>
    [
        Say.Of("3. Both squares within 0.5 mm of 100 mm: the templates can be printed as they are."),
        Say.Of("4. Off by more, up to 3 %: canvascut scale --read-x 99.2 --read-y 99.8 job.toml, with your readings, stretches the templates to suit; or write read_x = \"99.2 mm\" and read_y = \"99.8 mm\" under [paper] in the job file. On paper their squares must then read 100 mm."),
        Say.Of("5. Off by more than 3 %: something fits the page to the paper. Find that setting."),
    ];
}
