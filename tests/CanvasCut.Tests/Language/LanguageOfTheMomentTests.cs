using System.Globalization;
using System.Reflection;
using CanvasCut.Language;

namespace CanvasCut.Tests.Language;

/// <summary>Which language is spoken, and that nothing is put into words after it has gone.</summary>
public sealed class LanguageOfTheMomentTests
{
    /// <summary>The projects that put things into words.</summary>
    private static readonly string[] Wording = ["Design", "JobFiles", "Patterns", "Placing", "Checks", "Measuring", "Takeoff", "Sheets", "Job"];

    public static TheoryData<string> Projects { get; } = new(Wording.Where(project => File.Exists(PathOf(project))));

    [Theory]
    [InlineData("", "en")]
    [InlineData("en-GB", "en")]
    [InlineData("de", "de")]
    [InlineData("de-AT", "de")]
    [InlineData("fr-FR", "en")]
    [InlineData("zh-Hant-TW", "en")]
    public void A_culture_speaks_its_own_language_or_else_English(string culture, string code)
    {
        var before = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);

            Assert.Equal(code, Languages.Code);
            Assert.Equal(code == "de" ? "Optionen:" : "Options:", Say.Of("Options:"));
        }
        finally
        {
            CultureInfo.CurrentUICulture = before;
        }
    }

    /// <summary>A sequence that is worked out when it is read would be worded in the language of the reader, not in that of the call.</summary>
    [Theory]
    [MemberData(nameof(Projects))]
    public void No_project_gives_away_a_sequence_that_is_worded_later(string project) =>
        Assert.Empty(
            from type in Assembly.LoadFrom(PathOf(project)).GetExportedTypes()
            from method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where method.ReturnType.IsGenericType && method.ReturnType.GetGenericTypeDefinition() == typeof(IEnumerable<>)
            select $"{type.Name}.{method.Name}");

    private static string PathOf(string project) => Path.Combine(AppContext.BaseDirectory, $"CanvasCut.{project}.dll");
}
