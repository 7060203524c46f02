namespace CanvasCut.JobFiles;

/// <summary>The codes of what can be wrong with a job file; docs/problems.md explains each.</summary>
internal static class ProblemCode
{
    public const string Syntax = "CC100";
    public const string Twice = "CC101";
    public const string UnknownField = "CC102";
    public const string Missing = "CC103";
    public const string Blank = "CC104";
    public const string WrongType = "CC105";
    public const string NotLength = "CC106";
    public const string UnknownWord = "CC107";
    public const string NotQuantity = "CC108";
    public const string Impossible = "CC109";
    public const string Unusual = "CC110";
    public const string BowMeasures = "CC111";
    public const string BowsDisagree = "CC112";
    public const string BowPlace = "CC113";
    public const string KeepOutPlace = "CC114";
    public const string PanelSides = "CC115";
    public const string NoCells = "CC116";
    public const string PanelCorner = "CC117";
    public const string OffPanel = "CC118";
    public const string Reveal = "CC119";
    public const string Setback = "CC120";
    public const string Stock = "CC121";
    public const string HemTooWide = "CC122";
    public const string OffTop = "CC123";
    public const string Repeated = "CC124";
    public const string Paper = "CC125";
    public const string Roll = "CC126";
    public const string Format = "CC127";
    public const string UnknownAccepted = "CC128";
}
