namespace CanvasCut.Drawing.Pages;

/// <summary>What is printed on every page of a set, whatever the piece.</summary>
/// <param name="Title">The set's title, at the head of the map page.</param>
/// <param name="Header">For which job the set is; on the map page and, shortened where it must be, on every page.</param>
/// <param name="Footer">What everyone who holds a page must know; likewise.</param>
/// <param name="Note">One more line at the foot of every page; empty for none.</param>
public sealed record TileJob(string Title, string Header, string Footer, string Note = "");
