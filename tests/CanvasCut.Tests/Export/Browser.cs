namespace CanvasCut.Tests.Export;

/// <summary>Loads a page in headless Chromium.</summary>
internal static class Browser
{
    /// <summary>The page's elements after its scripts have run.</summary>
    public static string Dump(TemporaryFolder folder, string page) => OutsideTool.Run(
        "chromium",
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        $"--user-data-dir={folder.PathOf("profile")}",
        "--dump-dom",
        new Uri(page).AbsoluteUri);
}
