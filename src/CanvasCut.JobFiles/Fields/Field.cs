namespace CanvasCut.JobFiles;

/// <summary>How a field is written.</summary>
internal enum FieldKind
{
    Text,
    Length,
    LengthPair,
    LengthList,
    Word,
    WordList,
    NameList,
    Flag,
    Count,
    Factor,
    Percent,
    Share,
    Mass,
    Speed,
    Force,
    Pressure,
    Temperature,
    TemperatureStep,
    Humidity,
    Angle,
    Duration,
    Voltage,
    Current,
    Power,
    Charge,
    Energy,
    Coefficient,
    Date,
    Paper,
}

/// <summary>Whether a field must be there.</summary>
internal enum Presence
{
    /// <summary>It must.</summary>
    Required,

    /// <summary>It must when its table is there at all.</summary>
    RequiredInTable,

    /// <summary>It need not, and takes a default.</summary>
    Defaulted,

    /// <summary>It need not, and then nothing is known.</summary>
    Optional,
}

/// <summary>One field of the job file, as docs/job-file.md describes it.</summary>
/// <param name="Name">Its full name; [] stands behind a table that may be there several times.</param>
/// <param name="Kind">How it is written.</param>
/// <param name="Range">What is possible and what is usual.</param>
/// <param name="Presence">Whether it must be there.</param>
internal sealed record Field(string Name, FieldKind Kind, FieldRange Range, Presence Presence)
{
    /// <summary>What is taken when it is left out, as in the file but without quotes; null without a default.</summary>
    public string? Default { get; private init; }

    /// <summary>What is taken instead when only inches are printed; null when the same.</summary>
    public string? ImperialDefault { get; private init; }

    /// <summary>Where the default comes from.</summary>
    public string Source { get; private init; } = string.Empty;

    /// <summary>The list of tables that may stand in its place; null when none may.</summary>
    public string? ReplacedBy { get; private init; }

    /// <summary>The words that may stand there; empty for other kinds.</summary>
    public string[] Words { get; private init; } = [];

    /// <summary>The table it stands in; empty at the top of the file.</summary>
    public string Table => Name.Contains('.', StringComparison.Ordinal) ? Name[..Name.LastIndexOf('.')] : string.Empty;

    /// <summary>Its own name within the table.</summary>
    public string ShortName => Name[(Name.LastIndexOf('.') + 1)..];

    public Field Or(string text, string source) => this with { Default = text, Source = source, Presence = Presence.Defaulted };

    public Field OrImperial(string text) => this with { ImperialDefault = text };

    public Field UnlessGivenBy(string list) => this with { ReplacedBy = list };

    public Field Among(params string[] words) => this with { Words = words };
}
