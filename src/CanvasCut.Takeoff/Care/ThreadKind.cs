namespace CanvasCut.Takeoff;

/// <summary>How long a kind of thread lasts in strong sun.</summary>
/// <param name="Name">What it is taken for.</param>
/// <param name="LifeMonths">The short end of what is told of it; null when it outlives the cloth.</param>
/// <param name="Source">Who tells so.</param>
internal sealed record ThreadKind(string Name, int? LifeMonths, string Source)
{
    private const string Canvas = "canvas workers' pages; single sources, strong sun";

    private static readonly ThreadKind Lasting = new("PTFE thread", null, $"outlives the cloth: {Canvas}; fine after 7 years in one account");
    private static readonly ThreadKind Heavy = new("heavy polyester, V138 (Tex 135)", 36, $"3 to 5 years: {Canvas}");
    private static readonly ThreadKind Plain = new("polyester", 24, $"2 to 2 1/2 years for light colours, about twice that for dark ones: {Canvas}; 1 to 2 years in the tropics in one account");
    private static readonly ThreadKind Unknown = new("a thread of unknown kind, taken as polyester", Plain.LifeMonths, Plain.Source);

    /// <summary>The kind that a shop's words for a thread name.</summary>
    public static ThreadKind Of(string thread) =>
        Names(thread, "PTFE", "fluoropolymer") ? Lasting
        : Names(thread, "V138", "Tex 135") ? Heavy
        : Names(thread, "polyester", "V69", "V92") ? Plain
        : Unknown;

    private static bool Names(string thread, params IEnumerable<string> words) =>
        words.Any(word => thread.Contains(word, StringComparison.OrdinalIgnoreCase));
}
