using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>What the steps make of the pieces and use again, each a thing in one state.</summary>
public static class WorkParts
{
    /// <summary>The measures, taken twice.</summary>
    public static WorkPart Measures => new(WorkState.Measures, null, () => Say.Of("measures, proved"));

    /// <summary>The templates, printed true.</summary>
    public static WorkPart Templates => new(WorkState.Templates, null, () => Say.Of("templates, true to size"));

    /// <summary>The templates, laid on the top.</summary>
    public static WorkPart TriedTemplates => new(WorkState.TriedTemplates, null, () => Say.Of("templates, tried on the top"));

    /// <summary>The carrier with all that must be sewn on while it is flat.</summary>
    public static WorkPart FlatCarrier => new(WorkState.FlatCarrier, null, () => Say.Of("carrier, flat work done"));

    /// <summary>The carrier with its edges finished.</summary>
    public static WorkPart HemmedCarrier => new(WorkState.HemmedCarrier, null, () => Say.Of("carrier, edges finished"));

    /// <summary>The carrier with the cable's hole cut and bushed.</summary>
    public static WorkPart BushedCarrier => new(WorkState.BushedCarrier, null, () => Say.Of("carrier, cable's hole bushed"));

    /// <summary>The zippers with caps on their ends.</summary>
    public static WorkPart CappedZippers => new(WorkState.CappedZippers, null, () => Say.Of("zippers, ends capped"));

    /// <summary>The panel on its tape.</summary>
    public static WorkPart LaidPanel => new(WorkState.LaidPanel, null, () => Say.Of("panel, laid on the carrier"));

    /// <summary>The panel when the bond is full.</summary>
    public static WorkPart CuredPanel => new(WorkState.CuredPanel, null, () => Say.Of("panel, bond cured"));

    /// <summary>The carrier with its panel, the bond tried.</summary>
    public static WorkPart ProvedCarrier => new(WorkState.ProvedCarrier, null, () => Say.Of("carrier with its panel, bond proved"));

    /// <summary>The carrier with its panel and all that is set in it.</summary>
    public static WorkPart FinishedCarrier => new(WorkState.FinishedCarrier, null, () => Say.Of("carrier with its panel, finished"));

    /// <summary>The top's zipper halves, held where they will be sewn.</summary>
    public static WorkPart TapedZippers => new(WorkState.TapedZippers, null, () => Say.Of("zipper halves, taped to the top"));

    /// <summary>The top with all marks.</summary>
    public static WorkPart MarkedTop => new(WorkState.MarkedTop, null, () => Say.Of("top, marked"));

    /// <summary>The top on the bench.</summary>
    public static WorkPart LooseTop => new(WorkState.LooseTop, null, () => Say.Of("top, off its frame"));

    /// <summary>The top with all that is sewn to it, stretched again.</summary>
    public static WorkPart StretchedTop => new(WorkState.StretchedTop, null, () => Say.Of("top, back on its frame"));

    /// <summary>All of it in its place.</summary>
    public static WorkPart Fitted => new(WorkState.Fitted, null, () => Say.Of("carrier, fitted"));

    /// <summary>The cable led and connected.</summary>
    public static WorkPart Wired => new(WorkState.Wired, null, () => Say.Of("cable, led and connected"));

    /// <summary>All of it, tested.</summary>
    public static WorkPart Tested => new(WorkState.Tested, null, () => Say.Of("panel, tested"));

    /// <summary>All of it after a day.</summary>
    public static WorkPart Done => new(WorkState.Done, null, () => Say.Of("job, looked at after a day"));

    /// <summary>A piece that has been cut.</summary>
    public static WorkPart Cut(PatternPiece piece) => new(WorkState.Cut, new(piece.Key), () => Say.Of($"{piece.Key.Id}, cut"));

    /// <summary>A piece with its marks.</summary>
    public static WorkPart Marked(PatternPiece piece) => new(WorkState.Marked, new(piece.Key), () => Say.Of($"{piece.Key.Id}, marked"));

    /// <summary>A piece in one, joined of its widths.</summary>
    public static WorkPart Joined(PieceKey whole) => new(WorkState.Joined, new(whole), () => Say.Of($"{whole.Id}, widths joined"));

    /// <summary>A piece for the top with its own edges finished.</summary>
    public static WorkPart Ready(PieceKey whole) => new(WorkState.Ready, new(whole), () => Say.Of($"{whole.Id}, ready to sew on"));

    /// <summary>A zipper cut to its run and ticked.</summary>
    public static WorkPart Trimmed(Side side) => new(WorkState.Trimmed, new(null, side), () => Say.Of($"{Words.Of(side)} zipper, trimmed and ticked"));

    /// <summary>What holds an edge, its half on the carrier.</summary>
    public static WorkPart OnCarrier(EdgePlace edge) => new(WorkState.OnCarrier, new(null, edge.Side), () => Say.Of($"{edge.Name}, on the carrier"));

    /// <summary>A weather strip that is sewn to the carrier.</summary>
    public static WorkPart OnCarrier(PieceKey strip) => new(WorkState.OnCarrier, new(strip), () => Say.Of($"{strip.Id}, on the carrier"));

    /// <summary>What holds a weather strip, its part on the carrier's side.</summary>
    public static WorkPart HoldOnCarrier(PieceKey strip) => new(WorkState.SetInCarrier, new(strip), () => Say.Of($"{strip.Id}, what holds it set on the carrier"));

    /// <summary>What holds a weather strip, its part on the top's side.</summary>
    public static WorkPart HoldOnTop(PieceKey strip) => new(WorkState.SetOnTop, new(strip), () => Say.Of($"{strip.Id}, what holds it set on the top"));

    /// <summary>The fasteners of an edge, set in the carrier's flap.</summary>
    public static WorkPart SetInCarrier(EdgePlace edge) => new(WorkState.SetInCarrier, new(null, edge.Side), () => Say.Of($"{edge.Name}, set in the carrier"));

    /// <summary>The fasteners of an edge, set on the top.</summary>
    public static WorkPart SetOnTop(EdgePlace edge) => new(WorkState.SetOnTop, new(null, edge.Side), () => Say.Of($"{edge.Name}, set on the top"));

    /// <summary>The rod of a sleeve, cut and tried.</summary>
    public static WorkPart RodOf(EdgePlace edge) => new(WorkState.RodOf, new(null, edge.Side), () => Say.Of($"{edge.Name}, rod ready"));

    /// <summary>The carrier held where it will lie, the top's part of its fastenings with it.</summary>
    public static WorkPart TapedCarrier => new(WorkState.TapedCarrier, null, () => Say.Of("carrier, taped in its place"));

    /// <summary>A part that is sewn to the top.</summary>
    internal static WorkPart OnTop(TopPart part) => new(WorkState.OnTop, part.Thing, () => Say.Of($"{part.Name}, on the top"));
}
