using System.Collections.Concurrent;
using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Tests.Job;

/// <summary>The results.json of every example, each made once in a language.</summary>
internal static class WrittenExamples
{
    private static readonly ConcurrentDictionary<(string Example, string Language), Lazy<string>> Made = new();

    /// <summary>What make would write, but for the names of the files beside it.</summary>
    public static string Text(string example, string language) => Made.GetOrAdd((example, language), key => new(() =>
    {
        using var speech = Languages.Speak(key.Language);
        return ResultsJson.Of(ExampleTests.OutcomeOf(key.Example), ["results.json"]);
    })).Value;
}
