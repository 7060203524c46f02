using System.Collections.Immutable;

namespace CanvasCut.Design;

/// <summary>A forecast of the weather, hour by hour without gaps.</summary>
/// <param name="Hours">At least one.</param>
public sealed record Forecast(ImmutableArray<ForecastHour> Hours);
