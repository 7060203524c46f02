using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>The names of what the steps make of the pieces and use again, each a thing in one state.</summary>
public static class WorkParts
{
    /// <summary>The measures, taken twice.</summary>
    public static string Measures => Say.Of("measures, proved");

    /// <summary>The templates, printed true.</summary>
    public static string Templates => Say.Of("templates, true to size");

    /// <summary>The templates, laid on the top.</summary>
    public static string TriedTemplates => Say.Of("templates, tried on the top");

    /// <summary>The carrier with all that must be sewn on while it is flat.</summary>
    public static string FlatCarrier => Say.Of("carrier, flat work done");

    /// <summary>The carrier with its edges finished.</summary>
    public static string HemmedCarrier => Say.Of("carrier, edges finished");

    /// <summary>The carrier with the cable's hole cut and bushed.</summary>
    public static string BushedCarrier => Say.Of("carrier, cable's hole bushed");

    /// <summary>The zippers with caps on their ends.</summary>
    public static string CappedZippers => Say.Of("zippers, ends capped");

    /// <summary>The panel on its tape.</summary>
    public static string LaidPanel => Say.Of("panel, laid on the carrier");

    /// <summary>The panel when the bond is full.</summary>
    public static string CuredPanel => Say.Of("panel, bond cured");

    /// <summary>The carrier with its panel, the bond tried.</summary>
    public static string ProvedCarrier => Say.Of("carrier with its panel, bond proved");

    /// <summary>The carrier with its panel and all that is set in it.</summary>
    public static string FinishedCarrier => Say.Of("carrier with its panel, finished");

    /// <summary>The top's zipper halves, held where they will be sewn.</summary>
    public static string TapedZippers => Say.Of("zipper halves, taped to the top");

    /// <summary>The top with all marks.</summary>
    public static string MarkedTop => Say.Of("top, marked");

    /// <summary>The top on the bench.</summary>
    public static string LooseTop => Say.Of("top, off its frame");

    /// <summary>The top with all that is sewn to it, stretched again.</summary>
    public static string StretchedTop => Say.Of("top, back on its frame");

    /// <summary>All of it in its place.</summary>
    public static string Fitted => Say.Of("carrier, fitted");

    /// <summary>The cable led and connected.</summary>
    public static string Wired => Say.Of("cable, led and connected");

    /// <summary>All of it, tested.</summary>
    public static string Tested => Say.Of("panel, tested");

    /// <summary>All of it after a day.</summary>
    public static string Done => Say.Of("job, looked at after a day");

    /// <summary>A piece that has been cut.</summary>
    public static string Cut(PatternPiece piece) => Say.Of($"{piece.Key.Id}, cut");

    /// <summary>A piece with its marks.</summary>
    public static string Marked(PatternPiece piece) => Say.Of($"{piece.Key.Id}, marked");

    /// <summary>A piece in one, joined of its widths.</summary>
    public static string Joined(string whole) => Say.Of($"{whole}, widths joined");

    /// <summary>A piece for the top with its own edges finished.</summary>
    public static string Ready(string whole) => Say.Of($"{whole}, ready to sew on");

    /// <summary>A zipper cut to its run and ticked.</summary>
    public static string Trimmed(Side side) => Say.Of($"{Words.Of(side)} zipper, trimmed and ticked");

    /// <summary>What holds an edge, its half on the carrier.</summary>
    public static string OnCarrier(EdgePlace edge) => Say.Of($"{edge.Name}, on the carrier");

    /// <summary>The fasteners of an edge, set in the carrier's flap.</summary>
    public static string SetInCarrier(EdgePlace edge) => Say.Of($"{edge.Name}, set in the carrier");

    /// <summary>The fasteners of an edge, set on the top.</summary>
    public static string SetOnTop(EdgePlace edge) => Say.Of($"{edge.Name}, set on the top");

    /// <summary>The rod of a sleeve, cut and tried.</summary>
    public static string RodOf(EdgePlace edge) => Say.Of($"{edge.Name}, rod ready");

    /// <summary>The carrier held where it will lie, the top's part of its fastenings with it.</summary>
    public static string TapedCarrier => Say.Of("carrier, taped in its place");

    /// <summary>A part that is sewn to the top.</summary>
    public static string OnTop(string part) => Say.Of($"{part}, on the top");
}
