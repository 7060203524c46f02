namespace CanvasCut.Tests;

/// <summary>Finds files of the repository from wherever the tests run.</summary>
internal static class Repository
{
    private static readonly string Root = FindRoot();

    /// <summary>The full path of a file or folder named from the repository's root.</summary>
    public static string PathOf(string relative) => Path.Combine(Root, relative);

    /// <summary>The text of a file named from the repository's root.</summary>
    public static string Read(string relative) => File.ReadAllText(PathOf(relative));

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "CanvasCut.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("CanvasCut.sln is not above the tests.");
        }

        return folder;
    }
}
