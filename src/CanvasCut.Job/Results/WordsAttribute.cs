namespace CanvasCut.Job;

/// <summary>
/// What it stands on is in words, in the language that the document names. Every other text in a document is a code, a name the user gave or a
/// number's unit, the same in every language.
/// </summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class WordsAttribute : Attribute;
