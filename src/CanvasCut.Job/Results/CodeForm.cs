using System.Text.Json;
using System.Text.Json.Serialization;

namespace CanvasCut.Job;

/// <summary>Writes one of several codes in small letters with hyphens, as in fore-aft, and reads no other.</summary>
internal sealed class CodeForm<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false)
    where T : struct, Enum;
