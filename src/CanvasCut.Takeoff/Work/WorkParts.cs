using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>The names of what the steps make of the pieces and use again, each a thing in one state.</summary>
public static class WorkParts
{
    /// <summary>The measures, taken twice.</summary>
    public const string Measures = "measures, proved";

    /// <summary>The templates, printed true.</summary>
    public const string Templates = "templates, true to size";

    /// <summary>The templates, laid on the top.</summary>
    public const string TriedTemplates = "templates, tried on the top";

    /// <summary>The carrier with all that must be sewn on while it is flat.</summary>
    public const string FlatCarrier = "carrier, flat work done";

    /// <summary>The carrier with its edges finished.</summary>
    public const string HemmedCarrier = "carrier, edges finished";

    /// <summary>The zippers with caps on their ends.</summary>
    public const string CappedZippers = "zippers, ends capped";

    /// <summary>The panel on its tape.</summary>
    public const string LaidPanel = "panel, laid on the carrier";

    /// <summary>The panel when the bond is full.</summary>
    public const string CuredPanel = "panel, bond cured";

    /// <summary>The carrier with its panel, the bond tried.</summary>
    public const string ProvedCarrier = "carrier with its panel, bond proved";

    /// <summary>The carrier with its panel and all that is set in it.</summary>
    public const string FinishedCarrier = "carrier with its panel, finished";

    /// <summary>The top's zipper halves, held where they will be sewn.</summary>
    public const string TapedZippers = "zipper halves, taped to the top";

    /// <summary>The top with all marks.</summary>
    public const string MarkedTop = "top, marked";

    /// <summary>The top on the bench.</summary>
    public const string LooseTop = "top, off its frame";

    /// <summary>The top with all that is sewn to it, stretched again.</summary>
    public const string StretchedTop = "top, back on its frame";

    /// <summary>All of it in its place.</summary>
    public const string Fitted = "carrier, fitted";

    /// <summary>The cable led and connected.</summary>
    public const string Wired = "cable, led and connected";

    /// <summary>All of it, tested.</summary>
    public const string Tested = "panel, tested";

    /// <summary>All of it after a day.</summary>
    public const string Done = "job, looked at after a day";

    /// <summary>A piece that has been cut.</summary>
    public static string Cut(PatternPiece piece) => $"{piece.Title.Id}, cut";

    /// <summary>A piece with its marks.</summary>
    public static string Marked(PatternPiece piece) => $"{piece.Title.Id}, marked";

    /// <summary>A piece in one, joined of its widths.</summary>
    public static string Joined(string whole) => $"{whole}, widths joined";

    /// <summary>A piece for the top with its own edges finished.</summary>
    public static string Ready(string whole) => $"{whole}, ready to sew on";

    /// <summary>A zipper cut to its run and ticked.</summary>
    public static string Trimmed(Side side) => $"{Words.Of(side)} zipper, trimmed and ticked";

    /// <summary>What holds an edge, its half on the carrier.</summary>
    public static string OnCarrier(EdgePlace edge) => $"{edge.Name}, on the carrier";

    /// <summary>The fasteners of an edge, set in the carrier's flap.</summary>
    public static string SetInCarrier(EdgePlace edge) => $"{edge.Name}, set in the carrier";

    /// <summary>The fasteners of an edge, set on the top.</summary>
    public static string SetOnTop(EdgePlace edge) => $"{edge.Name}, set on the top";

    /// <summary>The carrier held where it will lie, the top's part of its fastenings with it.</summary>
    public const string TapedCarrier = "carrier, taped in its place";

    /// <summary>A part that is sewn to the top.</summary>
    public static string OnTop(string part) => $"{part}, on the top";
}
