namespace CanvasCut.Tests;

/// <summary>Compares what the program makes with a file that a person has looked at.</summary>
internal static class Golden
{
    /// <summary>Fails unless the text is that of the approved file, character for character.</summary>
    /// <remarks>
    /// With CANVASCUT_APPROVE=1 in the environment the file is rewritten instead, for the change to be read in the
    /// diff. It is never written where CI is set.
    /// </remarks>
    public static void Matches(string relativePath, string actual)
    {
        var approved = Repository.PathOf(relativePath);
        if (Environment.GetEnvironmentVariable("CANVASCUT_APPROVE") == "1" && Environment.GetEnvironmentVariable("CI") is null)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(approved)!);
            File.WriteAllText(approved, actual);
        }

        Assert.True(File.Exists(approved), $"There is no {relativePath}; look at the result, then approve it (DEVELOPERS.md).");
        Assert.Equal(File.ReadAllText(approved), actual);
    }
}
