using System.Collections.Immutable;

namespace CanvasCut.JobFiles;

/// <summary>A line of a forecast file.</summary>
/// <param name="Line">Counted from 1; of a row over several lines the first.</param>
/// <param name="Fields">Without quotation marks.</param>
/// <param name="IsBroken">Whether a quotation mark stands astray, which was reported.</param>
internal sealed record ForecastRow(int Line, ImmutableArray<string> Fields, bool IsBroken);
